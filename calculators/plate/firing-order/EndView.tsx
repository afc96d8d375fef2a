import { fixed } from '../../frame/text/format.ts';
import { withinTurn } from '../../maths/crank/firing-order.ts';
import type { Throw } from '../../maths/crank/engine-balance.ts';
import { Handle } from '../../picture/common/handle.tsx';
import { Key, type KeyEntry } from '../../picture/common/key.tsx';
import { spreadRound } from '../../picture/common/labels.ts';
import { Plot } from '../../picture/common/plot.tsx';
import { onStep } from '../../maths/numeric/steps.ts';
import { BADGE, CylinderBadge, PinBadge, polar } from './marks.tsx';

interface Props {
  readonly throws: readonly Throw[];
  /** Crank degrees after the top of cylinder 1. */
  readonly turned: number;
  readonly onTurn: (turned: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 340;
const HEIGHT = 350;
const CENTRE = { x: 170, y: 180 };
/** From the middle out: handle, crank pins, their numbers, ends of the axes, numbers of cylinders. */
const GRIP = 40;
const PINS = 74;
const PIN_NAMES = 97;
const AXES = 126;
const CYLINDERS = 140;
const ARROW = 113;

const key: readonly KeyEntry[] = [
  { as: 'mark', look: 'glass', words: 'crank pin' },
  { as: 'area', look: 'hollow', words: 'cylinder, on its axis' },
];

/** Degrees that two numbers need between them at a radius. */
const gapAt = (radius: number): number => ((2 * BADGE + 2) / radius) * (180 / Math.PI);

const at = polar(CENTRE.x, CENTRE.y);

/** Degrees clockwise of upright at which each pin stands. */
export const pinDirections = (throws: readonly Throw[], turned: number): readonly number[] =>
  throws.map(({ pin }) => throws[0]!.lean + turned + pin - throws[0]!.pin);

/** The crank from its end, its pins against the axes of the cylinders; it turns clockwise. */
export function EndView({ throws, turned, onTurn, onEnd }: Props) {
  const pins = pinDirections(throws, turned);
  const leans = throws.map(({ lean }) => lean);
  const pinNames = spreadRound(pins, gapAt(PIN_NAMES)).map((angle) => at(angle, PIN_NAMES));
  // In a straight row across the axis, not round the crank.
  const names = spreadRound(leans, gapAt(CYLINDERS)).map((angle, i) =>
    at(angle, CYLINDERS / Math.cos(((angle - leans[i]!) * Math.PI) / 180)),
  );
  const line = (from: { x: number; y: number }, to: { x: number; y: number }): string =>
    `M${from.x} ${from.y}L${to.x} ${to.y}`;
  const grip = at(pins[0]!, GRIP);
  const [start, end] = [at(206, ARROW), at(236, ARROW)];
  const turnTo = (angle: number): void => onTurn(onStep(withinTurn(angle), 1));

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`The crank from its end, ${fixed(turned, 0)} degrees after the top of cylinder 1, turning clockwise. A cylinder is at its top where its pin lies on its axis.`}
    >
      <Key entries={key} width={WIDTH} />
      <path
        class="centre-line"
        d={leans.map((lean) => line(at(lean, 0), at(lean, AXES))).join('')}
      />
      <circle class="part part-hollow" cx={CENTRE.x} cy={CENTRE.y} r={PINS} />
      <path
        class="turning"
        d={`M${start.x} ${start.y}A${ARROW} ${ARROW} 0 0 1 ${end.x} ${end.y}m0 0l9 4m-9-4l1 10`}
      />
      <path class="leader" d={pins.map((pin, i) => line(at(pin, PINS), pinNames[i]!)).join('')} />
      {pins.map((pin, i) => (
        <g key={i} aria-hidden="true">
          <path class="web" d={line(at(0, 0), at(pin, PINS))} />
          <circle class="part big-end" cx={at(pin, PINS).x} cy={at(pin, PINS).y} r={8} />
        </g>
      ))}
      <circle class="part" cx={CENTRE.x} cy={CENTRE.y} r={11} />
      {pinNames.map(({ x, y }, i) => (
        <PinBadge key={i} x={x} y={y} number={i + 1} />
      ))}
      {names.map(({ x, y }, i) => (
        <CylinderBadge key={i} x={x} y={y} number={i + 1} />
      ))}
      <Handle
        x={grip.x}
        y={grip.y}
        label="Crank, degrees after the top of cylinder 1"
        value={turned}
        min={0}
        max={360}
        step={5}
        valueText={`${fixed(turned, 0)} degrees after the top of cylinder 1`}
        along={Math.abs(grip.x - CENTRE.x) > Math.abs(grip.y - CENTRE.y) ? 'y' : 'x'}
        onDrag={(x, y) => {
          const angle = (Math.atan2(x - CENTRE.x, CENTRE.y - y) * 180) / Math.PI;
          turnTo(angle - throws[0]!.lean);
        }}
        onStep={(value) => onTurn(onStep(value, 1))}
        onEnd={onEnd}
      />
      <text x={8} y={HEIGHT - 8}>
        from the end where it turns clockwise
      </text>
    </Plot>
  );
}
