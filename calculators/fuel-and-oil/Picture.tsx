import { fixed } from '../frame/format.ts';
import type { PictureProps } from '../frame/types.ts';
import { partsOf } from '../maths/fuel-and-oil.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Curve } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { onStep } from '../picture/steps.ts';
import { ratioOf, type Computed, type Values } from './compute.ts';

const WIDTH = 360;
const HEIGHT = 350;
/** Ratios drawn for comparison. */
const USUAL = [20, 25, 32, 40, 50] as const;

/** Oil against petrol for this ratio and the usual ones, and below it what is then in the tank. */
export function Picture({ values, results, set, commit }: PictureProps) {
  const v = values as unknown as Values;
  const computed = results as unknown as Computed;
  const ratio = ratioOf(v);
  const oil = computed.oil as number;
  const end = useStill(v.fuel <= 9 ? 10 : v.fuel * 1.25);
  const most = (1060 * end) / Math.min(ratio, USUAL[0]);
  const left = usualMargin.left;
  const right = WIDTH - 34;
  const floor = HEIGHT - 116;
  const ceiling = usualMargin.top + 14;
  const x = scaleLinear([0, end], [left, right]);
  const y = scaleLinear([0, most], [floor, ceiling]);
  const others = USUAL.filter((usual) => Math.abs(usual - ratio) > 0.5);

  const there = partsOf({ volume: v.already, ratio: v['already-ratio'] });
  const total = computed.total as number;
  const bar = scaleLinear([0, Math.max(total, 1e-9)], [left, right]);
  const barTop = HEIGHT - 66;
  const pieces: readonly (readonly [words: string, volume: number, kind: string])[] = [
    ['petrol there', there.petrol, 'fuel'],
    ['petrol put in', v.fuel, 'petrol-new'],
    ['oil', there.oil + oil / 1000, 'oil-part'],
  ];
  let at = 0;

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Oil against petrol: ${fixed(oil, 0)} ml for ${fixed(v.fuel, 2)} litres`}
    >
      <AxisBottom scale={x} at={floor} gridTo={ceiling - floor} label="petrol put in, litres" />
      <AxisLeft scale={y} at={left} gridTo={right} label="oil, ml" />
      {others.map((usual) => (
        <g key={usual}>
          <Curve
            kind="other"
            points={[
              [x(0), y(0)],
              [x(end), y((1000 * end) / usual)],
            ]}
          />
          <text x={right + 4} y={y((1000 * end) / usual)} dy="0.32em" aria-hidden="true">
            {String(usual)}
          </text>
        </g>
      ))}
      <Curve
        points={[
          [x(0), y(0)],
          [x(end), y((1000 * end) / ratio)],
        ]}
      />
      <text
        class="dimension-text"
        x={right + 4}
        y={y((1000 * end) / ratio)}
        dy="0.32em"
        aria-hidden="true"
      >
        {fixed(ratio, 0)}
      </text>
      <path class="rule-line" fill="none" d={`M${left} ${y(oil)}H${x(v.fuel)}V${floor}`} />
      <g aria-hidden="true">
        {pieces.map(([words, volume, kind]) => {
          const from = at;
          at += volume;
          return volume > 0 ? (
            <g key={words}>
              <rect
                class={`tank-part ${kind}`}
                x={bar(from)}
                y={barTop}
                width={bar(at) - bar(from)}
                height={26}
              />
              {bar(at) - bar(from) > 78 ? (
                <text
                  x={(bar(from) + bar(at)) / 2}
                  y={barTop + 13}
                  dy="0.32em"
                  text-anchor="middle"
                >
                  {words}
                </text>
              ) : null}
            </g>
          ) : null;
        })}
        <text x={right} y={barTop + 44} text-anchor="end">
          oil ▲
        </text>
        <text x={left} y={barTop + 44}>
          {`in the tank then ${fixed(total, 2)} litres at ${fixed(computed['mixed-ratio'] as number, 1)} : 1`}
        </text>
      </g>
      <Handle
        x={x(v.fuel)}
        y={y(oil)}
        label="Petrol"
        value={v.fuel}
        min={0}
        max={1000}
        step={0.5}
        valueText={`${fixed(v.fuel, 1)} litres of petrol, ${fixed(oil, 0)} ml of oil`}
        onDrag={(px) => set('fuel', Math.min(end, Math.max(0.1, onStep(x.invert(px), 0.1))))}
        onStep={(value) => set('fuel', value)}
        onEnd={commit}
      />
    </Plot>
  );
}
