import { AxisBottom, AxisLeft, roomLeft } from '../../picture/axis.tsx';
import { Line } from '../../picture/curve.tsx';
import { fieldOf, InField } from '../../picture/field.tsx';
import { Handle } from '../../picture/handle.tsx';
import { fieldTop, Key, type KeyEntry } from '../../picture/key.tsx';
import { Plot } from '../../picture/plot.tsx';
import { portCurve, portKey, type PortKind } from '../../picture/ports.ts';
import { scaleLinear } from '../../picture/scale.ts';
import { useFrozen } from '../../picture/frozen.ts';
import { evenly, onStep } from '../../maths/numeric/steps.ts';

interface Props {
  readonly rpm: number;
  /** Specific time-areas at that speed, s/m. */
  readonly exhaust: number;
  readonly transfer: number;
  readonly blowdown: number | undefined;
  readonly inlet: number | undefined;
  readonly idPrefix: string;
  readonly onSpeed: (rpm: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 300;
const MILLI = 1000;

const fieldEnd = (rpm: number): number => (rpm <= 9500 ? 10_000 : 20_000);

/** How the time-areas fall as the speed rises; each is inversely proportional to it. */
export function SpeedPlot(props: Props) {
  const { rpm, exhaust, transfer, blowdown, inlet, idPrefix, onSpeed, onEnd } = props;
  const about = useFrozen(rpm);
  const end = fieldEnd(about);
  const start = about >= 2000 ? 2000 : 100;
  const first = Math.max(start, about / 3);
  const most = (Math.max(exhaust, transfer, inlet ?? 0) * rpm) / first;
  const curves: readonly (readonly [kind: PortKind, timeArea: number])[] = [
    ['exhaust', exhaust],
    ['transfer', transfer],
    ...(inlet === undefined ? [] : [['inlet', inlet] as const]),
    ...(blowdown === undefined ? [] : [['blowdown', blowdown] as const]),
  ];
  const key: readonly KeyEntry[] = curves.map(([kind]) => portKey('line', kind));
  const timeAreas = [0, most * MILLI] as const;
  const field = fieldOf(WIDTH, HEIGHT, {
    top: fieldTop(key, WIDTH),
    left: roomLeft(timeAreas),
  });
  const x = scaleLinear([start, end], [field.left, field.right]);
  const y = scaleLinear(timeAreas, [field.bottom, field.top]);
  const curve = (now: number) =>
    evenly(first, end, 60).map((speed) => [x(speed), y(((now * rpm) / speed) * MILLI)] as const);
  const px = x(rpm);
  const words = `${String(rpm)} rpm: exhaust ${(exhaust * MILLI).toFixed(2)}, transfers ${(transfer * MILLI).toFixed(2)} thousandths of a second per metre`;
  return (
    <Plot width={WIDTH} height={HEIGHT} label={`Specific time-area against speed. ${words}`}>
      <Key entries={key} width={WIDTH} />
      <AxisBottom scale={x} field={field} ticks={5} label="speed, rpm" />
      <AxisLeft scale={y} field={field} label="specific time-area, thousandths of s/m" />
      <InField field={field} id={`${idPrefix}speed-field`}>
        {curves.map(([kind, timeArea]) => (
          <Line key={kind} look={portCurve(kind)} points={curve(timeArea)} />
        ))}
        <path class="rule-line" fill="none" d={`M${px} ${field.bottom}V${y(exhaust * MILLI)}`} />
      </InField>
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
