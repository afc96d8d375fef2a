import { fixed, showFixed, shownUnit } from '../../frame/text/format.ts';
import { units, type LengthDisplay, fromShown, toShown } from '../../frame/text/units.ts';
import {
  liftAt,
  lobePitch,
  openingAt,
  opensBefore,
  type BreakerCam,
} from '../../maths/ignition/breaker-cam.ts';
import { Chart } from '../../picture/chart/chart.tsx';
import { Curve, type Point } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { evenly } from '../../maths/numeric/steps.ts';
import { textWidth } from '../../picture/common/text-width.ts';
import { gapsOf } from './compute.ts';

interface Props {
  readonly cam: BreakerCam;
  readonly gap: number;
  /** Cam degrees the heel has to go to the middle of the lobe. */
  readonly at: number;
  readonly leverRatio: number;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  readonly onGap: (gap: number) => void;
  readonly onTurn: (at: number) => void;
  readonly onEnd: () => void;
}

const HEIGHT = 360;
const RIGHT = 34;
const SAMPLES = 120;
/** How far the field goes above and below, in full lifts: room for the words beyond the curve. */
const ABOVE = 1.25;
const BELOW = 1.45;
/** How far below the line of 0 the angle is written, user units: what is left of the lift goes below it. */
const ANGLE = 19;

const key: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'contacts' },
  { as: 'line', look: 'curve curve-other', words: 'cam, the heel clear of it' },
];

/** `angle` brought to within half a pitch of the middle of a lobe. */
const nearMiddle = (angle: number, pitch: number): number =>
  angle - pitch * Math.round(angle / pitch);

/**
 * How far the contacts stand apart over one lobe. The contacts touch on the line of nothing; above
 * it stands the gap, below it the lift that the lobe spends before the heel comes to the cam.
 */
export function LiftPlot(props: Props) {
  const { cam, gap, at, leverRatio, lengths, idPrefix, onGap, onTurn, onEnd } = props;
  const half = lobePitch(cam) / 2;
  const opens = opensBefore(cam, gap);
  const spent = cam.lift - gap;
  const unit = shownUnit([cam.lift], 'mm', lengths);
  const shown = (mm: number): number => toShown(mm, unit);
  const say = (mm: number): string => showFixed(mm, 'mm', 2, lengths);

  const beyond = (angle: number): number => liftAt(cam, angle) - spent;
  const corners = [cam.top / 2, cam.top / 2 + cam.rise, opens].flatMap((a) => [a, -a]);
  const angles = [...evenly(-half, half, SAMPLES), ...corners]
    .filter((angle) => Math.abs(angle) <= half)
    .sort((a, b) => a - b);
  const turned = nearMiddle(at, 2 * half);
  const apart = openingAt(cam, gap, turned);
  const state = apart > 0 ? `open ${say(apart)}` : 'shut';
  const opensWords = `${fixed(opens, 1)}°`;

  return (
    <Chart
      id={`${idPrefix}lift-field`}
      height={HEIGHT}
      label={`How far the contacts stand apart against cam angle. The points open ${fixed(opens, 1)} degrees before the middle of the lobe and shut as far after it.`}
      meaning={key}
      right={RIGHT}
      x={{ domain: [-half, half], label: 'cam degrees from the middle, − before' }}
      y={{
        domain: [-BELOW * shown(cam.lift), ABOVE * shown(cam.lift)],
        label: `contacts apart, ${units[unit].label}; below 0 they are shut`,
      }}
      behind={({ field, x }) =>
        [
          [-half, -opens],
          [opens, half],
        ].map(([from, to]) => (
          <rect
            key={from}
            class="shut-part"
            x={x(from!)}
            y={field.top}
            width={Math.max(0, x(to!) - x(from!))}
            height={field.bottom - field.top}
          />
        ))
      }
      marks={({ x, y }) => {
        const curve = (apart: (angle: number) => number): Point[] =>
          angles.map((angle) => [x(angle), y(shown(apart(angle)))]);
        return (
          <>
            <Curve kind="other" points={curve(beyond)} />
            <Curve points={curve((angle) => Math.max(0, beyond(angle)))} />
            <path class="turned-line" d={`M${x(-turned)} ${y(0)}V${y(shown(beyond(turned)))}`} />
          </>
        );
      }}
    >
      {({ field: { left, right, bottom }, x, y }) => {
        const shut = y(0);
        const top = y(shown(gap));
        const low = y(-shown(spent));
        // From the edge of the field to the middle of a word that stands wholly in it.
        const room = textWidth('shut') / 2 + 4;
        return (
          <>
            <g aria-hidden="true">
              <path class="centre-line" d={`M${x(0)} ${shut}V${top}`} />
              <path class="rule-line" d={`M${x(0)} ${top}H${right}`} />
              <path
                class="dimension"
                d={`M${x(-opens)} ${shut - 6}v12M${x(0)} ${shut - 6}v12M${x(-opens)} ${shut}H${x(0)}`}
              />
              <path class="dimension" d={`M${right} ${shut}V${top}M${left + 10} ${shut}V${low}`} />
              {2 * (x(opens) - x(0)) > textWidth(opensWords, { bold: true }) + 24 ? (
                <text class="dimension-text" x={x(0)} y={shut + ANGLE} text-anchor="middle">
                  {opensWords}
                </text>
              ) : null}
              <text class="dimension-text" x={right - 12} y={top - 11} text-anchor="end">
                {`gap g ${say(gap)}, wider upwards`}
              </text>
              <text class="dimension-text" x={left + 5} y={Math.max(low + 15, shut + ANGLE + 15)}>
                {`L − g ${say(spent)}: heel clear by ${say(spent / leverRatio)}`}
              </text>
              <text
                x={Math.min(right - room, (x(half) + x(opens)) / 2)}
                y={bottom - 6}
                text-anchor="middle"
              >
                shut
              </text>
              <text
                x={Math.max(left + room, (x(-half) + x(-opens)) / 2)}
                y={bottom - 6}
                text-anchor="middle"
              >
                shut
              </text>
              <text x={x(0)} y={bottom - 6} text-anchor="middle">
                open
              </text>
            </g>
            <Handle
              x={right}
              y={top}
              label="Points gap"
              value={gap}
              {...gapsOf(cam)}
              step={0.01}
              valueText={`Gap ${say(gap)}, opens ${fixed(opens, 1)} degrees before the middle of the lobe`}
              along="y"
              onDrag={(_, py) => onGap(fromShown(y.invert(py), unit))}
              onStep={onGap}
              onEnd={onEnd}
            />
            <Handle
              x={x(-turned)}
              y={y(shown(apart))}
              label="Cam turned to, degrees from the middle of the lobe"
              value={-turned || 0}
              min={-half}
              max={half}
              step={1}
              valueText={`${fixed(Math.abs(turned), 0)} degrees ${turned < 0 ? 'after' : 'before'} the middle of the lobe, points ${state}`}
              onDrag={(px) => onTurn(-Math.min(half, Math.max(-half, x.invert(px))))}
              onStep={(angle) => onTurn(-angle)}
              onEnd={onEnd}
            />
          </>
        );
      }}
    </Chart>
  );
}
