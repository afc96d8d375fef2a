import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoEngine } from '../../calculators/demo/engine.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { skirtPort } from '../../calculators/maths/cylinder/port-timing.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Move } from './parts/motion.tsx';

const { stroke, rod, offset } = demoEngine;
const barrel = { stroke, rodLength: rod, pinOffset: offset, deckClearance: demoBarrel.deck };
const { skirt, inlet, inletHeight, exhaust, exhaustHeight } = demoBarrel;
const inletAt = skirtPort(barrel, inlet, skirt);

/** User units for a millimetre. */
const SCALE = 2;
const DECK = 40;
const FOOT = 98;
/** The centre line ends above what is written in the crankcase. */
const CENTRE_ENDS = 82;
const bore = demoBarrel.bore * SCALE;
const LEFT = 36;
const RIGHT = LEFT + bore;
const WALL = 14;
const THICK = 9;

const down = (height: number): number => DECK + height * SCALE;
const piece = (x: number, from: number, to: number): string =>
  `M${x} ${down(from)}h${WALL}V${down(to)}h${-WALL}Z`;

interface PanelProps {
  readonly x: number;
  readonly id: string;
  readonly words: string;
  /** How far the crown's edge stands below the deck, mm. */
  readonly crown: number;
}

function Panel({ x, id, words, crown }: PanelProps) {
  const [top, foot] = [down(crown), down(crown + skirt)];
  const [a, b] = [LEFT + 2, RIGHT - 2];
  return (
    <g transform={`translate(${x} 0)`}>
      <text class="axis-text" x={4} y={16}>
        {words}
      </text>
      <Hatching id={`${id}-wall`} />
      <Hatching id={`${id}-piston`} leans="left" />
      <Cut
        d={
          piece(LEFT - WALL, 0, exhaust) +
          piece(LEFT - WALL, exhaust + exhaustHeight, FOOT) +
          piece(RIGHT, 0, inlet - inletHeight) +
          piece(RIGHT, inlet, FOOT)
        }
        hatching={`${id}-wall`}
      />
      <Cut
        d={`M${a} ${foot}V${top}H${b}V${foot}H${b - THICK}V${top + 18}H${a + THICK}V${foot}Z`}
        hatching={`${id}-piston`}
      />
      <path class="edge edge-thin" d={`M${a + THICK} ${foot}H${b - THICK}`} />
      <path class="centre-line" d={`M${LEFT + bore / 2} ${DECK - 8}V${down(CENTRE_ENDS)}`} />
    </g>
  );
}

/** An inlet that the skirt opens on the way up, cut: open at the top, and just shut. */
export default function SkirtAtTheInlet() {
  const second = 178;
  const shut = inlet - skirt;
  const foot = down(FOOT) + 22;
  return (
    <LineDrawing
      id="skirt-at-inlet"
      title="An inlet that the skirt opens and shuts"
      description={`Two drawings of the demo barrel cut through exhaust and inlet, to scale. First the piston at the top: the skirt ends above the inlet port, which is open below it to the crankcase, while the exhaust on the other side is covered by the skirt. Then the piston further down, ${fixed(inletAt.closes, 1)} degrees before or after the top: the edge of the skirt is level with the bottom edge of the inlet, ${fixed(inlet, 1)} millimetres below the deck, and the port is shut.`}
      height={DECK + FOOT * SCALE + 34}
    >
      <Panel x={0} id="skirt-open" words="At the top: open" crown={demoBarrel.deck} />
      <Panel
        x={second}
        id="skirt-shut"
        words={`Shuts ${fixed(inletAt.closes, 1)}° after it`}
        crown={shut}
      />
      <Move
        from={[RIGHT + WALL + 10, down(inlet - inletHeight / 2)]}
        to={[RIGHT - 34, down(inlet - inletHeight / 2 + 4)]}
      />
      <Label words="crankcase" at={[LEFT + bore / 2, down(92)]} anchor="middle" />
      <Label
        words="exhaust port"
        at={[4, foot]}
        to={[LEFT - WALL / 2, down(exhaust + exhaustHeight / 2)]}
      />
      <Label
        words="inlet port"
        at={[RIGHT + 26, foot]}
        anchor="end"
        to={[RIGHT + WALL / 2, down(inlet - inletHeight / 2)]}
      />
      <Label
        words="skirt"
        at={[second + LEFT - WALL, foot]}
        to={[second + LEFT + 6, down(shut + skirt) - 12]}
      />
      <Label
        words="bottom edge"
        at={[352, foot]}
        anchor="end"
        to={[second + RIGHT + 8, down(inlet)]}
        ends="arrow"
      />
    </LineDrawing>
  );
}
