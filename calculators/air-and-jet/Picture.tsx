import { fixed } from '../frame/format.ts';
import type { PictureProps } from '../frame/types.ts';
import { displayUnit, toDisplay, units } from '../frame/units.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Band, Curve } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { evenly, onStep } from '../picture/steps.ts';
import { jetAt, type Computed, type Values } from './compute.ts';

const WIDTH = 360;
const HEIGHT = 340;
const COLD = -20;
const HOT = 50;

/** The jet that keeps the mixture against temperature, at the pressure now and at that last right. */
export function Picture({ values, results, spreads, lengths, set, commit }: PictureProps) {
  const v = values as unknown as Values;
  const computed = results as unknown as Computed;
  const unit = displayUnit('mm', lengths);
  const shown = (mm: number): number => toDisplay(mm, 'mm', lengths);
  const say = (mm: number): string =>
    `${fixed(shown(mm), lengths === 'in' ? 4 : 3)} ${units[unit].label}`;
  const low = useStill(Math.min(COLD, v.temperature, v['right-temperature']));
  const high = useStill(Math.max(HOT, v.temperature, v['right-temperature']));
  const degrees = evenly(low, high, 50);
  const now = degrees.map((t) => jetAt(v, t, 'now'));
  const then = degrees.map((t) => jetAt(v, t, 'right'));
  const least = Math.min(...now, ...then);
  const most = Math.max(...now, ...then);
  const room = (most - least) * 0.08;
  const left = 56;
  const right = WIDTH - usualMargin.right;
  const floor = HEIGHT - usualMargin.bottom;
  const ceiling = usualMargin.top + 50;
  const x = scaleLinear([low, high], [left, right]);
  const y = scaleLinear([shown(least - room), shown(most + room)], [floor, ceiling]);
  const jet = computed.jet as number;
  const half = spreads().jet ?? 0;
  const inside = v.sizes.filter((size) => size > least - room && size < most + room);
  const edges = degrees.map((t, i): [number, number, number] => [
    x(t),
    y(shown(Math.max(least - room, now[i]! - half))),
    y(shown(Math.min(most + room, now[i]! + half))),
  ]);

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Jet that keeps the mixture against temperature: ${say(jet)} at ${fixed(v.temperature, 0)} °C`}
    >
      <AxisBottom scale={x} at={floor} gridTo={ceiling - floor} label="air temperature, °C" />
      <AxisLeft
        scale={y}
        at={left}
        gridTo={right}
        label={`jet diameter, ${units[unit].label}`}
        format={(value) => fixed(value, lengths === 'in' ? 4 : 2)}
      />
      {half > 0 ? <Band edges={edges} /> : null}
      <g aria-hidden="true">
        {inside.map((size) => (
          <g key={size}>
            <path class="rule-line" d={`M${left} ${y(shown(size))}H${right}`} />
            <text class="dimension-text" x={right - 2} y={y(shown(size)) - 3} text-anchor="end">
              {fixed(shown(size), lengths === 'in' ? 4 : 2)}
            </text>
          </g>
        ))}
      </g>
      <Curve kind="other" points={degrees.map((t, i) => [x(t), y(shown(then[i]!))])} />
      <Curve points={degrees.map((t, i) => [x(t), y(shown(now[i]!))])} />
      <g aria-hidden="true">
        <circle class="found-mark" cx={x(v['right-temperature'])} cy={y(shown(v.jet))} r={5} />
        <g class="key" transform={`translate(${left - 46} ${usualMargin.top})`}>
          <path class="curve" d="M0 0h22" />
          <text x={28} dy="0.32em">
            in the air now
          </text>
          <path class="curve curve-other" d="M140 0h22" />
          <text x={168} dy="0.32em">
            where it was right (○)
          </text>
          <path class="rule-line" d="M140 17h22" />
          <text x={168} y={17} dy="0.32em">
            jets at hand
          </text>
        </g>
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
        onDrag={(px) => set('temperature', Math.min(high, Math.max(low, onStep(x.invert(px), 1))))}
        onStep={(value) => set('temperature', value)}
        onEnd={commit}
      />
    </Plot>
  );
}
