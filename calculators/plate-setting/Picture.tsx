import { sliderCrank } from '../engine-inputs.ts';
import { fixed } from '../frame/format.ts';
import type { PictureProps } from '../frame/types.ts';
import { positionAt } from '../maths/plate-setting.ts';
import { AxisLeft } from '../picture/axis.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { onStep } from '../picture/steps.ts';
import { timingsOf, type Values } from './compute.ts';

const WIDTH = 360;
const HEIGHT = 320;

const sideOf = (error: number): string =>
  `${fixed(Math.abs(error), 1)} degrees ${error < 0 ? 'late' : 'early'}`;

/** Each cylinder's error before and after the turn of the plate, with the tolerance as a band. */
export function Picture({ values, results, set, commit }: PictureProps) {
  const v = values as unknown as Values;
  const { target } = timingsOf(v);
  const before = results['error-before'] as readonly number[];
  const after = results.error as readonly number[];
  const move = results['plate-move'] as number;
  const most = Math.max(v.tolerance, ...before.map(Math.abs), ...after.map(Math.abs));
  const end = useStill(Math.max(2, Math.ceil(most * 1.25)));

  const left = usualMargin.left;
  const right = WIDTH - usualMargin.right;
  const floor = HEIGHT - 34;
  const ceiling = usualMargin.top + 20;
  const y = scaleLinear([-end, end], [floor, ceiling]);
  const pitch = (right - left) / before.length;
  const bar = Math.min(20, pitch * 0.24);

  const place = (index: number, error: number): void => {
    const timing = target + Math.min(end, Math.max(-end, onStep(error, 0.1)));
    if (v.as === 'angle') set(`fired-angle-${String(index + 1)}`, onStep(timing, 0.1));
    else set(`fired-${String(index + 1)}`, onStep(positionAt(sliderCrank(v), timing), 0.01));
  };

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Error of each cylinder before and after turning the plate by ${fixed(move, 2)} degrees of crank.`}
    >
      <rect
        class="band tolerance"
        x={left}
        y={y(v.tolerance)}
        width={right - left}
        height={y(-v.tolerance) - y(v.tolerance)}
      />
      <AxisLeft
        scale={y}
        at={left}
        gridTo={right}
        label="error, crank degrees: early above, late below"
      />
      <path class="axis-line" d={`M${left} ${y(0)}H${right}`} />
      <g aria-hidden="true">
        {after.map((error, index) => {
          const middle = left + pitch * (index + 0.5);
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
              <text class="key" x={middle} y={floor + 16} text-anchor="middle">
                {String(index + 1)}
              </text>
            </g>
          );
        })}
        <text class="key" x={left} y={HEIGHT - 4}>
          cylinder; open bar as found, full bar after the plate
        </text>
      </g>
      {before.map((error, index) => (
        <Handle
          key={index}
          x={left + pitch * (index + 0.5) - bar / 2 - 2}
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
    </Plot>
  );
}
