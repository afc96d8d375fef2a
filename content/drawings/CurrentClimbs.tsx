import { demoCoil } from '../../calculators/demo/coil.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import {
  currentAfter,
  finalCurrent,
  timeConstant,
} from '../../calculators/maths/ignition/coil-charge.ts';
import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Line } from '../../calculators/picture/chart/curve.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const coil = {
  volts: demoCoil.volts,
  resistance: demoCoil.resistance,
  ballast: 0,
  inductance: demoCoil.inductance,
};
const tau = timeConstant(coil);
const full = finalCurrent(coil);
/** How many time constants are drawn. */
const CONSTANTS = 4;
const FIELD = { left: 50, right: 330, top: 46, foot: 214 } as const;
const marked = [1, 3] as const;

const x = (time: number): number =>
  hundredth(FIELD.left + (time / (CONSTANTS * tau)) * (FIELD.right - FIELD.left));
const y = (current: number): number =>
  hundredth(FIELD.foot - (current / full) * (FIELD.foot - FIELD.top));

/** How the current in the demo coil climbs after the points have shut. */
export default function CurrentClimbs() {
  const { left, right, top, foot } = FIELD;
  return (
    <LineDrawing
      id="current-climbs"
      title="How the current in a coil climbs"
      description={`The current in the demo coil against the time since the points shut, to scale. It climbs fast at first and ever more slowly towards ${fixed(full, 0)} amperes. After ${fixed(tau, 0)} milliseconds, one time constant, it has ${fixed((100 * currentAfter(coil, tau)) / full, 0)} per cent of that, and after ${fixed(3 * tau, 0)}, three of them, ${fixed((100 * currentAfter(coil, 3 * tau)) / full, 0)} per cent.`}
      height={264}
    >
      <path
        class="axis-line"
        d={`M${left} ${top - 8}V${foot}H${right}${evenly(0, CONSTANTS * tau, CONSTANTS)
          .map((time) => `M${x(time)} ${foot}v5`)
          .join('')}${evenly(1, full, full - 1)
          .map((current) => `M${left} ${y(current)}h-5`)
          .join('')}`}
      />
      <path class="edge edge-thin edge-hidden" d={`M${left} ${top}H${right}`} />
      <Line
        look="curve"
        points={evenly(0, CONSTANTS * tau, 60).map((time): [number, number] => [
          x(time),
          y(currentAfter(coil, time)),
        ])}
      />
      {marked.map((times) => (
        <g key={times}>
          <path
            class="size-line"
            d={`M${x(times * tau)} ${foot}V${y(currentAfter(coil, times * tau))}`}
          />
          <circle
            class="leader-end"
            cx={x(times * tau)}
            cy={y(currentAfter(coil, times * tau))}
            r={3}
          />
          <Label
            words={`${fixed((100 * currentAfter(coil, times * tau)) / full, 0)}%`}
            at={[x(times * tau) + 8, y(currentAfter(coil, times * tau)) + 14]}
          />
        </g>
      ))}
      {evenly(0, CONSTANTS * tau, CONSTANTS).map((time) => (
        <text key={time} x={x(time)} y={foot + 20} text-anchor="middle">
          {fixed(time, 0)}
        </text>
      ))}
      {evenly(1, full, full - 1).map((current) => (
        <text key={current} x={left - 9} y={y(current) + 4} text-anchor="end">
          {fixed(current, 0)}
        </text>
      ))}
      <text x={right} y={foot + 40} text-anchor="end">
        ms since the points shut
      </text>
      <text x={4} y={top - 26}>
        current, A
      </text>
      <text x={right} y={top - 8} text-anchor="end">
        V / R
      </text>
    </LineDrawing>
  );
}
