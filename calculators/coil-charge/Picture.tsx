import { fixed } from '../frame/format.ts';
import type { PictureProps } from '../frame/types.ts';
import { chargeTime, currentAfter, finalCurrent, timeConstant } from '../maths/coil-charge.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Curve, type Point } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { evenly, onStep } from '../picture/steps.ts';
import { primaryOf, type Values } from './values.ts';

const WIDTH = 360;
const HEIGHT = 320;
const SAMPLES = 60;
const LEAST_RPM = 50;
const MOST_RPM = 30_000;

/** Current against time since the points shut, and where each speed breaks it off. */
export function Picture({ values, set, commit }: PictureProps) {
  const v = values as unknown as Values;
  const primary = primaryOf(v);
  const dwell = v['dwell-angle'];
  const ratio = v['speed-ratio'];
  const timeAt = (rpm: number): number => chargeTime(dwell, ratio, rpm);
  const full = finalCurrent(primary);
  const now = timeAt(v.rpm);
  const longest = useStill(Math.max(now * 1.15, 6 * timeConstant(primary)));

  const left = usualMargin.left;
  const right = WIDTH - usualMargin.right;
  const floor = HEIGHT - usualMargin.bottom;
  const ceiling = usualMargin.top + 20;
  const x = scaleLinear([0, longest], [left, right]);
  const y = scaleLinear([0, full * 1.12], [floor, ceiling]);
  const curve = evenly(0, longest, SAMPLES).map((time): Point => [
    x(time),
    y(currentAfter(primary, time)),
  ]);
  const current = currentAfter(primary, now);
  const share = y((full * v.share) / 100);
  const speeds = [...new Set(v.speeds)].sort((a, b) => a - b);
  const drops = speeds.filter((rpm) => timeAt(rpm) <= longest);
  const beyond = speeds.filter((rpm) => timeAt(rpm) > longest);

  const turnTo = (rpm: number): void => {
    set('rpm', Math.min(MOST_RPM, Math.max(LEAST_RPM, onStep(rpm, 50))));
  };

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Current in the primary against time since the points shut. At ${fixed(v.rpm, 0)} rpm they open after ${fixed(now, 2)} milliseconds with ${fixed(current, 2)} amperes.`}
    >
      <AxisBottom
        scale={x}
        at={floor}
        gridTo={ceiling - floor}
        label="time since the points shut, ms"
      />
      <AxisLeft scale={y} at={left} gridTo={right} label="current, A" />
      <path class="rule-line" d={`M${left} ${y(full)}H${right}M${left} ${share}H${right}`} />
      <g aria-hidden="true">
        <text class="key" x={right - 4} y={y(full) - 5} text-anchor="end">
          {`points shut for good: ${fixed(full, 2)} A`}
        </text>
        <text class="key" x={left + 5} y={share - 5}>
          {`${fixed(v.share, 0)}%`}
        </text>
      </g>
      <Curve points={curve} />
      <g aria-hidden="true">
        {drops.map((rpm) => {
          const at = x(timeAt(rpm));
          const top = y(currentAfter(primary, timeAt(rpm)));
          return (
            <g key={rpm}>
              <path class="drop" d={`M${at} ${top}V${floor}`} />
              <circle class="drop-end" cx={at} cy={top} r={3.5} />
              <text class="key" transform={`translate(${at - 4} ${floor - 6}) rotate(-90)`}>
                {`${String(rpm)} rpm`}
              </text>
            </g>
          );
        })}
        {beyond.length === 0 ? null : (
          <text class="key" x={right} y={usualMargin.top + 10} text-anchor="end">
            {`further right: ${beyond.join(', ')} rpm`}
          </text>
        )}
        <path class="dimension" d={`M${x(now)} ${y(current)}V${floor}`} />
      </g>
      <Handle
        x={x(now)}
        y={y(current)}
        label="Speed"
        value={v.rpm}
        min={LEAST_RPM}
        max={MOST_RPM}
        step={50}
        valueText={`${fixed(v.rpm, 0)} rpm, ${fixed(current, 2)} amperes after ${fixed(now, 2)} milliseconds`}
        onDrag={(px) => {
          const time = Math.max(x.invert(px), timeAt(MOST_RPM));
          turnTo(timeAt(1) / time);
        }}
        onStep={turnTo}
        onEnd={commit}
      />
    </Plot>
  );
}
