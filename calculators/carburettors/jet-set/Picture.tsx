import { fixed, showFixed } from '../../frame/text/format.ts';
import { Absent, type PictureProps } from '../../frame/types.ts';
import { displayUnit, fromDisplay, toDisplay, units } from '../../frame/text/units.ts';
import { areaOfBore, boreOfArea } from '../../maths/carburettor/orifice.ts';
import { onStep } from '../../maths/numeric/steps.ts';
import { Chart } from '../../picture/chart/chart.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { chosenOf, isRejected, type Values } from './compute.ts';
import { mainJet } from '../../frame/ranges.ts';
import { inputs } from './inputs.ts';
import { areasOf, readingOf, seriesOf } from './readings.ts';
import type { results } from './results.ts';

const HEIGHT = 330;
/** More jets than these stand too close for a finger each. */
const MOST_HANDLES = 8;

/** A reading as it may be set by hand: on its step, and within its range. */
function settable(v: Values, bore: number): number {
  const { min, max, step } = inputs[seriesOf[v.by]];
  const fine = v.by === 'pin' ? 0.005 : v.by === 'flow' ? 0.1 : step;
  return Math.min(max, Math.max(min, onStep(readingOf(v, bore), fine)));
}

const crossAt = (x: number, y: number, reach: number): string =>
  `M${x - reach} ${y - reach}L${x + reach} ${y + reach}M${x + reach} ${y - reach}L${x - reach} ${y + reach}`;

/** Each jet's size with its ±, what is allowed about the size wanted or the set, and the set itself. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, lengths, idPrefix, set, commit } = props;
  const unit = displayUnit('mm', lengths);
  const shown = (bore: number): number => toDisplay(bore, 'mm', lengths);
  const sizes = areasOf(v).map(boreOfArea);
  const spreads = props.spreads();
  const chosen = chosenOf(computed);
  const setSize = computed['set-size'];
  const about = v.size ?? (setSize instanceof Absent ? undefined : (setSize as number));
  const allowed =
    about === undefined
      ? undefined
      : [1 - v.tolerance / 100, 1 + v.tolerance / 100].map((part) =>
          boreOfArea(Math.max(0, part) * areaOfBore(about)),
        );
  const reaches = sizes.map((_, i) => spreads[`jet-size-${String(i + 1)}`] ?? 0);
  const all = [
    ...sizes.flatMap((size, i) => [size - reaches[i]!, size + reaches[i]!]),
    ...(allowed ?? []),
  ];
  const least = Math.min(...all);
  const most = Math.max(...all);
  const room = 0.12 * (most - least) + 0.01 * most;
  const domain = useFrozen([Math.max(0, least - room), most + room] as const);
  const meaning: readonly KeyEntry[] = [
    { as: 'mark', look: 'found-mark', words: 'in the set' },
    ...(allowed === undefined
      ? []
      : [{ as: 'area', look: 'tolerance', words: 'allowed' } as const]),
    ...(chosen.length > 1
      ? [{ as: 'line', look: 'rule-line', words: 'the set’s ends' } as const]
      : []),
  ];
  const inSet = chosen.map((jet) => sizes[jet - 1]!);
  const { against } = computed;
  const isOut = (index: number): boolean =>
    !(against instanceof Absent) && isRejected(v, (against as readonly number[])[index]!);
  // A ring or a cross stands round a handle, and where there is none it is the mark itself.
  const mark = sizes.length > MOST_HANDLES ? 5 : 10;
  const put = (index: number, bore: number): void => {
    set(`${seriesOf[v.by]}-${String(index + 1)}`, settable(v, bore));
  };
  const say = (bore: number): string => showFixed(bore, 'mm', 3, lengths);
  return (
    <Chart
      id={`${idPrefix}jet-field`}
      height={HEIGHT}
      label={`Sizes of ${String(sizes.length)} jets. ${chosen.length === 0 ? 'No set fits.' : `The set is of jets ${chosen.join(', ')}, their areas ${fixed(computed.spread as number, 1)} per cent apart.`}`}
      meaning={meaning}
      x={{ domain: [0.4, sizes.length + 0.6] }}
      y={{
        domain: [shown(domain[0]), shown(domain[1])],
        label: `size, ${units[unit].label}`,
        format: (size) => fixed(size, unit === 'mm' ? 2 : 3),
      }}
      behind={({ field: { top, bottom }, x }) =>
        chosen.map((jet) => (
          <rect
            key={jet}
            class="shut-part"
            x={x(jet - 0.42)}
            y={top}
            width={x(0.84) - x(0)}
            height={bottom - top}
          />
        ))
      }
      marks={({ field: { left, right }, x, y }) => (
        <>
          {allowed === undefined ? null : (
            <rect
              class="band tolerance"
              x={left}
              y={y(shown(allowed[1]!))}
              width={right - left}
              height={y(shown(allowed[0]!)) - y(shown(allowed[1]!))}
            />
          )}
          {inSet.length > 1 ? (
            <path
              class="rule-line"
              d={[Math.min(...inSet), Math.max(...inSet)]
                .map((size) => `M${left} ${y(shown(size))}H${right}`)
                .join('')}
            />
          ) : null}
          <path
            class="turned-line"
            d={sizes
              .map((size, i) => {
                const [low, high] = [size - reaches[i]!, size + reaches[i]!].map((end) =>
                  y(shown(end)),
                );
                return `M${x(i + 1)} ${low}V${high}m-4 0h8M${x(i + 1) - 4} ${low}h8`;
              })
              .join('')}
          />
        </>
      )}
    >
      {({ field: { left, right, bottom }, x, y }) => (
        <>
          <path class="axis-line" d={`M${left} ${bottom}H${right}`} />
          <g aria-hidden="true">
            {sizes.map((size, i) => {
              const [cx, cy] = [x(i + 1), y(shown(size))];
              if (isOut(i)) {
                return <path key={i} class="found-mark" d={crossAt(cx, cy, mark)} />;
              }
              return (
                <circle
                  key={i}
                  class="found-mark"
                  cx={cx}
                  cy={cy}
                  r={chosen.includes(i + 1) ? mark : 3}
                />
              );
            })}
            {sizes.map((_, i) => (
              <text key={i} x={x(i + 1)} y={bottom + 17} text-anchor="middle">
                {sizes.length <= 12 || (i + 1) % 2 === 0 ? String(i + 1) : ''}
              </text>
            ))}
            <text class="axis-text" x={(left + right) / 2} y={bottom + 34} text-anchor="middle">
              jet (✕ rejected)
            </text>
          </g>
          {sizes.length > MOST_HANDLES
            ? null
            : sizes.map((size, i) => (
                <Handle
                  key={i}
                  x={x(i + 1)}
                  y={y(shown(size))}
                  label={`Size of jet ${String(i + 1)}`}
                  value={Number(size.toFixed(4))}
                  min={mainJet.min}
                  max={mainJet.max}
                  step={0.01}
                  valueText={`${say(size)}, ${chosen.includes(i + 1) ? 'in the set' : 'not in the set'}`}
                  along="y"
                  onDrag={(_, py) => put(i, fromDisplay(y.invert(py), 'mm', lengths))}
                  onStep={(value) => put(i, value)}
                  onEnd={commit}
                />
              ))}
        </>
      )}
    </Chart>
  );
}
