import { fixed, showFixed, shownUnit } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { units, toShown } from '../../frame/text/units.ts';
import { MathsError } from '../../maths/numeric/errors.ts';
import { Chart } from '../../picture/chart/chart.tsx';
import { Band, Curve, type Point } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { apart } from '../../picture/common/labels.ts';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { evenly, onStep } from '../../maths/numeric/steps.ts';
import { jetAt, sizeDecimals, type Values } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const HEIGHT = 340;
/** Room for the sizes to the right of the field. */
const SIZES = 64;
const COLD = -20;
const HOT = 50;

const key: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'in the air now' },
  { as: 'line', look: 'curve curve-other', words: 'in the air where it was right' },
  { as: 'mark', look: 'found-mark', words: 'right' },
  { as: 'line', look: 'rule-line', words: 'jets at hand' },
  { as: 'area', look: 'band-error', words: '± of the readings' },
];

/** The jet at a temperature, or nothing where the air could not be so warm at this pressure. */
function jetIfAny(v: Values, temperature: number, day: 'now' | 'right'): number | undefined {
  try {
    return jetAt(v, temperature, day);
  } catch (error) {
    if (error instanceof MathsError) return undefined;
    throw error;
  }
}

/** The jet that keeps the mixture against temperature, at the pressure now and at that last right. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, spreads, lengths, idPrefix, set, commit } = props;
  const say = (mm: number): string => showFixed(mm, 'mm', 3, lengths);
  const low = useFrozen(Math.min(COLD, v.temperature, v['right-temperature']));
  const high = useFrozen(Math.max(HOT, v.temperature, v['right-temperature']));
  const jet = computed.jet as number;
  const degrees = evenly(low, high, 50);
  const jets = (day: 'now' | 'right') =>
    degrees.flatMap((t): Point[] => {
      const there = jetIfAny(v, t, day);
      return there === undefined ? [] : [[t, there]];
    });
  const now = jets('now');
  const then = jets('right');
  const all = [jet, v.jet, ...[...now, ...then].map(([, there]) => there)];
  const least = Math.min(...all);
  const most = Math.max(...all);
  const unit = shownUnit([most], 'mm', lengths);
  const shown = (mm: number): number => toShown(mm, unit);
  const size = (value: number): string =>
    fixed(value, unit === 'thou' ? 1 : unit === 'in' ? 4 : sizeDecimals(v.sizes));
  const room = (most - least) * 0.08;
  const sizes = [shown(least - room), shown(most + room)] as const;
  const half = spreads().jet ?? 0;
  const inside = [...new Set(v.sizes)]
    .filter((each) => shown(each) >= sizes[0] && shown(each) <= sizes[1])
    .sort((a, b) => b - a);

  return (
    <Chart
      id={`${idPrefix}jet-field`}
      height={HEIGHT}
      label={`Jet that keeps the mixture against temperature: ${say(jet)} at ${fixed(v.temperature, 0)} °C`}
      meaning={key}
      right={SIZES}
      x={{ domain: [low, high], label: 'air temperature, °C' }}
      y={{ domain: sizes, label: `jet diameter, ${units[unit].label}`, format: size }}
      marks={({ field: { left, right }, x, y }) => {
        const at = (points: readonly Point[]): Point[] =>
          points.map(([t, d]) => [x(t), y(shown(d))]);
        return (
          <>
            {half > 0 ? (
              <Band edges={now.map(([t, d]) => [x(t), y(shown(d - half)), y(shown(d + half))])} />
            ) : null}
            <path
              class="rule-line"
              d={inside.map((each) => `M${left} ${y(shown(each))}H${right}`).join('')}
            />
            <Curve kind="other" points={at(then)} />
            <Curve points={at(now)} />
          </>
        );
      }}
    >
      {({ field: { right }, x, y }) => {
        const places = inside.map((each) => y(shown(each)));
        const labelled = apart(places);
        return (
          <>
            <g aria-hidden="true">
              {inside.map((each, index) =>
                labelled.has(index) ? (
                  <text
                    key={each}
                    class="dimension-text"
                    x={right + 14}
                    y={places[index]}
                    dy="0.32em"
                  >
                    {size(shown(each))}
                  </text>
                ) : null,
              )}
              <circle
                class="found-mark"
                cx={x(v['right-temperature'])}
                cy={y(shown(v.jet))}
                r={5}
              />
            </g>
            <Handle
              x={x(v.temperature)}
              y={y(shown(jet))}
              label="Temperature"
              value={v.temperature}
              min={low}
              max={high}
              step={1}
              valueText={`${fixed(v.temperature, 0)} °C, jet ${say(jet)}`}
              onDrag={(px) =>
                set('temperature', Math.min(high, Math.max(low, onStep(x.invert(px), 1))))
              }
              onStep={(value) => set('temperature', value)}
              onEnd={commit}
            />
          </>
        );
      }}
    </Chart>
  );
}
