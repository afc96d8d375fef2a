import { evenly } from '../../calculators/maths/numeric/steps.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { polar, through, type Place } from './parts/polar.ts';

const CELL = 178;
const CENTRE: Place = [89, 122];
const at = polar(CENTRE);
const [OUTER, BORE, RING, PISTON] = [80, 66, 59, 57] as const;
/** Windows at the height of the ring, degrees clockwise from straight up. */
const windows = [
  [56, 110],
  [140, 220],
  [250, 304],
] as const;
const GAP = 5;

const arc = (radius: number, from: number, to: number): Place[] =>
  evenly(from, to, Math.max(2, Math.ceil((to - from) / 3))).map((on) => at(radius, on));

/** The metal between one window and the next. */
const metal = windows
  .map(([, from], i) => {
    const next = windows[(i + 1) % windows.length]![0] + (i === windows.length - 1 ? 360 : 0);
    return through([...arc(OUTER, from, next), ...arc(BORE, from, next).reverse()], true);
  })
  .join('');

/** A place of the second view. */
const beyond = ([x, y]: Place): Place => [CELL + x, y];

interface ViewProps {
  readonly x: number;
  readonly id: string;
  readonly words: string;
  /** Where the peg stands. */
  readonly peg: number;
  /** Whether an end stands in a window, where it springs out. */
  readonly caught: boolean;
}

/** Barrel and ring cut across at the height of the ring. */
function View({ x, id, words, peg, caught }: ViewProps) {
  const [from, to] = [peg + GAP, peg + 360 - GAP];
  const [pegX, pegY] = at(PISTON + 4, peg);
  const body = (bend: number): string => {
    const last = to - 24;
    const tail = evenly(last, to, 8).map((on) => {
      const out = bend * ((on - last) / 24) ** 2;
      return [at(BORE - 1 + out, on), at(RING + out, on)] as const;
    });
    return through(
      [
        ...arc(BORE - 1, from, last),
        ...tail.map(([outer]) => outer),
        ...tail.map(([, inner]) => inner).reverse(),
        ...arc(RING, from, last).reverse(),
      ],
      true,
    );
  };
  return (
    <g transform={`translate(${x} 0)`}>
      <text class="axis-text" x={4} y={16}>
        {words}
      </text>
      <Hatching id={id} />
      <Cut d={metal} hatching={id} />
      <circle class="edge edge-thin edge-filled" cx={CENTRE[0]} cy={CENTRE[1]} r={PISTON} />
      <path class={caught ? 'part part-moving ring' : 'part ring'} d={body(caught ? 8 : 0)} />
      <circle class="joint" cx={pegX} cy={pegY} r={3.5} />
      <path
        class="centre-line"
        d={`M${CENTRE[0] - 12} ${CENTRE[1]}h24M${CENTRE[0]} ${CENTRE[1] - 12}v24`}
      />
    </g>
  );
}

/** A ring's peg over a window, where the ends catch, and over metal, where they are held. */
export default function RingPegAndPorts() {
  return (
    <LineDrawing
      id="ring-peg-and-ports"
      title="Where the peg of a ring may stand"
      description="Two drawings of barrel and piston cut across at the height of the ring, with the exhaust window below and a transfer window on either side. Wrong: the peg stands at the exhaust window, and an end of the ring springs out into it. Right: the peg stands at the metal between two windows, and the wall holds both ends in."
      height={252}
    >
      <View x={0} id="peg-wrong" words="Wrong: over a port" peg={176} caught />
      <View x={CELL} id="peg-right" words="Right: over metal" peg={125} caught={false} />
      <Label words="exhaust port" at={[4, 236]} to={at(OUTER - 6, 198)} />
      <Label words="ring" at={[CENTRE[0] - 40, 96]} to={at(RING + 3, 300)} />
      <Label words="peg" at={[CELL + 70, 156]} to={beyond(at(PISTON + 4, 125))} />
      <Label words="transfer port" at={[352, 236]} anchor="end" to={beyond(at(OUTER - 6, 92))} />
    </LineDrawing>
  );
}
