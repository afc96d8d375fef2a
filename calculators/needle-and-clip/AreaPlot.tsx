import { fixed } from '../frame/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../frame/units.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Curve, type Point } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { evenly, onStep } from '../picture/steps.ts';
import { inSeries } from '../maths/needle.ts';
import { circuitAt, circuits } from './circuits.ts';
import { ringIfAny, secondOf, type Values } from './compute.ts';

interface Props {
  readonly v: Values;
  readonly ring: number;
  readonly main: number;
  readonly lengths: LengthDisplay;
  readonly onThrottle: (throttle: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 350;
const SAMPLES = 50;

/** Ring area against throttle, what ring and main jet pass together, and who is in charge where. */
export function AreaPlot({ v, ring, main, lengths, onThrottle, onEnd }: Props) {
  const unit = displayUnit('mm2', lengths);
  const shown = (area: number): number => toDisplay(area, 'mm2', lengths);
  const openings = evenly(0, 100, SAMPLES);
  const rings = openings.map((throttle) => ringIfAny(v, throttle));
  const most = useStill(Math.max(main, ring, ...rings.map((area) => area ?? 0)) * 1.06);
  const left = usualMargin.left;
  const right = WIDTH - usualMargin.right;
  const floor = HEIGHT - usualMargin.bottom;
  const ceiling = usualMargin.top + 78;
  const x = scaleLinear([0, 100], [left, right]);
  const y = scaleLinear([0, shown(most)], [floor, ceiling]);
  const points = (areas: readonly (number | undefined)[]): Point[] =>
    areas.flatMap((area, i): Point[] =>
      area === undefined || area > most ? [] : [[x(openings[i]!), y(shown(area))]],
    );
  const second = openings.map((throttle) => ringIfAny(v, throttle, v.clip, secondOf(v)));
  const together = rings.map((area) => (area === undefined ? undefined : inSeries(area, main)));
  const say = `${fixed(shown(ring), lengths === 'in' ? 5 : 3)} ${units[unit].label}`;

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Ring area against throttle: ${say} at ${fixed(v.throttle, 0)} per cent, in the range of the ${circuitAt(v.throttle).name}`}
    >
      <g aria-hidden="true">
        {circuits.map(({ short, until }, i) => {
          const from = circuits[i - 1]?.until ?? 0;
          return (
            <g key={short}>
              <rect
                class={i % 2 === 0 ? 'zone' : 'zone zone-other'}
                x={x(from)}
                y={ceiling - 20}
                width={x(until) - x(from)}
                height={floor - ceiling + 20}
              />
              <text
                x={(x(from) + x(until)) / 2}
                y={ceiling - (until === 25 ? 26 : 8)}
                text-anchor="middle"
              >
                {short}
              </text>
            </g>
          );
        })}
      </g>
      <AxisBottom
        scale={x}
        at={floor}
        gridTo={ceiling - floor}
        label="throttle, per cent of lift"
      />
      <AxisLeft scale={y} at={left} gridTo={right} label="" />
      <path class="rule-line" d={`M${left} ${y(shown(main))}H${right}`} />
      <Curve kind="other" points={points(second)} />
      <Curve kind="thin" points={points(together)} />
      <Curve points={points(rings)} />
      <g class="key" aria-hidden="true" transform={`translate(8 ${usualMargin.top})`}>
        <text class="axis-text" dy="0.32em">
          {`area, ${units[unit].label}`}
        </text>
        <path class="curve" d="M100 0h22" />
        <text x={128} dy="0.32em">
          ring
        </text>
        <path class="curve curve-other" d="M190 0h22" />
        <text x={218} dy="0.32em">
          second needle
        </text>
        <path class="rule-line" d="M100 17h22" />
        <text x={128} y={17} dy="0.32em">
          main jet
        </text>
        <path class="curve curve-thin" d="M190 17h22" />
        <text x={218} y={17} dy="0.32em">
          ring and main jet
        </text>
      </g>
      <Handle
        x={x(v.throttle)}
        y={y(shown(ring))}
        label="Throttle"
        value={v.throttle}
        min={0}
        max={100}
        step={1}
        valueText={`${fixed(v.throttle, 0)} per cent, ring ${say}`}
        onDrag={(px) => onThrottle(Math.min(100, Math.max(0, onStep(x.invert(px), 1))))}
        onStep={onThrottle}
        onEnd={onEnd}
      />
    </Plot>
  );
}
