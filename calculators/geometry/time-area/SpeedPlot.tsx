import { Chart, Guides } from '../../picture/chart/chart.tsx';
import { Line } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { portCurve, portKey, type PortKind } from '../port-looks.ts';
import { useFrozen } from '../../picture/redraw/frozen.ts';
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

const HEIGHT = 300;
/** Of the vertical axis. */
const TICKS = 5;

/** As many decimals at every tick as the finest of them needs. */
const scaled = (most: number) => (value: number) =>
  value.toFixed(Math.max(0, -Math.floor(Math.log10(most / TICKS))));

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
  const words = `${String(rpm)} rpm: exhaust ${exhaust.toFixed(5)}, transfers ${transfer.toFixed(5)} seconds per metre`;
  return (
    <Chart
      id={`${idPrefix}speed-field`}
      height={HEIGHT}
      label={`Specific time-area against speed. ${words}`}
      meaning={key}
      x={{ domain: [start, end], ticks: 5, label: 'speed, rpm' }}
      y={{
        domain: [0, most],
        label: 'specific time-area, s/m',
        ticks: TICKS,
        format: scaled(most),
      }}
      marks={(frame) => {
        const { x, y } = frame;
        const curve = (now: number) =>
          evenly(first, end, 60).map((speed) => [x(speed), y((now * rpm) / speed)] as const);
        return (
          <>
            {curves.map(([kind, timeArea]) => (
              <Line key={kind} look={portCurve(kind)} points={curve(timeArea)} />
            ))}
            <Guides frame={frame} to="bottom" at={[x(rpm), y(exhaust)]} />
          </>
        );
      }}
    >
      {({ x, y }) => (
        <Handle
          x={x(rpm)}
          y={y(exhaust)}
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
      )}
    </Chart>
  );
}
