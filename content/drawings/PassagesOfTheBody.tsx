import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

/** Places of the section, user units: the bore, the slide's way, the block below and the chamber. */
const LEFT = 60;
const RIGHT = 296;
const ROOF = 78;
const FLOOR = 142;
const FACE = 216;
const CHAMBER = { left: 76, right: 280, foot: 322 } as const;
const WAY = { left: 140, right: 212, top: 30 } as const;
const MAIN = 176;
const PILOT = 232;
const OUTLET = 248;
const BYPASS = 220;
const CHOKE = 270;
const SEAT = 128;
const VENT = 94;
/** Heights of the three passages that come out at the left. */
const AIR = 164;
const INLET = 186;
const BREATHER = 204;
const HALF = 3.5;

/** A drilling along a line of upright and level pieces, as wide as its `half` to either side. */
const along = (x1: number, y1: number, x2: number, y2: number, half = HALF): string =>
  x1 === x2
    ? `M${x1 - half} ${y1}V${y2}H${x1 + half}V${y1}Z`
    : `M${x1} ${y1 - half}H${x2}V${y1 + half}H${x1}Z`;

const drillings = [
  along(LEFT, AIR, MAIN - 12, AIR),
  along(MAIN + 12, AIR, OUTLET + HALF, AIR),
  along(OUTLET, AIR, OUTLET, FLOOR),
  along(BYPASS, AIR, BYPASS, FLOOR, 2),
  along(PILOT, FACE, PILOT, AIR, 5),
  along(MAIN, FACE, MAIN, FLOOR + 16, 8),
  along(MAIN, FLOOR + 16, MAIN, FLOOR, 5),
  along(VENT, FACE, VENT, BREATHER),
  along(LEFT, BREATHER, VENT + HALF, BREATHER),
  along(SEAT, FACE, SEAT, INLET, 6),
  along(LEFT, INLET, SEAT + 6, INLET),
  along(CHOKE, FACE, CHOKE, FLOOR),
] as const;

const legend = [
  '1 air jet to pilot jet',
  '2 pilot jet to the holes behind the slide',
  '3 main jet, up its tube, to the mouth',
  '4 vent of the chamber',
  '5 the choke’s own passage',
  '6 fuel inlet to the seat of the valve',
  '7 drain',
] as const;

/** Where each number stands, at every end of its passage. */
const ends: readonly (readonly [number: string, x: number, y: number])[] = [
  ['1', 48, AIR],
  ['6', 48, INLET],
  ['4', 48, BREATHER],
  ['4', VENT, FACE + 14],
  ['6', SEAT, FACE + 14],
  ['3', MAIN, FACE + 14],
  ['1, 2', PILOT, FACE + 14],
  ['5', CHOKE, FACE + 14],
  ['3', MAIN, FLOOR - 12],
  ['2', BYPASS, FLOOR - 12],
  ['2', OUTLET, FLOOR - 12],
  ['5', CHOKE, FLOOR - 12],
  ['7', MAIN + 22, CHAMBER.foot + 14],
];

/** The drillings of a carburettor's body, each numbered at all its ends. */
export default function PassagesOfTheBody() {
  return (
    <LineDrawing
      id="passages"
      title="The passages of a slide carburettor’s body"
      description="A body cut open, its jets, slide and float taken out, the air coming from the left. Each passage has one number at all its ends: 1, from the air jet at the left face to the pilot jet’s hole; 2, from there to two small holes in the floor of the bore behind the slide; 3, from the main jet up to the mouth in the middle of the bore; 4, from the top of the chamber out to the air; 5, from the chamber up to the bore at the engine’s side; 6, from the fuel inlet down to the seat of the float valve; 7, the hole in the floor of the chamber."
      height={488}
    >
      <Hatching id="passages-body" />
      <Cut
        d={`M${LEFT} ${ROOF - 12}H${WAY.left - 10}V${WAY.top}H${WAY.left}V${ROOF}H${LEFT}ZM${RIGHT} ${ROOF - 12}H${WAY.right + 10}V${WAY.top}H${WAY.right}V${ROOF}H${RIGHT}ZM${LEFT} ${FLOOR}H${RIGHT}V${FACE}H${LEFT}Z`}
        hatching="passages-body"
      />
      <path class="edge edge-filled drilling" d={drillings.join('')} />
      <path class="liquid drilling-inside" d={drillings.join('')} />
      <path
        class="edge edge-thin edge-hidden"
        d={`M${MAIN - 12} ${AIR - HALF}H${MAIN + 12}M${MAIN - 12} ${AIR + HALF}H${MAIN + 12}`}
      />
      <path
        class="edge"
        d={`M${CHAMBER.left} ${FACE}V${CHAMBER.foot}H${MAIN - 7}M${MAIN + 7} ${CHAMBER.foot}H${CHAMBER.right}V${FACE}`}
      />
      <path class="edge" d={`M${MAIN - 7} ${CHAMBER.foot}v8M${MAIN + 7} ${CHAMBER.foot}v8`} />
      <path class="centre-line" d={`M${(WAY.left + WAY.right) / 2} 16V${FLOOR - 26}`} />
      {ends.map(([number, x, y]) => (
        <text key={`${number} ${x} ${y}`} class="axis-text" x={x} y={y + 4} text-anchor="middle">
          {number}
        </text>
      ))}
      <Label words="air" at={[8, 108]} />
      <Label words="engine" at={[352, 108]} anchor="end" />
      <Label words="chamber" at={[MAIN, 280]} anchor="middle" />
      <Label words="slide’s way" at={[352, 20]} anchor="end" to={[WAY.right - 10, 50]} />
      {legend.map((words, i) => (
        <text key={words} x={4} y={370 + 18 * i}>
          {words}
        </text>
      ))}
    </LineDrawing>
  );
}
