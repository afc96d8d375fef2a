import { inputs } from '../../calculators/carburettors/air-and-jet/inputs.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { airDensity, standardPressure } from '../../calculators/maths/carburettor/air.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

/** Dots in the denser of the two boxes. */
const DOTS = 100;
const BOX = 150;
const TOP = 62;

const places = [
  {
    altitude: inputs['right-altitude'].default,
    temperature: inputs['right-temperature'].default,
    humidity: inputs['right-humidity'].default,
    x: 10,
  },
  {
    altitude: inputs.altitude.default,
    temperature: inputs.temperature.default,
    humidity: inputs.humidity.default,
    x: 196,
  },
].map((place) => ({
  ...place,
  density: airDensity({ ...place, pressure: standardPressure(place.altitude) }),
}));
const densest = Math.max(...places.map(({ density }) => density));

/** The digits of a number set behind the point in reverse (van der Corput), for an even scatter. */
function inReverse(index: number, base: number): number {
  let [rest, share, sum] = [index, 1, 0];
  while (rest > 0) {
    share /= base;
    sum += share * (rest % base);
    rest = Math.floor(rest / base);
  }
  return sum;
}

/** The same room full of air in two places: the dots are as the density has them. */
export default function AirInTwoPlaces() {
  return (
    <LineDrawing
      id="air-in-two-places"
      title="The same volume of air in two places"
      description={`Two boxes of the same size, filled with dots in the proportion of the density of the air. ${places.map(({ altitude, temperature, density }) => `At ${altitude} metres and ${temperature} degrees: ${fixed(density, 3)} kilograms in a cubic metre`).join('. ')}. The engine draws the same volume in both places, and less air in the second.`}
      height={TOP + BOX + 30}
    >
      {places.map(({ altitude, temperature, density, x }) => (
        <g key={x} class="place">
          <text class="axis-text" x={x} y={18}>
            {`${altitude} m, ${temperature} °C`}
          </text>
          <text x={x} y={36}>
            {`${fixed(density, 3)} kg/m³`}
          </text>
          <rect class="edge" x={x} y={TOP - 12} width={BOX} height={BOX} />
          {Array.from({ length: Math.round((DOTS * density) / densest) }, (_, dot) => (
            <circle
              key={dot}
              class="leader-end air"
              cx={hundredth(x + 6 + (BOX - 12) * inReverse(dot + 1, 2))}
              cy={hundredth(TOP - 6 + (BOX - 12) * inReverse(dot + 1, 3))}
              r={2.2}
            />
          ))}
          <text x={x + BOX / 2} y={TOP + BOX + 12} text-anchor="middle">
            the same volume
          </text>
        </g>
      ))}
    </LineDrawing>
  );
}
