import { fixed } from '../frame/format.ts';
import { displayUnit, fromDisplay, toDisplay, units, type LengthDisplay } from '../frame/units.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Band, Curve } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';

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
  readonly onHeight: (height: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 300;

/** Fuel level against gauge reading, deeper downwards, with the carburettors as found. */
export function LevelPlot(props: Props) {
  const { height, level, levelSpread, wanted, heightFor, found, fuller, lengths } = props;
  const unit = displayUnit('mm', lengths);
  const shown = (mm: number): number => toDisplay(mm, 'mm', lengths);
  const say = (mm: number): string =>
    `${fixed(shown(mm), lengths === 'in' ? 3 : 1)} ${units[unit].label}`;
  const all = [height, heightFor, ...found];
  const low = useStill(Math.floor(Math.min(...all) - 1));
  const high = useStill(Math.ceil(Math.max(...all) + 1));
  const below = level - height;
  const left = usualMargin.left;
  const right = WIDTH - usualMargin.right;
  const floor = HEIGHT - usualMargin.bottom;
  const ceiling = usualMargin.top + 14;
  const x = scaleLinear([shown(low), shown(high)], [left, right]);
  const y = scaleLinear(
    [shown(low + below - Math.max(fuller ?? 0, levelSpread)), shown(high + below + levelSpread)],
    [ceiling, floor],
  );
  const line = (rise: number): [number, number][] =>
    [low, high].map((at) => [x(shown(at)), y(shown(at + below - rise))]);

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Fuel level against gauge reading: ${say(level)} below the face at ${say(height)}`}
    >
      <AxisBottom
        scale={x}
        at={floor}
        gridTo={ceiling - floor}
        label={`gauge reading, ${units[unit].label}`}
      />
      <AxisLeft
        scale={y}
        at={left}
        gridTo={right}
        label={`fuel level, ${units[unit].label} below the face`}
      />
      {levelSpread > 0 ? (
        <Band
          edges={[low, high].map((at) => [
            x(shown(at)),
            y(shown(at + below - levelSpread)),
            y(shown(at + below + levelSpread)),
          ])}
        />
      ) : null}
      {fuller === undefined ? null : <Curve kind="other" points={line(fuller)} />}
      <Curve points={line(0)} />
      <path
        class="rule-line"
        fill="none"
        d={`M${left} ${y(shown(wanted))}H${x(shown(heightFor))}V${floor}`}
      />
      <g aria-hidden="true">
        {found.map((at, index) => (
          <g key={index} transform={`translate(${x(shown(at))} ${y(shown(at + below))})`}>
            <circle class="found-mark" r={4} />
            <text x={8} y={index % 2 === 0 ? -6 : 16}>
              {String(index + 1)}
            </text>
          </g>
        ))}
        <text class="dimension-text" x={left + 6} y={y(shown(wanted)) - 5}>
          wanted
        </text>
        <g class="key" transform={`translate(${right - 146} ${ceiling + 12})`}>
          <path class="curve" d="M0 0h22" />
          <text x={28} dy="0.32em">
            as given
          </text>
          {fuller === undefined ? null : (
            <>
              <path class="curve curve-other" d="M0 17h22" />
              <text x={28} y={17} dy="0.32em">
                500 mm more head
              </text>
            </>
          )}
        </g>
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
    </Plot>
  );
}
