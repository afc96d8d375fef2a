import { fixed } from '../frame/text/format.ts';
import { arrowHead } from './label.tsx';
import { travelBefore, type SliderCrank } from '../maths/crank/slider-crank.ts';
import { hundredth } from '../maths/numeric/steps.ts';

interface Props {
  /** Stroke and rod; the triangle is that of a pin without offset. */
  readonly geometry: Pick<SliderCrank, 'stroke' | 'rodLength'>;
  /** Degrees before the top at which the second of the two is drawn. */
  readonly angle: number;
}

const WIDTH = 340;
const HEIGHT = 400;
const TOP = 40;
const BELOW = 34;
/** Where the two bores stand, across the picture. */
const BORES = { top: 74, turned: 214 } as const;

/** The corners of the triangle, mm from the crank's centre: the crank turns clockwise. */
export function triangleOf({ geometry, angle }: Props) {
  const { stroke, rodLength } = geometry;
  const crank = stroke / 2;
  const radians = (angle * Math.PI) / 180;
  const travel = travelBefore({ ...geometry, pinOffset: 0 }, angle);
  return {
    crank,
    travel,
    bigEnd: { x: -crank * Math.sin(radians), up: crank * Math.cos(radians) },
    pin: { x: 0, up: crank + rodLength - travel },
  };
}

/** Crank, rod and bore with their letters: at the top, and so many degrees before it. To scale. */
export function CrankTriangle(props: Props) {
  const { angle } = props;
  const { crank, ...turned } = triangleOf(props);
  const atTop = triangleOf({ ...props, angle: 0 });
  const scale = (HEIGHT - TOP - BELOW) / (atTop.pin.up + crank);
  const ground = HEIGHT - BELOW - crank * scale;
  const at = (bore: number, place: { x: number; up: number }) => ({
    x: hundredth(bore + place.x * scale),
    y: hundredth(ground - place.up * scale),
  });
  const radius = hundredth(crank * scale);
  const upper = at(BORES.turned, atTop.pin).y;
  const pin = at(BORES.turned, turned.pin);
  const big = at(BORES.turned, turned.bigEnd);
  const arc = radius * 0.55;
  const start = {
    x: hundredth(BORES.turned - arc * Math.sin((angle * Math.PI) / 180)),
    y: hundredth(ground - arc * Math.cos((angle * Math.PI) / 180)),
  };
  const middle = (a: number, b: number): number => hundredth((a + b) / 2);
  const letter = { 'font-style': 'italic' } as const;

  return (
    <svg
      class="plot crank-triangle"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Two drawings to scale. At the top the crank r and the rod l stand in one line. ${fixed(angle, 0)} degrees before the top the crank leans by the angle theta, the gudgeon pin stands d above the crank’s centre and s below its highest place. A spark further down the bore comes earlier, one nearer the top later.`}
    >
      <path class="rule-line" d={`M${BORES.top + 10} ${upper}H${WIDTH - 22}`} />
      {[
        { bore: BORES.top, corners: atTop },
        { bore: BORES.turned, corners: turned },
      ].map(({ bore, corners }) => {
        const pinPlace = at(bore, corners.pin);
        const bigPlace = at(bore, corners.bigEnd);
        return (
          <g key={bore}>
            <path class="centre-line" d={`M${bore} 14V${HEIGHT - BELOW + 6}`} />
            <circle class="part part-hollow" cx={bore} cy={ground} r={radius} />
            <path
              class="triangle-rod"
              d={`M${bigPlace.x} ${bigPlace.y}L${pinPlace.x} ${pinPlace.y}`}
            />
            <path class="triangle-crank" d={`M${bore} ${ground}L${bigPlace.x} ${bigPlace.y}`} />
            <circle class="part" cx={bigPlace.x} cy={bigPlace.y} r={6} />
            <circle class="part" cx={pinPlace.x} cy={pinPlace.y} r={5} />
            <circle class="part" cx={bore} cy={ground} r={3.5} />
          </g>
        );
      })}
      <path class="dimension" d={`M${BORES.turned} ${ground}V${pin.y}`} />
      <path
        class="turning"
        d={`M${BORES.turned} ${hundredth(ground - arc)}A${hundredth(arc)} ${hundredth(arc)} 0 0 0 ${start.x} ${start.y}`}
      />
      <path class="dimension" d={`M${BORES.turned + 12} ${pin.y}h74m-8 0V${upper}`} />
      <path
        class="motion-head"
        d={[
          [BORES.turned, ground, pin.y],
          [BORES.turned + 78, pin.y, upper],
        ]
          .flatMap(([x, from, to]) => [
            arrowHead([x!, from!], [x!, to!]),
            arrowHead([x!, to!], [x!, from!]),
          ])
          .join('')}
      />
      <path
        class="turning"
        d={`M312 ${pin.y}v34m0 0l-4-8m4 8l4-8M312 ${pin.y}V${upper - 10}m0 0l-4 8m4-8l4 8`}
      />
      <g {...letter}>
        <text x={BORES.top - 20} y={middle(ground, at(BORES.top, atTop.bigEnd).y) + 5}>
          r
        </text>
        <text
          x={BORES.top - 18}
          y={middle(at(BORES.top, atTop.bigEnd).y, at(BORES.top, atTop.pin).y)}
        >
          l
        </text>
        <text x={middle(BORES.turned, big.x) - 8} y={middle(ground, big.y) + 20}>
          r
        </text>
        <text x={middle(pin.x, big.x) - 20} y={middle(pin.y, big.y)}>
          l
        </text>
        <text x={BORES.turned + 8} y={middle(ground, pin.y) + 24}>
          d
        </text>
        <text x={BORES.turned - 20} y={hundredth(ground - arc) - 6}>
          θ
        </text>
        <text x={BORES.turned + 64} y={middle(upper, pin.y) + 5}>
          s
        </text>
      </g>
      <text x={BORES.top + 12} y={upper - 8}>
        gudgeon pin
      </text>
      <text x={BORES.top + 12} y={at(BORES.top, atTop.bigEnd).y - 10}>
        big end
      </text>
      <text x={WIDTH - 6} y={upper - 16} text-anchor="end">
        later
      </text>
      <text x={WIDTH - 6} y={pin.y + 50} text-anchor="end">
        earlier
      </text>
      <text x={BORES.top} y={HEIGHT - 10} text-anchor="middle">
        at the top
      </text>
      <text x={BORES.turned} y={HEIGHT - 10} text-anchor="middle">
        {`${fixed(angle, 0)}° before the top`}
      </text>
    </svg>
  );
}
