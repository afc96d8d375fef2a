import type { LengthDisplay } from '../frame/text/units.ts';
import { fixed, showFixed } from '../frame/text/format.ts';
import { travelBefore, type SliderCrank } from '../maths/crank/slider-crank.ts';
import { hundredth } from '../maths/numeric/steps.ts';

interface Props {
  readonly geometry: SliderCrank;
  /** Degrees before true TDC. */
  readonly angle: number;
  readonly lengths: LengthDisplay;
}

const WIDTH = 260;
const HEIGHT = 342;
const ROOM = 24;

/** Crank, rod and piston drawn to scale, in the state of the plot beside it. */
export function Mechanism({ geometry, angle, lengths }: Props) {
  const { stroke, rodLength, pinOffset } = geometry;
  const throwLength = stroke / 2;
  const bore = stroke * 1.08;
  const crownAbovePin = stroke * 0.5;
  const skirtBelowPin = stroke * 0.45;
  const tall = throwLength * 2 + rodLength + crownAbovePin + stroke * 0.12;
  const wide = Math.max(bore + 2 * Math.abs(pinOffset), stroke * 1.3) + stroke * 0.5;
  const scale = Math.min((HEIGHT - 2 * ROOM) / tall, (WIDTH - 2 * ROOM - 40) / wide);

  const topAngle = Math.asin(pinOffset / (rodLength + throwLength));
  const turned = topAngle - (angle * Math.PI) / 180;
  const topHeight = Math.sqrt((rodLength + throwLength) ** 2 - pinOffset ** 2);
  const travel = travelBefore(geometry, angle);
  const centre = { x: WIDTH / 2, y: HEIGHT - ROOM - throwLength * 1.12 * scale };
  const at = (x: number, up: number) => ({
    x: hundredth(centre.x + x * scale),
    y: hundredth(centre.y - up * scale),
  });
  const big = at(throwLength * Math.sin(turned), throwLength * Math.cos(turned));
  const pin = at(pinOffset, topHeight - travel);
  const top = at(pinOffset, topHeight + crownAbovePin);
  const crown = pin.y - crownAbovePin * scale;
  const half = (bore / 2) * scale;
  const wall = at(0, topHeight - stroke - skirtBelowPin).y;
  const shown = showFixed(travel, 'mm', 2, lengths);
  const right = pin.x + half + 8;

  return (
    <svg
      class="plot mechanism"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Crank, rod and piston to scale: ${fixed(angle, 1)} degrees before the top, piston ${shown} below it`}
    >
      <path
        class="centre-line"
        d={`M${centre.x} 4V${HEIGHT - 4}M${ROOM} ${centre.y}H${WIDTH - ROOM}`}
      />
      <path
        class="part part-hollow"
        d={`M${hundredth(pin.x - half)} ${hundredth(top.y - 4)}V${wall}M${hundredth(pin.x + half)} ${hundredth(top.y - 4)}V${wall}`}
      />
      <path
        class="part part-moving piston"
        d={`M${hundredth(pin.x - half + 2)} ${hundredth(pin.y + skirtBelowPin * scale)}V${hundredth(crown)}H${hundredth(pin.x + half - 2)}V${hundredth(pin.y + skirtBelowPin * scale)}Z`}
      />
      <circle class="part" cx={centre.x} cy={centre.y} r={hundredth(throwLength * 1.12 * scale)} />
      <path class="part-rod" d={`M${big.x} ${big.y}L${pin.x} ${pin.y}`} />
      <circle class="part big-end" cx={big.x} cy={big.y} r={hundredth(throwLength * 0.3 * scale)} />
      <circle
        class="part gudgeon-pin"
        cx={pin.x}
        cy={pin.y}
        r={hundredth(throwLength * 0.22 * scale)}
      />
      <circle class="part" cx={centre.x} cy={centre.y} r={3} />
      <path
        class="dimension"
        d={`M${right - 6} ${top.y}H${right + 14}M${right - 6} ${hundredth(crown)}H${right + 14}`}
      />
      <text class="dimension-text" x={WIDTH - 4} y={Math.max(12, top.y - 8)} text-anchor="end">
        {shown}
      </text>
      <text x={6} y={HEIGHT - 6}>
        to scale
      </text>
    </svg>
  );
}
