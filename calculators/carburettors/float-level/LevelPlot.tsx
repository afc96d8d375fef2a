import { showFixed } from '../../frame/text/format.ts';
import {
  displayUnit,
  fromDisplay,
  toDisplay,
  units,
  type LengthDisplay,
} from '../../frame/text/units.ts';
import { Chart, Guides, type ChartFrame } from '../../picture/chart/chart.tsx';
import { Band, Curve } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { inRow } from '../../picture/common/labels.ts';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { proseIn } from '../../frame/text/prose.ts';

interface Props {
  readonly height: number;
  readonly level: number;
  readonly levelSpread: number;
  readonly wanted: number;
  readonly heightFor: number;
  /** Readings as found, carburettor 1 first. */
  readonly found: readonly number[];
  /** Rise of the fuel with 500 mm more head, mm. */
  readonly fuller: number | undefined;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  readonly onHeight: (height: number) => void;
  readonly onEnd: () => void;
}

const HEIGHT = 320;
/** Room above the field for the numbers of the carburettors. */
const NUMBERS = 24;

const usual: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'as given' },
  { as: 'mark', look: 'found-mark', words: 'as found, by number' },
  { as: 'line', look: 'rule-line', words: 'wanted' },
];
const head = (lengths: LengthDisplay): KeyEntry => ({
  as: 'line',
  look: 'curve curve-other',
  words: proseIn('500 mm more head', lengths),
});

/** Fuel level against gauge reading, deeper downwards, with the carburettors as found. */
export function LevelPlot(props: Props) {
  const { height, level, levelSpread, wanted, heightFor, found, fuller, lengths, idPrefix } = props;
  const unit = displayUnit('mm', lengths);
  const shown = (mm: number): number => toDisplay(mm, 'mm', lengths);
  const say = (mm: number): string => showFixed(mm, 'mm', 1, lengths);
  const all = [height, heightFor, ...found];
  const low = useFrozen(Math.floor(Math.min(...all) - 1));
  const high = useFrozen(Math.ceil(Math.max(...all) + 1));
  const below = level - height;
  const key = fuller === undefined ? usual : [...usual, head(lengths)];
  const deepest = shown(high + below + levelSpread);
  const highest = shown(low + below - Math.max(fuller ?? 0, levelSpread));
  const line = ({ x, y }: ChartFrame, rise: number): [number, number][] =>
    [low, high].map((at) => [x(shown(at)), y(shown(at + below - rise))]);

  return (
    <Chart
      id={`${idPrefix}level-field`}
      height={HEIGHT}
      label={`Fuel level against gauge reading: ${say(level)} below the face at ${say(height)}`}
      meaning={key}
      above={NUMBERS}
      x={{ domain: [shown(low), shown(high)], label: `gauge reading, ${units[unit].label}` }}
      y={{
        domain: [deepest, highest],
        label: `fuel level, ${units[unit].label} below the face`,
      }}
      marks={(frame) => {
        const { field, x, y } = frame;
        return (
          <>
            {levelSpread > 0 ? (
              <Band
                edges={[low, high].map((at) => [
                  x(shown(at)),
                  y(shown(at + below - levelSpread)),
                  y(shown(at + below + levelSpread)),
                ])}
              />
            ) : null}
            <path
              class="drop"
              d={found
                .map((at) => `M${x(shown(at))} ${field.top}V${y(shown(at + below))}`)
                .join('')}
            />
            {fuller === undefined ? null : <Curve kind="other" points={line(frame, fuller)} />}
            <Curve points={line(frame, 0)} />
            <Guides frame={frame} at={[x(shown(heightFor)), y(shown(wanted))]} />
          </>
        );
      }}
    >
      {({ field, x, y }) => (
        <>
          <g aria-hidden="true">
            {found.map((at, index) => (
              <circle
                key={index}
                class="found-mark"
                cx={x(shown(at))}
                cy={y(shown(at + below))}
                r={4}
              />
            ))}
            {inRow(
              found.map((at, index) => ({ at: x(shown(at)), words: String(index + 1) })),
              field.left,
              field.right,
            ).map(({ at, words }) => (
              <text key={words} x={at} y={field.top - 9} text-anchor="middle">
                {words}
              </text>
            ))}
          </g>
          <Handle
            x={x(shown(height))}
            y={y(shown(level))}
            label="Gauge reading"
            value={height}
            min={low}
            max={high}
            step={0.1}
            valueText={`Gauge ${say(height)}, fuel ${say(level)} below the face`}
            onDrag={(px) => props.onHeight(fromDisplay(x.invert(px), 'mm', lengths))}
            onStep={props.onHeight}
            onEnd={props.onEnd}
          />
        </>
      )}
    </Chart>
  );
}
