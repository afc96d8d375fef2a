import { fixed, showFixed } from '../../frame/text/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/text/units.ts';
import { Chart, type ChartFrame } from '../../picture/chart/chart.tsx';
import { Curve, type Point } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { evenly, intoRange, onStep } from '../../maths/numeric/steps.ts';
import { inSeries } from '../../maths/carburettor/needle.ts';
import { circuitAt, circuits } from './circuits.ts';
import { ringIfAny, secondOf, type Values } from './compute.ts';
import { inputs } from './inputs.ts';

interface Props {
  readonly v: Values;
  readonly ring: number;
  readonly main: number;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  readonly onThrottle: (throttle: number) => void;
  readonly onEnd: () => void;
}

const HEIGHT = 350;
const SAMPLES = 50;
/** Room above the field for who is in charge: one row, and a second for the narrow range. */
const NAMES = 34;

const key: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'ring' },
  { as: 'line', look: 'curve curve-other', words: 'second needle' },
  { as: 'line', look: 'rule-line', words: 'main jet' },
  { as: 'line', look: 'curve curve-thin', words: 'ring and main jet' },
];

/** Between what throttles each circuit is in charge. */
const zones = circuits.map((circuit, i) => ({ ...circuit, from: circuits[i - 1]?.until ?? 0 }));

/** Ring area against throttle, what ring and main jet pass together, and who is in charge where. */
export function AreaPlot({ v, ring, main, lengths, idPrefix, onThrottle, onEnd }: Props) {
  const unit = displayUnit('mm2', lengths);
  const shown = (area: number): number => toDisplay(area, 'mm2', lengths);
  const openings = evenly(0, 100, SAMPLES);
  const rings = openings.map((throttle) => ringIfAny(v, throttle));
  const points = ({ x, y }: ChartFrame, those: readonly (number | undefined)[]): Point[] =>
    those.flatMap((area, i): Point[] =>
      area === undefined ? [] : [[x(openings[i]!), y(shown(area))]],
    );
  const second = openings.map((throttle) => ringIfAny(v, throttle, v.clip, secondOf(v)));
  const most = useFrozen(
    Math.max(main, ring, ...[...rings, ...second].map((area) => area ?? 0)) * 1.06,
  );
  const together = rings.map((area) => (area === undefined ? undefined : inSeries(area, main)));
  const say = showFixed(ring, 'mm2', 3, lengths);

  return (
    <Chart
      id={`${idPrefix}area-field`}
      height={HEIGHT}
      label={`Ring area against throttle: ${say} at ${fixed(v.throttle, 0)} per cent, in the range of the ${circuitAt(v.throttle).name}`}
      meaning={key}
      above={NAMES}
      x={{ domain: [0, 100], label: 'throttle, per cent of lift' }}
      y={{ domain: [0, shown(most)], label: `area, ${units[unit].label}` }}
      behind={({ field: { top, bottom }, x }) =>
        zones.map(({ short, from, until }, i) => (
          <rect
            key={short}
            class={i % 2 === 0 ? 'zone' : 'zone zone-other'}
            x={x(from)}
            y={top}
            width={x(until) - x(from)}
            height={bottom - top}
          />
        ))
      }
      marks={(frame) => (
        <>
          <path
            class="rule-line"
            d={`M${frame.field.left} ${frame.y(shown(main))}H${frame.field.right}`}
          />
          <Curve kind="other" points={points(frame, second)} />
          <Curve kind="thin" points={points(frame, together)} />
          <Curve points={points(frame, rings)} />
        </>
      )}
    >
      {({ field: { top }, x, y }) => (
        <>
          <g aria-hidden="true">
            {zones.map(({ short, from, until }, i) => (
              <text
                key={short}
                x={(x(from) + x(until)) / 2}
                y={top - (i === 1 ? 19 : 5)}
                text-anchor="middle"
              >
                {short}
              </text>
            ))}
          </g>
          <Handle
            x={x(v.throttle)}
            y={y(shown(ring))}
            label="Throttle"
            value={v.throttle}
            min={inputs.throttle.min}
            max={inputs.throttle.max}
            step={1}
            valueText={`${fixed(v.throttle, 0)} per cent, ring ${say}`}
            onDrag={(px) => onThrottle(intoRange(inputs.throttle, onStep(x.invert(px), 1)))}
            onStep={onThrottle}
            onEnd={onEnd}
          />
        </>
      )}
    </Chart>
  );
}
