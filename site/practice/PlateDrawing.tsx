import type { Bench } from '../../calculators/practice/bench.ts';
import { degreesAlong, type Engine } from '../../calculators/practice/engine.ts';
import { memo } from '../../calculators/picture/redraw/memo.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';

interface Props {
  readonly engine: Engine;
  readonly bench: Bench;
}

const SIZE = 260;
const CENTRE = SIZE / 2;
const SCALE = 2.3;
/** Where the heel of set 1 rubs on a plate as it is drawn, clockwise from straight up. */
const FIRST = 50;

const tenth = (value: number): number => Math.round(value * 10) / 10;
const at = (angle: number, radius: number): string => {
  const turn = (angle * Math.PI) / 180;
  return `${tenth(CENTRE + radius * SCALE * Math.sin(turn))} ${tenth(CENTRE - radius * SCALE * Math.cos(turn))}`;
};

interface FaceProps {
  readonly sets: readonly number[];
  readonly turned: number;
  readonly inHand: number;
  readonly plateRadius: number;
  readonly slotRadius: number;
}

/** The plate with its sets, as it was made; the cam turns clockwise, so earlier is anticlockwise. */
function Face({ sets, turned, inHand, plateRadius, slotRadius }: FaceProps) {
  return (
    <>
      <circle class="part plate" cx={CENTRE} cy={CENTRE} r={plateRadius * SCALE} />
      {sets.map((moved, set) => {
        const angle = FIRST + (360 / sets.length) * set - turned;
        const now = angle - moved;
        return (
          <g key={set}>
            <path
              class="plate-slot"
              d={`M${at(angle - 5, slotRadius)}A${slotRadius * SCALE} ${slotRadius * SCALE} 0 0 1 ${at(angle + 5, slotRadius)}`}
            />
            <path
              class={set === inHand ? 'plate-set in-hand' : 'plate-set'}
              d={`M${at(now - 10, 16)}L${at(now - 6, 40)}L${at(now + 6, 40)}L${at(now + 10, 16)}Z`}
            />
            <circle
              class="part"
              cx={at(now, slotRadius).split(' ')[0]}
              cy={at(now, slotRadius).split(' ')[1]}
              r={5}
            />
            <text
              x={at(now, 23).split(' ')[0]}
              y={at(now, 23).split(' ')[1]}
              text-anchor="middle"
              dy="0.32em"
            >
              {set + 1}
            </text>
          </g>
        );
      })}
      <path class="scribed" d={`M${at(-turned, plateRadius - 6)}L${at(-turned, plateRadius)}`} />
    </>
  );
}
const PlateFace = memo(Face, 2);

/** The plate to scale, with the line that was scribed across it and the case. */
export function PlateDrawing({ engine, bench }: Props) {
  const { plateRadius, slotRadius } = engine.card;
  return (
    <svg
      class="plot practice-plate"
      viewBox={`0 0 ${SIZE} ${SIZE}`}
      role="img"
      aria-label="The breaker plate, its sets and the line scribed across plate and case"
    >
      <PlateFace
        sets={bench.slots.map((slot) => hundredth(slot * degreesAlong(slotRadius)))}
        turned={hundredth(bench.plate * degreesAlong(plateRadius))}
        inHand={bench.cylinder}
        plateRadius={plateRadius}
        slotRadius={slotRadius}
      />
      <path class="scribed" d={`M${at(0, plateRadius)}L${at(0, plateRadius + 6)}`} />
      <circle class="part cam" cx={CENTRE} cy={CENTRE} r={11 * SCALE} />
      <path
        class="turning"
        d={`M${at(-60, 7)}A${7 * SCALE} ${7 * SCALE} 0 1 1 ${at(100, 7)}m0 0l7 -5m-7 5l-3 -9`}
      />
      <text x={4} y={SIZE - 6}>
        to scale
      </text>
      <text x={SIZE - 4} y={14} text-anchor="end">
        line
      </text>
    </svg>
  );
}
