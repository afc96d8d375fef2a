import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Curve } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { evenly, onStep } from '../picture/steps.ts';

interface Props {
  readonly rpm: number;
  /** Specific time-areas at that speed, s/m. */
  readonly exhaust: number;
  readonly transfer: number;
  readonly blowdown: number | undefined;
  readonly inlet: number | undefined;
  readonly onSpeed: (rpm: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 270;
const TOP = usualMargin.top + 14;
const FLOOR = HEIGHT - usualMargin.bottom;
/** Room for half of a five-figure tick. */
const RIGHT = WIDTH - 24;
const MILLI = 1000;

const fieldEnd = (rpm: number): number => (rpm <= 9500 ? 10_000 : 20_000);

/** How the time-areas fall as the speed rises; each is inversely proportional to it. */
export function SpeedPlot(props: Props) {
  const { rpm, exhaust, transfer, blowdown, inlet, onSpeed, onEnd } = props;
  const about = useStill(rpm);
  const end = fieldEnd(about);
  const start = about >= 2000 ? 2000 : 100;
  const first = Math.max(start, about / 3);
  const most = (Math.max(exhaust, transfer, inlet ?? 0) * rpm) / first;
  const x = scaleLinear([start, end], [usualMargin.left, RIGHT]);
  const y = scaleLinear([0, most * MILLI], [FLOOR, TOP]);
  const curve = (now: number) =>
    evenly(first, end, 60).map((speed) => [x(speed), y(((now * rpm) / speed) * MILLI)] as const);
  const px = x(rpm);
  const words = `${String(rpm)} rpm: exhaust ${(exhaust * MILLI).toFixed(2)}, transfers ${(transfer * MILLI).toFixed(2)} thousandths of a second per metre`;
  return (
    <Plot width={WIDTH} height={HEIGHT} label={`Specific time-area against speed. ${words}`}>
      <AxisBottom scale={x} at={FLOOR} gridTo={TOP} ticks={5} label="speed, rpm" />
      <AxisLeft
        scale={y}
        at={usualMargin.left}
        gridTo={RIGHT}
        label="specific time-area, thousandths of s/m"
      />
      <Curve kind="exhaust" points={curve(exhaust)} />
      <Curve points={curve(transfer)} />
      {blowdown === undefined ? null : <Curve kind="other" points={curve(blowdown)} />}
      {inlet === undefined ? null : <Curve kind="thin" points={curve(inlet)} />}
      <path class="rule-line" fill="none" d={`M${px} ${FLOOR}V${y(exhaust * MILLI)}`} />
      <g class="key" transform={`translate(${WIDTH - 112} ${TOP + 14})`} aria-hidden="true">
        <path class="curve curve-exhaust" d="M0 0h20" />
        <text x={26} dy="0.32em">
          exhaust
        </text>
        <path class="curve" d="M0 17h20" />
        <text x={26} y={17} dy="0.32em">
          transfers
        </text>
        <path class="curve curve-other" d="M0 34h20" />
        <text x={26} y={34} dy="0.32em">
          blowdown
        </text>
        {inlet === undefined ? null : (
          <>
            <path class="curve curve-thin" d="M0 51h20" />
            <text x={26} y={51} dy="0.32em">
              inlet
            </text>
          </>
        )}
      </g>
      <Handle
        x={px}
        y={y(exhaust * MILLI)}
        label="Engine speed, rpm"
        value={rpm}
        min={start}
        max={end}
        step={100}
        valueText={words}
        onDrag={(place) => onSpeed(onStep(Math.min(end, Math.max(start, x.invert(place))), 50))}
        onStep={onSpeed}
        onEnd={onEnd}
      />
    </Plot>
  );
}
