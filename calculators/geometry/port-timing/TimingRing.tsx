import { arc } from 'd3-shape';
import { fixed } from '../../frame/text/format.ts';
import type { PortEvents } from '../../maths/cylinder/port-timing.ts';
import { Handle } from '../../picture/common/handle.tsx';
import { Key, type KeyEntry } from '../../picture/common/key.tsx';
import { spreadOut } from '../../picture/common/labels.ts';
import { Plot } from '../../picture/common/plot.tsx';
import { portArea, portKey } from '../port-looks.ts';
import { hundredth, onStep } from '../../maths/numeric/steps.ts';

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
const HEIGHT = 350;
const CENTRE = { x: WIDTH / 2, y: 190 };
const RADIANS = Math.PI / 180;
const OUTER = 118;
/** The band of exhaust and inlet; half of it each where both are open at once. */
const BAND = 13;
const HALF = 6;
/** The crank pin, by which the crank is turned, within the arcs of six pairs of transfers. */
const PIN = 44;

const at = (angle: number, radius: number) => ({
  x: hundredth(CENTRE.x + radius * Math.sin(angle * RADIANS)),
  y: hundredth(CENTRE.y - radius * Math.cos(angle * RADIANS)),
});

const shape = arc<null>();
const sector = (
  { opens, closes }: Pick<PortEvents, 'opens' | 'closes'>,
  radius: number,
  width: number,
): string =>
  (
    shape
      .innerRadius(radius - width)
      .outerRadius(radius)
      .startAngle(opens * RADIANS)
      .endAngle(closes * RADIANS)(null) ?? ''
  ).replaceAll(/-?\d+\.\d+/g, (number) => String(hundredth(Number(number))));

interface Event {
  readonly angle: number;
  readonly words: string;
}

/** Room beside the ring for a figure, and across the middle for the word at its end. */
const BESIDE = OUTER + 9;
const WORD = 30;

/** The figures of one side of the ring, each where its event is or as near as there is room. */
function marksOf(side: 'left' | 'right', events: readonly Event[]) {
  const sign = side === 'left' ? -1 : 1;
  const here = events.filter(({ angle }) => Math.sin(angle * RADIANS) >= 0 === sign > 0);
  const heights = spreadOut(
    here.map(({ angle }) => CENTRE.y - BESIDE * Math.cos(angle * RADIANS)),
    CENTRE.y - BESIDE,
    CENTRE.y + BESIDE,
  );
  return here.map(({ words }, index) => {
    const y = heights[index]!;
    const out = Math.sqrt(Math.max(0, BESIDE ** 2 - (y - CENTRE.y) ** 2));
    return (
      <text
        key={words}
        class="tick-text"
        x={hundredth(CENTRE.x + sign * Math.max(WORD, out))}
        y={hundredth(y)}
        dy="0.32em"
        text-anchor={side === 'left' ? 'end' : 'start'}
      >
        {words}
      </text>
    );
  });
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
    ...(inlet ? [{ kind: 'inlet', events: inlet } as const] : []),
  ] as const;
  const blowdown = {
    opens: exhaust.opens,
    closes: Math.min(...transfers.map(({ opens }) => opens)),
  };
  const isBlown = blowdown.closes > blowdown.opens;
  const key: readonly KeyEntry[] = [
    ...rows.map(({ kind, events }) =>
      portKey('area', kind, `${kind} ${fixed(events.duration, 0)}°`),
    ),
    ...(isBlown
      ? [portKey('area', 'blowdown', `blowdown ${fixed(blowdown.closes - blowdown.opens, 0)}°`)]
      : []),
  ];
  const both = inlet && (inlet.opens + 360 < exhaust.closes || inlet.closes > exhaust.opens);
  const wide = both ? HALF : BAND;
  const angles = rows.flatMap(({ events: { opens, closes } }) => [opens, closes]);
  const figures = [...new Set(angles.map((angle) => fixed(((angle % 360) + 360) % 360, 0)))];
  const events = figures.map((figure) => ({ angle: Number(figure), words: `${figure}°` }));
  return (
    <Plot width={WIDTH} height={HEIGHT} label={`Timing ring: ${words}`}>
      <Key entries={key} width={WIDTH} />
      <g transform={`translate(${CENTRE.x} ${CENTRE.y})`} aria-hidden="true">
        <circle class="part part-hollow" r={OUTER} />
        <path class={portArea('exhaust')} d={sector(exhaust, OUTER, wide)} />
        {isBlown ? (
          <path
            class={portArea('blowdown')}
            d={sector(blowdown, OUTER - BAND, OUTER - BAND - PIN)}
          />
        ) : null}
        {transfers.map((each, index) => (
          <path
            key={index}
            class={portArea('transfer')}
            d={sector(each, OUTER - 17 - 8 * index, 7)}
          />
        ))}
        {inlet ? (
          <path class={portArea('inlet')} d={sector(inlet, OUTER - BAND + wide, wide)} />
        ) : null}
      </g>
      <g aria-hidden="true">
        {marksOf('left', events)}
        {marksOf('right', events)}
        <text class="axis-text" x={CENTRE.x} y={CENTRE.y - OUTER - 7} text-anchor="middle">
          top
        </text>
        <text class="axis-text" x={CENTRE.x} y={CENTRE.y + OUTER + 17} text-anchor="middle">
          bottom
        </text>
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
