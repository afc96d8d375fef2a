import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Battery, Earth } from './parts/circuit.tsx';

const HALF = 178;

/** A sprung button in the feed of the coils: current flows only while a thumb holds it down. */
function Button({ held, left }: { readonly held: boolean; readonly left: number }) {
  const bar = held ? 74 : 62;
  return (
    <g transform={`translate(${left} 8)`}>
      <text x={4} y={26}>
        {held ? 'held: it may run' : 'let go: it stops'}
      </text>
      <path
        class={held ? 'current' : 'edge edge-thin'}
        d={held ? 'M34 113V78H151' : 'M34 114V78H66M100 78H151'}
      />
      <circle class="edge edge-filled" cx={66} cy={78} r={3} />
      <circle class="edge edge-filled" cx={100} cy={78} r={3} />
      <path class="edge" d={`M60 ${bar}H106M83 ${bar}V${bar - 16}M74 ${bar - 16}H92`} />
      {held ? (
        <>
          <path class="motion" d="M83 36V46" />
          <path class="motion-head" d={arrowHead([83, 36], [83, 54])} />
        </>
      ) : null}
      <Battery x={34} y={118} />
      <path class="edge edge-thin" d="M34 122V136" />
      <Earth x={34} y={136} />
      <path class="leader-end" d={arrowHead([140, 78], [158, 78])} />
      <text x={104} y={100}>
        to the coils
      </text>
    </g>
  );
}

const HINGE = [88, 236] as const;
const LONG = 98;
const THICK = 9;
const RAISED = 62;

/** A board hinged above the inlets: held up by a cord, and falling to when the cord is let go. */
function Board({ up, left }: { readonly up: boolean; readonly left: number }) {
  const turn = up ? -RAISED : 0;
  const angle = (turn * Math.PI) / 180;
  const tip = [HINGE[0] - LONG * Math.sin(angle), HINGE[1] + LONG * Math.cos(angle)] as const;
  const board = [
    [-4, 0],
    [-4, LONG],
    [THICK - 4, LONG],
    [THICK - 4, 0],
  ]
    .map(([across = 0, down = 0], i) => {
      const x = HINGE[0] + across * Math.cos(angle) - down * Math.sin(angle);
      const y = HINGE[1] + across * Math.sin(angle) + down * Math.cos(angle);
      return `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
    })
    .join('')
    .concat('Z');
  const id = up ? 'stop-board-up' : 'stop-board-down';
  return (
    <g transform={`translate(${left} 0)`}>
      <text x={4} y={206}>
        {up ? 'foot on the cord: air' : 'foot off: no air'}
      </text>
      <Hatching id={id} />
      <Cut d="M20 256H62L84 246V262L62 268H20Z" hatching={id} />
      <Cut d="M20 318H62L84 328V312L62 306H20Z" hatching={id} />
      <path class="centre-line" d="M8 287H80" />
      <path class="part" d={board} />
      <circle class="edge edge-filled" cx={HINGE[0]} cy={HINGE[1]} r={4} />
      {up ? (
        <>
          <path class="edge edge-thin" d={`M${tip[0].toFixed(1)} ${tip[1].toFixed(1)}V222`} />
          <path class="motion" d="M138 287H94" />
          <path class="motion-head" d={arrowHead([138, 287], [86, 287])} />
        </>
      ) : (
        <>
          <path class="motion" d="M158 282A84 84 0 0 1 108 320" />
          <path class="motion-head" d={arrowHead([122, 313], [102, 322])} />
        </>
      )}
    </g>
  );
}

/** Two ways to stop that work by letting go: the thumb's button, and the board at the foot's cord. */
export default function TwoWaysToStop() {
  return (
    <LineDrawing
      id="two-ways-to-stop"
      title="Two ways to stop: the thumb’s button and the board over the inlets"
      description="Above, the feed of the coils through a sprung button: held down, current flows from the battery to the coils; let go, the way is open and there is no spark. Below, an inlet in section with a flat rigid board hinged above it. A cord to the helper’s foot holds the board up, and air goes in. With the foot off the cord the board falls flat over the inlet, and the suction holds it there."
      height={392}
    >
      <text class="axis-text" x={4} y={14}>
        Thumb: the spark
      </text>
      <Button held left={0} />
      <Button held={false} left={HALF} />
      <text class="axis-text" x={4} y={184}>
        Foot: the air
      </text>
      <Board up left={0} />
      <Board up={false} left={HALF} />
      <Label words="air" at={[104, 304]} />
      <Label words="cord" at={[124, 228]} />
      <Label words="inlet" at={[4, 344]} to={[40, 296]} />
      <Label words="board" at={[HALF + 60, 362]} to={[HALF + 88, 322]} />
      <Label words="hinge" at={[HALF + 116, 236]} to={[HALF + 92, 236]} ends="arrow" />
      <Label words="One board lies flat on all the inlets." at={[4, 382]} />
    </LineDrawing>
  );
}
