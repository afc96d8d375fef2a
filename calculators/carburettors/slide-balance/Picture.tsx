import { fixed, showFixed, shownUnit } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { units, fromShown, toShown } from '../../frame/text/units.ts';
import { Chart } from '../../picture/chart/chart.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import type { LinearScale } from '../../picture/chart/scale.ts';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { intoRange, onStep } from '../../maths/numeric/steps.ts';
import { targetOf } from './compute.ts';
import { inputs } from './inputs.ts';
import type { results } from './results.ts';

const HEIGHT = 330;
/** A column narrower than this has no room for words. */
const ROOM_FOR_WORDS = 58;

/** With more slides than these the turns stand in two lines, every other one lower. */
const IN_ONE_LINE = 6;
const LINE = 16;
/** A shorter arrow begins beyond the edge of its slide, so that it has a shaft. */
const SHAFT = 16;
const HEAD = 7;
/** A point so near the floor, as a part of the height, has its lower arrow among the names: so far they make way. */
const NEAR_FLOOR = 0.06;
const MAKE_WAY = 8;

/** Half the width of a column. */
const halfOf = (x: LinearScale): number => Math.min(30, (x(1) - x(0)) * 0.3);

/**
 * The slides over the floors of their bores as found (or the gauges behind them), the line they are
 * brought to, and the turns that do it.
 */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, lengths, idPrefix, set, commit } = props;
  const drill = v.method === 'drill';
  const home = drill ? ('mm' as const) : ('air' as const);
  const say = (figure: number): string => showFixed(figure, home, drill ? 2 : 1, lengths);
  const readings = drill ? v.opening : v.vacuum;
  const key = drill ? 'opening' : 'vacuum';
  const step = drill ? 0.1 : 0.5;
  const target = targetOf(v);
  const turns = computed.turn as readonly number[];
  const all = [...readings, target];
  const most = Math.max(...all, drill ? 1 : 5);
  // In whole steps, so that a step of the highest is seen against the scale.
  const high = useFrozen(drill ? Math.ceil(most * 1.5) : 5 * Math.ceil((most * 1.15) / 5));
  const unit = shownUnit([high], home, lengths);
  const shown = (figure: number): number => toShown(figure, unit);
  const legend: readonly KeyEntry[] = [
    {
      as: 'area',
      look: drill ? 'part part-moving' : 'bar-before',
      words: drill ? 'slide' : 'vacuum',
    },
    { as: 'line', look: 'rule-line target-line', words: 'brought to' },
  ];
  const sunk = readings.some((reading) => reading < high * NEAR_FLOOR) ? MAKE_WAY : 0;
  const move = (index: number, wanted: number): void => {
    set(`${key}-${String(index + 1)}`, intoRange(inputs[key], onStep(wanted, step)));
  };

  return (
    <Chart
      id={`${idPrefix}target-field`}
      height={HEIGHT}
      label={`${drill ? 'Openings' : 'Vacuum'} of the slides as found, all to be brought to ${say(target)}`}
      meaning={legend}
      below={12 + sunk + (readings.length > IN_ONE_LINE ? LINE : 0)}
      x={{ domain: [0, readings.length] }}
      y={{
        domain: [0, shown(high)],
        label: drill
          ? `opening as found, ${units[unit].label}`
          : `vacuum as found, ${units[unit].label} (more is less open)`,
      }}
      marks={({ field: { left, right, top, bottom }, x, y }) => {
        const half = halfOf(x);
        return (
          <>
            {readings.map((reading, index) => {
              const tip = y(shown(reading));
              return (
                <rect
                  key={index}
                  class={drill ? 'part part-moving' : 'bar-before'}
                  x={x(index + 0.5) - half}
                  y={drill ? top : tip}
                  width={2 * half}
                  height={drill ? tip - top : Math.max(0, bottom - tip)}
                />
              );
            })}
            <path class="rule-line target-line" d={`M${left} ${y(shown(target))}H${right}`} />
          </>
        );
      }}
    >
      {({ field: { bottom: floor }, x, y }) => {
        const half = halfOf(x);
        const words = x(1) - x(0) >= ROOM_FOR_WORDS;
        return (
          <>
            {readings.map((reading, index) => {
              const middle = x(index + 0.5);
              const turn = turns[index]!;
              const still = Math.abs(turn) < 1e-9;
              const tip = y(shown(target));
              const from = y(shown(reading));
              const down = tip > from ? 1 : -1;
              const tail = Math.abs(tip - from) < SHAFT ? tip - down * SHAFT : from;
              return (
                <g key={index}>
                  <g aria-hidden="true">
                    {still ? null : (
                      <path
                        class="dimension"
                        d={`M${middle + half + 7} ${tail}V${tip}l-4 ${-down * HEAD}M${middle + half + 7} ${tip}l4 ${-down * HEAD}`}
                      />
                    )}
                    <text x={middle} y={floor + 18 + sunk} text-anchor="middle">
                      {`${words ? 'slide ' : ''}${String(index + 1)}`}
                    </text>
                    <text
                      class="dimension-text"
                      x={middle}
                      y={
                        floor + 36 + sunk + (readings.length > IN_ONE_LINE ? (index % 2) * LINE : 0)
                      }
                      text-anchor="middle"
                    >
                      {still
                        ? words
                          ? 'leave it'
                          : '0'
                        : `${turn > 0 ? '+' : '−'}${fixed(Math.abs(turn), 2)}`}
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
                    min={inputs[key].min}
                    max={inputs[key].max}
                    step={step}
                    valueText={`${say(reading)}, turn ${fixed(turn, 2)}`}
                    along="y"
                    onDrag={(_, py) => move(index, fromShown(y.invert(py), unit))}
                    onStep={(value) => move(index, value)}
                    onEnd={commit}
                  />
                </g>
              );
            })}
            <text x={4} y={floor + 36 + sunk} aria-hidden="true">
              turns
            </text>
          </>
        );
      }}
    </Chart>
  );
}
