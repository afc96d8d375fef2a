import { fixed } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { evenly, intoRange, onStep } from '../../maths/numeric/steps.ts';
import { Chart } from '../../picture/chart/chart.tsx';
import { Curve, type Point } from '../../picture/chart/curve.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { WordsInRow } from '../../picture/words-in-row.tsx';
import { PLOT_WIDTH } from '../../picture/common/plot.tsx';
import { crankSpeeds } from '../coil-inputs.ts';
import { runningCurrent, type Inputs } from './compute.ts';
import type { results } from './results.ts';

const HEIGHT = 270;
const SAMPLES = 60;
const SCALE_STEP = 2500;
/** Room above the field for the names of the speeds. */
const NAMES = 20;

const key: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'all coils, mean' },
  { as: 'line', look: 'rule-line', words: 'standing, points shut' },
];

/** Mean current of all coils against the speed. */
export function SpeedPlot(props: PictureProps<Inputs, typeof results>) {
  const { values: v, results: computed, idPrefix, set, commit } = props;
  const shut = computed['shut-current'] as number;
  const idle = computed['idle-current'] as number;
  const current = computed['coil-current'] as number;
  // In whole steps, so that a step of the speed is seen against the scale.
  const fastest = useFrozen(SCALE_STEP * Math.ceil((1.15 * Math.max(v.rpm, v.idle)) / SCALE_STEP));
  const speeds = evenly(crankSpeeds.min, fastest, SAMPLES);
  const turnTo = (rpm: number): void => {
    set('rpm', intoRange(crankSpeeds, onStep(rpm, rpm < 2000 ? 10 : 50)));
  };
  return (
    <Chart
      id={`${idPrefix}wiring-speed-field`}
      height={HEIGHT}
      label={`Mean current of all coils against the speed: ${fixed(idle, 2)} amperes at idle, ${fixed(current, 2)} at ${fixed(v.rpm, 0)} rpm, ${fixed(shut, 2)} standing with the points shut.`}
      meaning={key}
      above={NAMES}
      ends={[{ at: shut, words: `${fixed(shut, 1)} A` }]}
      x={{ domain: [0, fastest], label: 'speed of the crank, rpm' }}
      y={{ domain: [0, shut * 1.1], label: 'current, A' }}
      marks={({ field: { left, right, top, bottom }, x, y }) => (
        <>
          <path class="rule-line" d={`M${left} ${y(shut)}H${right}`} />
          <path
            class="drop"
            d={[v.idle, v.rpm].map((rpm) => `M${x(rpm)} ${top}V${bottom}`).join('')}
          />
          <Curve points={speeds.map((rpm): Point => [x(rpm), y(runningCurrent(v, rpm))])} />
        </>
      )}
    >
      {({ field: { left, top }, x, y }) => (
        <>
          <g aria-hidden="true">
            <circle class="drop-end" cx={x(v.idle)} cy={y(idle)} r={3.5} />
            <WordsInRow
              labels={[
                { at: x(v.idle), words: 'idle' },
                { at: x(v.rpm), words: `${fixed(v.rpm, 0)} rpm` },
              ]}
              from={left}
              to={PLOT_WIDTH - 4}
              y={top - 5}
            />
          </g>
          <Handle
            x={x(v.rpm)}
            y={y(current)}
            label="Speed of the crank"
            value={v.rpm}
            min={crankSpeeds.min}
            max={crankSpeeds.max}
            step={100}
            valueText={`${fixed(v.rpm, 0)} rpm, ${fixed(current, 2)} amperes`}
            onDrag={(px) => turnTo(x.invert(px))}
            onStep={turnTo}
            onEnd={commit}
          />
        </>
      )}
    </Chart>
  );
}
