import { fixed } from '../frame/format.ts';
import type { PictureProps } from '../frame/types.ts';
import { displayUnit, fromDisplay, toDisplay, units } from '../frame/units.ts';
import { AxisLeft } from '../picture/axis.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { onStep } from '../picture/steps.ts';
import { targetOf, type Computed, type Values } from './compute.ts';

const WIDTH = 360;
const HEIGHT = 310;

/**
 * The slides over the floors of their bores as found (or the gauges behind them), the line they are
 * brought to, and the turns that do it.
 */
export function Picture({ values, results, lengths, set, commit }: PictureProps) {
  const v = values as unknown as Values;
  const computed = results as unknown as Computed;
  const drill = v.method === 'drill';
  const home = drill ? ('mm' as const) : ('kPa' as const);
  const unit = displayUnit(home, lengths);
  const shown = (figure: number): number => toDisplay(figure, home, lengths);
  const say = (figure: number): string =>
    `${fixed(shown(figure), unit === 'in' ? 4 : drill ? 2 : 1)} ${units[unit].label}`;
  const readings = drill ? v.opening : v.vacuum;
  const key = drill ? 'opening' : 'vacuum';
  const step = drill ? 0.1 : 0.5;
  const target = targetOf(v);
  const turns = computed.turn as readonly number[];
  const all = [...readings, target];
  const high = useStill(Math.max(...all, drill ? 1 : 5) * (drill ? 1.5 : 1.15));
  const left = usualMargin.left;
  const right = WIDTH - usualMargin.right;
  const floor = HEIGHT - 52;
  const ceiling = usualMargin.top + 16;
  const y = scaleLinear([0, shown(high)], [floor, ceiling]);
  const wide = (right - left) / readings.length;
  const half = Math.min(30, wide * 0.3);
  const move = (index: number, wanted: number): void => {
    const most = drill ? 60 : 101;
    set(`${key}-${String(index + 1)}`, Math.min(most, Math.max(0, onStep(wanted, step))));
  };

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`${drill ? 'Openings' : 'Vacuum'} of the slides as found, all to be brought to ${say(target)}`}
    >
      <AxisLeft
        scale={y}
        at={left}
        gridTo={right}
        label={
          drill
            ? `opening as found, ${units[unit].label}`
            : `vacuum as found, ${units[unit].label} (more is less open)`
        }
      />
      {readings.map((reading, index) => {
        const middle = left + (index + 0.5) * wide;
        const turn = turns[index]!;
        const still = Math.abs(turn) < 1e-9;
        const tip = y(shown(target));
        const from = y(shown(reading));
        const down = tip > from ? 1 : -1;
        const head = Math.min(7, Math.abs(tip - from));
        return (
          <g key={index}>
            <rect
              class={drill ? 'part part-moving' : 'bar-before'}
              x={middle - half}
              y={drill ? ceiling : from}
              width={2 * half}
              height={drill ? from - ceiling : Math.max(0, floor - from)}
            />
            <g aria-hidden="true">
              {still ? null : (
                <path
                  class="dimension"
                  d={`M${middle + half + 7} ${from}V${tip}l-4 ${-down * head}M${middle + half + 7} ${tip}l4 ${-down * head}`}
                />
              )}
              <text x={middle} y={floor + 18} text-anchor="middle">
                {`slide ${String(index + 1)}`}
              </text>
              <text class="dimension-text" x={middle} y={floor + 36} text-anchor="middle">
                {still ? 'leave it' : `${turn > 0 ? '+' : '−'}${fixed(Math.abs(turn), 2)}`}
              </text>
            </g>
            <Handle
              x={middle}
              y={from}
              label={
                drill
                  ? `Opening of slide ${String(index + 1)}`
                  : `Vacuum of slide ${String(index + 1)}`
              }
              value={reading}
              min={0}
              max={drill ? 60 : 101}
              step={step}
              valueText={`${say(reading)}, turn ${fixed(turn, 2)}`}
              along="y"
              onDrag={(_, py) => move(index, fromDisplay(y.invert(py), home, lengths))}
              onStep={(value) => move(index, value)}
              onEnd={commit}
            />
          </g>
        );
      })}
      <path class="rule-line target-line" d={`M${left} ${y(shown(target))}H${right}`} />
      <text x={4} y={floor + 36} aria-hidden="true">
        turns
      </text>
    </Plot>
  );
}
