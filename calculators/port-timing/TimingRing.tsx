import { arc } from 'd3-shape';
import { fixed } from '../frame/format.ts';
import type { PortEvents } from '../maths/port-timing.ts';
import { Handle } from '../picture/handle.tsx';
import { Plot } from '../picture/plot.tsx';
import { hundredth, onStep } from '../picture/steps.ts';

interface Props {
  readonly exhaust: PortEvents;
  readonly transfers: readonly PortEvents[];
  readonly inlet: PortEvents | undefined;
  /** Degrees after top dead centre, 0 to 360. */
  readonly crank: number;
  readonly onCrank: (crank: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 340;
const CENTRE = { x: WIDTH / 2, y: 158 };
const RADIANS = Math.PI / 180;
const OUTER = 118;
/** The crank pin, by which the crank is turned. */
const PIN = 58;

const at = (angle: number, radius: number) => ({
  x: hundredth(CENTRE.x + radius * Math.sin(angle * RADIANS)),
  y: hundredth(CENTRE.y - radius * Math.cos(angle * RADIANS)),
});

const shape = arc<null>();
const sector = ({ opens, closes }: PortEvents, radius: number, width: number): string =>
  (
    shape
      .innerRadius(radius - width)
      .outerRadius(radius)
      .startAngle(opens * RADIANS)
      .endAngle(closes * RADIANS)(null) ?? ''
  ).replaceAll(/-?\d+\.\d+/g, (number) => String(hundredth(Number(number))));

/** An angle written beside the ring, where the event is. */
function Mark({ angle }: { readonly angle: number }) {
  const { x, y } = at(angle, OUTER + 7);
  const side = Math.sin(angle * RADIANS);
  const anchor = Math.abs(side) < 0.3 ? 'middle' : side > 0 ? 'start' : 'end';
  const turned = ((angle % 360) + 360) % 360;
  return (
    <text class="tick-text" x={x} y={y} dy="0.32em" text-anchor={anchor}>
      {fixed(turned, 0)}°
    </text>
  );
}

/** One turn of the crank as a ring, top dead centre at the top, clockwise; each port an arc of it. */
export function TimingRing({ exhaust, transfers, inlet, crank, onCrank, onEnd }: Props) {
  const hand = at(crank, PIN);
  const open = [
    ...(isOpen(exhaust, crank) ? ['exhaust'] : []),
    ...(transfers.some((events) => isOpen(events, crank)) ? ['transfer'] : []),
    ...(inlet && isOpen(inlet, crank) ? ['inlet'] : []),
  ];
  const words = `${fixed(crank, 0)} degrees after the top, open: ${open.join(', ') || 'nothing'}`;
  const drag = (x: number, y: number): void => {
    const angle = Math.atan2(x - CENTRE.x, CENTRE.y - y) / RADIANS;
    onCrank(onStep((angle + 360) % 360, 1));
  };
  const rows = [
    { kind: 'exhaust', events: exhaust },
    { kind: 'transfer', events: transfers[0]! },
    ...(inlet ? [{ kind: 'inlet', events: inlet }] : []),
  ];
  return (
    <Plot width={WIDTH} height={HEIGHT} label={`Timing ring: ${words}`}>
      <g transform={`translate(${CENTRE.x} ${CENTRE.y})`} aria-hidden="true">
        <circle class="part part-hollow" r={OUTER} />
        <path class="port port-exhaust" d={sector(exhaust, OUTER, 13)} />
        {transfers.map((events, index) => (
          <path
            key={index}
            class="port port-transfer"
            d={sector(events, OUTER - 17 - 8 * index, 7)}
          />
        ))}
        {inlet ? <path class="port port-inlet" d={sector(inlet, OUTER, 13)} /> : null}
      </g>
      <g aria-hidden="true">
        {[exhaust, transfers[0]!, ...(inlet ? [inlet] : [])]
          .flatMap(({ opens, closes }) => [opens, closes])
          .map((angle, index) => (
            <Mark key={index} angle={angle} />
          ))}
        <text class="axis-text" x={CENTRE.x} y={CENTRE.y - OUTER - 14} text-anchor="middle">
          top
        </text>
        <text class="axis-text" x={CENTRE.x} y={CENTRE.y + OUTER + 22} text-anchor="middle">
          bottom
        </text>
        {rows.map(({ kind, events }, index) => (
          <g
            key={kind}
            class="key"
            transform={`translate(${8 + (index * (WIDTH - 8)) / rows.length} ${HEIGHT - 22})`}
          >
            <rect class={`port port-${kind}`} width={14} height={11} />
            <text x={19} y={6} dy="0.32em">
              {kind} {fixed(events.duration, 0)}°
            </text>
          </g>
        ))}
        <path class="part-rod" d={`M${CENTRE.x} ${CENTRE.y}L${hand.x} ${hand.y}`} />
        <circle class="part" cx={CENTRE.x} cy={CENTRE.y} r={9} />
      </g>
      <Handle
        x={hand.x}
        y={hand.y}
        label="Crank, degrees after top dead centre"
        value={crank}
        min={0}
        max={360}
        step={1}
        valueText={words}
        along={Math.abs(Math.cos(crank * RADIANS)) > Math.SQRT1_2 ? 'x' : 'y'}
        onDrag={drag}
        onStep={onCrank}
        onEnd={onEnd}
      />
    </Plot>
  );
}

function isOpen({ opens, closes }: PortEvents, crank: number): boolean {
  return [crank, crank - 360].some((angle) => angle > opens && angle < closes);
}
