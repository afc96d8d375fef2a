import { fixed } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import {
  chargeTime,
  currentAfter,
  finalCurrent,
  timeConstant,
} from '../../maths/ignition/coil-charge.ts';
import { Chart, type EndLabel } from '../../picture/chart/chart.tsx';
import { Curve, type Point } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { SpeedLabels, SPEED_ROWS } from './SpeedLabels.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { evenly, intoRange, onStep } from '../../maths/numeric/steps.ts';
import { crankSpeeds } from '../coil-inputs.ts';
import type { results } from './results.ts';
import { primaryOf, type Inputs } from './values.ts';

const HEIGHT = 340;
const SAMPLES = 60;

/** Current against time since the points shut, and where each speed breaks it off. */
export function Picture(props: PictureProps<Inputs, typeof results>) {
  const { values: v, idPrefix, set, commit } = props;
  const primary = primaryOf(v);
  const dwell = v['dwell-angle'];
  const ratio = v['speed-ratio'];
  const timeAt = (rpm: number): number => chargeTime(dwell, ratio, rpm);
  const full = finalCurrent(primary);
  const now = timeAt(v.rpm);
  const longest = useFrozen(Math.max(now * 1.15, 6 * timeConstant(primary)));
  const speeds = [...new Set(v.speeds)].sort((a, b) => a - b);
  const beyond = speeds.filter((rpm) => timeAt(rpm) > longest).length;

  const key: readonly KeyEntry[] = [
    { as: 'line', look: 'curve', words: 'current' },
    {
      as: 'line',
      look: 'drop',
      words: beyond > 0 ? 'points open; lower speeds lie further right' : 'points open',
    },
    { as: 'line', look: 'rule-line', words: `shut for good, and ${fixed(v.share, 0)}% of it` },
  ];
  const ends: readonly EndLabel[] = [
    { at: full, words: `${fixed(full, 2)} A` },
    { at: (full * v.share) / 100, words: `${fixed(v.share, 0)}%` },
  ];
  const current = currentAfter(primary, now);
  const drops = speeds.filter((rpm) => timeAt(rpm) <= longest);

  const turnTo = (rpm: number): void => {
    set('rpm', intoRange(crankSpeeds, onStep(rpm, rpm < 2000 ? 1 : 10)));
  };

  return (
    <Chart
      id={`${idPrefix}current-field`}
      height={HEIGHT}
      label={`Current in the primary against time since the points shut. At ${fixed(v.rpm, 0)} rpm they open after ${fixed(now, 2)} milliseconds with ${fixed(current, 2)} amperes.`}
      meaning={key}
      ends={ends}
      above={SPEED_ROWS}
      x={{ domain: [0, longest], label: 'time since the points shut, ms' }}
      y={{ domain: [0, full * 1.12], label: 'current, A' }}
      marks={({ field: { left, right, top, bottom }, x, y }) => (
        <>
          <path class="rule-line" d={ends.map(({ at }) => `M${left} ${y(at)}H${right}`).join('')} />
          <path
            class="drop"
            d={drops.map((rpm) => `M${x(timeAt(rpm))} ${top}V${bottom}`).join('')}
          />
          <Curve
            points={evenly(0, longest, SAMPLES).map((time): Point => [
              x(time),
              y(currentAfter(primary, time)),
            ])}
          />
          <path class="dimension" d={`M${x(now)} ${y(current)}V${bottom}`} />
        </>
      )}
    >
      {({ field: { left, top }, x, y }) => (
        <>
          <g aria-hidden="true">
            {drops.map((rpm) => (
              <circle
                key={rpm}
                class="drop-end"
                cx={x(timeAt(rpm))}
                cy={y(currentAfter(primary, timeAt(rpm)))}
                r={3.5}
              />
            ))}
            <SpeedLabels
              speeds={drops.map((rpm) => ({ at: x(timeAt(rpm)), words: `${String(rpm)} rpm` }))}
              left={left}
              top={top}
            />
          </g>
          <Handle
            x={x(now)}
            y={y(current)}
            label="Time the points are shut, by the speed"
            value={Number(now.toFixed(3))}
            min={timeAt(crankSpeeds.max)}
            max={timeAt(crankSpeeds.min)}
            step={now / 40}
            valueText={`${fixed(v.rpm, 0)} rpm, ${fixed(current, 2)} amperes after ${fixed(now, 2)} milliseconds`}
            onDrag={(px) => turnTo(timeAt(1) / Math.max(x.invert(px), timeAt(crankSpeeds.max)))}
            onStep={(time) => turnTo(timeAt(1) / time)}
            onEnd={commit}
          />
        </>
      )}
    </Chart>
  );
}
