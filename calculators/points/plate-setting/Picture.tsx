import { sliderCrank } from '../../position/engine-inputs.ts';
import { fixed } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { positionAt } from '../../maths/plate/plate-setting.ts';
import { Chart } from '../../picture/chart/chart.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { onStep } from '../../maths/numeric/steps.ts';
import { timingsOf } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const HEIGHT = 340;

const key: readonly KeyEntry[] = [
  { as: 'area', look: 'bar-before', words: 'as found' },
  { as: 'area', look: 'bar-after', words: 'after the plate' },
  { as: 'area', look: 'tolerance', words: 'within the tolerance' },
];

/** Width of a column, of which each cylinder has two. */
const barOf = (wide: number, cylinders: number): number => Math.min(20, (wide / cylinders) * 0.24);

const sideOf = (error: number): string =>
  `${fixed(Math.abs(error), 1)} degrees ${error < 0 ? 'late' : 'early'}`;

/** Each cylinder's error before and after the turn of the plate, with the tolerance as a band. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, idPrefix, set, commit } = props;
  const { target } = timingsOf(v);
  const before = computed['error-before'] as readonly number[];
  const after = computed.error as readonly number[];
  const move = computed['plate-move'] as number;
  const most = Math.max(v.tolerance, ...before.map(Math.abs), ...after.map(Math.abs));
  const end = useFrozen(Math.max(2, Math.ceil(most * 1.25)));

  const count = before.length;

  const place = (index: number, error: number): void => {
    const timing = target + Math.min(end, Math.max(-end, onStep(error, 0.1)));
    if (v.as === 'angle') set(`fired-angle-${String(index + 1)}`, onStep(timing, 0.1));
    else set(`fired-${String(index + 1)}`, onStep(positionAt(sliderCrank(v), timing), 0.01));
  };

  return (
    <Chart
      id={`${idPrefix}tolerance-field`}
      height={HEIGHT}
      label={`Error of each cylinder before and after turning the plate by ${fixed(move, 2)} degrees of crank.`}
      meaning={key}
      x={{ domain: [0, count] }}
      y={{ domain: [-end, end], label: 'error, crank degrees: early above, late below' }}
      behind={({ field: { left, right }, y }) => (
        <rect
          class="band tolerance"
          x={left}
          y={y(v.tolerance)}
          width={right - left}
          height={y(-v.tolerance) - y(v.tolerance)}
        />
      )}
      marks={({ field: { left, right }, x, y }) => (
        <>
          <path class="axis-line" d={`M${left} ${y(0)}H${right}`} />
          {after.map((error, index) => {
            const middle = x(index + 0.5);
            const bar = barOf(right - left, count);
            return (
              <g key={index}>
                <rect
                  class="bar-before"
                  x={middle - bar - 2}
                  y={Math.min(y(0), y(before[index]!))}
                  width={bar}
                  height={Math.abs(y(before[index]!) - y(0))}
                />
                <rect
                  class="bar-after"
                  x={middle + 2}
                  y={Math.min(y(0), y(error))}
                  width={bar}
                  height={Math.max(1, Math.abs(y(error) - y(0)))}
                />
              </g>
            );
          })}
        </>
      )}
    >
      {({ field: { left, right, bottom }, x, y }) => (
        <>
          <g aria-hidden="true">
            {after.map((_, index) => (
              <text key={index} class="key" x={x(index + 0.5)} y={bottom + 16} text-anchor="middle">
                {String(index + 1)}
              </text>
            ))}
            <text class="axis-text" x={(left + right) / 2} y={bottom + 33} text-anchor="middle">
              cylinder
            </text>
          </g>
          {before.map((error, index) => (
            <Handle
              key={index}
              x={x(index + 0.5) - barOf(right - left, count) / 2 - 2}
              y={y(error)}
              label={`Cylinder ${String(index + 1)} as found`}
              value={error}
              min={-end}
              max={end}
              step={0.1}
              valueText={`${sideOf(error)} as found, ${sideOf(after[index]!)} after the plate`}
              along="y"
              onDrag={(_, py) => place(index, y.invert(py))}
              onStep={(value) => place(index, value)}
              onEnd={commit}
            />
          ))}
        </>
      )}
    </Chart>
  );
}
