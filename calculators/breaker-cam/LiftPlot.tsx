import { fixed } from '../frame/format.ts';
import { displayUnit, fromDisplay, toDisplay, units, type LengthDisplay } from '../frame/units.ts';
import {
  liftAt,
  lobePitch,
  openingAt,
  opensBefore,
  type BreakerCam,
} from '../maths/breaker-cam.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Curve, type Point } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { evenly } from '../picture/steps.ts';

interface Props {
  readonly cam: BreakerCam;
  readonly gap: number;
  /** Cam degrees the heel has to go to the middle of the lobe. */
  readonly at: number;
  readonly lengths: LengthDisplay;
  readonly onGap: (gap: number) => void;
  readonly onTurn: (at: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 320;
const RIGHT = 34;
const SAMPLES = 120;

/** `angle` brought to within half a pitch of the middle of a lobe. */
const nearMiddle = (angle: number, pitch: number): number =>
  angle - pitch * Math.round(angle / pitch);

/** Lift at the contacts over one lobe, the line above which they are open, and where they are shut. */
export function LiftPlot({ cam, gap, at, lengths, onGap, onTurn, onEnd }: Props) {
  const half = lobePitch(cam) / 2;
  const opens = opensBefore(cam, gap);
  const unit = displayUnit('mm', lengths);
  const shown = (mm: number): number => toDisplay(mm, 'mm', lengths);
  const say = (mm: number): string =>
    `${fixed(shown(mm), lengths === 'in' ? 4 : 2)} ${units[unit].label}`;

  const left = usualMargin.left;
  const floor = HEIGHT - usualMargin.bottom;
  const ceiling = usualMargin.top + 20;
  const x = scaleLinear([half, -half], [left, WIDTH - RIGHT]);
  const y = scaleLinear([0, shown(cam.lift)], [floor, ceiling]);
  const corners = [cam.top / 2, cam.top / 2 + cam.rise].flatMap((a) => [a, -a]);
  const curve = [...evenly(half, -half, SAMPLES), ...corners]
    .filter((angle) => Math.abs(angle) <= half)
    .sort((a, b) => b - a)
    .map((angle): Point => [x(angle), y(shown(liftAt(cam, angle)))]);
  const line = y(shown(cam.lift - gap));
  const turned = nearMiddle(at, 2 * half);
  const apart = openingAt(cam, gap, turned);
  const state = apart > 0 ? `open ${say(apart)}` : 'shut';

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Lift at the contacts against cam angle. The points open ${fixed(opens, 1)} degrees before the middle of the lobe and shut as far after it.`}
    >
      <g aria-hidden="true">
        {[
          [half, opens],
          [-opens, -half],
        ].map(([from, to]) => (
          <rect
            key={from}
            class="shut-part"
            x={x(from!)}
            y={ceiling}
            width={Math.max(0, x(to!) - x(from!))}
            height={floor - ceiling}
          />
        ))}
      </g>
      <AxisBottom
        scale={x}
        at={floor}
        gridTo={ceiling - floor}
        label="cam degrees before the middle of the lobe"
      />
      <AxisLeft
        scale={y}
        at={left}
        gridTo={WIDTH - RIGHT}
        label={`lift at the contacts, ${units[unit].label}`}
      />
      <Curve points={curve} />
      <path class="rule-line" d={`M${left} ${line}H${WIDTH - RIGHT}`} />
      <g aria-hidden="true">
        <path class="centre-line" d={`M${x(0)} ${floor}V${ceiling}`} />
        <path
          class="dimension"
          d={`M${x(opens)} ${line - 6}v12M${x(0)} ${line - 6}v12M${x(opens)} ${line}H${x(0)}`}
        />
        <text class="dimension-text" x={x(0) - 5} y={line - 6} text-anchor="end">
          {`${fixed(opens, 1)}°`}
        </text>
        <text class="key" x={(x(half) + x(opens)) / 2} y={floor - 8} text-anchor="middle">
          shut
        </text>
        <text class="key" x={(x(-half) + x(-opens)) / 2} y={floor - 8} text-anchor="middle">
          shut
        </text>
        <text class="key" x={x(0)} y={floor - 8} text-anchor="middle">
          open
        </text>
        <path class="turned-line" d={`M${x(turned)} ${floor}V${y(shown(liftAt(cam, turned)))}`} />
      </g>
      <Handle
        x={WIDTH - RIGHT}
        y={line}
        label="Points gap"
        value={gap}
        min={0.01}
        max={cam.lift - 0.01}
        step={0.01}
        valueText={`Gap ${say(gap)}, opens ${fixed(opens, 1)} degrees before the middle of the lobe`}
        along="y"
        onDrag={(_, py) => onGap(cam.lift - fromDisplay(y.invert(py), 'mm', lengths))}
        onStep={onGap}
        onEnd={onEnd}
      />
      <Handle
        x={x(turned)}
        y={y(shown(liftAt(cam, turned)))}
        label="Cam turned to"
        value={turned}
        min={-half}
        max={half}
        step={1}
        valueText={`${fixed(turned, 0)} degrees before the middle of the lobe, points ${state}`}
        onDrag={(px) => onTurn(Math.min(half, Math.max(-half, x.invert(px))))}
        onStep={onTurn}
        onEnd={onEnd}
      />
    </Plot>
  );
}
