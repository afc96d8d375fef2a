import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoEngine } from '../../calculators/demo/engine.ts';
import { travelAt } from '../../calculators/maths/crank/slider-crank.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const engine = { stroke: demoEngine.stroke, rodLength: demoEngine.rod, pinOffset: 0 };
/** User units for a millimetre, the same in all four. */
const SCALE = 1.12;
const PANEL = { wide: 178, high: 308 } as const;
const MIDDLE = 96;
/** The deck, and the crank's centre below it. */
const DECK = 62;
const PIN_BELOW_CROWN = 30;
const BORE = (demoBarrel.bore / 2) * SCALE;
const WALL = 9;
const CRANK = (engine.stroke / 2) * SCALE;
const CENTRE =
  DECK + (demoBarrel.deck + PIN_BELOW_CROWN + engine.stroke / 2 + engine.rodLength) * SCALE;
const FOOT = DECK + 104 * SCALE;
const CASE = CRANK + 16;
/** Where the crankcase's round wall meets the bore. */
const SHOULDER = CENTRE - Math.sqrt(CASE ** 2 - BORE ** 2);
const RADIANS = Math.PI / 180;

const at = (mm: number): number => hundredth(DECK + mm * SCALE);

interface Phase {
  readonly title: string;
  readonly words: readonly string[];
  /** Degrees after the top. */
  readonly angle: number;
}

const phases: readonly Phase[] = [
  { title: '1  Up', words: ['above: squeezed', 'below: drawn in'], angle: 320 },
  { title: '2  Down', words: ['above: burns and pushes', 'below: squeezed'], angle: 82 },
  {
    title: '3  Exhaust open',
    words: ['above: burnt gas leaves', 'below: squeezed on'],
    angle: 108,
  },
  {
    title: '4  Transfers open',
    words: ['fresh charge comes up', 'and sweeps the rest out'],
    angle: 165,
  },
];

/** A port in a wall: the gap in it, and the duct behind. */
function Port(props: { side: 1 | -1; top: number; high: number; free: readonly [number, number] }) {
  const { side, top, high, free } = props;
  const inner = MIDDLE + side * BORE;
  const outer = inner + side * 26;
  const [from, to] = [Math.max(top, free[0]), Math.min(top + high, free[1])];
  const open = to - from > 0.5;
  return (
    <g class={open ? 'open' : 'shut'}>
      <path
        class="edge-filled"
        d={`M${inner - side} ${at(top)}H${outer}V${at(top + high)}H${inner - side}Z`}
      />
      <path
        class="edge edge-thin"
        d={`M${inner} ${at(top)}H${outer}M${inner} ${at(top + high)}H${outer}`}
      />
    </g>
  );
}

function Panel({ phase, x, y }: { readonly phase: Phase; readonly x: number; readonly y: number }) {
  const { title, words, angle } = phase;
  const crown = demoBarrel.deck + travelAt(engine, angle);
  const skirt = crown + demoBarrel.skirt;
  const pin = at(crown + PIN_BELOW_CROWN);
  const big = [
    hundredth(MIDDLE + CRANK * Math.sin(angle * RADIANS)),
    hundredth(CENTRE - CRANK * Math.cos(angle * RADIANS)),
  ] as const;
  const { exhaust, exhaustHeight, transfer, transferHeight, inlet, inletHeight } = demoBarrel;
  const free = (high: number): readonly [number, number] => [high, crown];
  const exhaustOpen = crown > exhaust + 0.5;
  const transferOpen = crown > transfer + 0.5;
  const leaving = at((exhaust + Math.min(crown, exhaust + exhaustHeight)) / 2);
  const inletTop = inlet - inletHeight;
  const inletOpen = skirt < inlet - 0.5;
  const walls = [-1, 1]
    .map((side) => {
      const inner = MIDDLE + side * BORE;
      return `M${inner} ${DECK}H${inner + side * WALL}V${FOOT}H${inner}Z`;
    })
    .join('');
  const below = MIDDLE + BORE + 26;
  return (
    <g transform={`translate(${x} ${y})`} class={`phase phase-${title.slice(0, 1)}`}>
      <text class="axis-text" x={4} y={11}>
        {title}
      </text>
      {words.map((line, i) => (
        <text key={line} x={4} y={26 + 14 * i}>
          {line}
        </text>
      ))}
      <circle class="edge" cx={MIDDLE} cy={hundredth(CENTRE)} r={CASE} />
      <path
        class="edge"
        d={[-1, 1]
          .map((side) => `M${MIDDLE + side * BORE} ${FOOT}V${hundredth(SHOULDER)}`)
          .join('')}
      />
      <path
        class="edge-filled"
        d={`M${MIDDLE - BORE} ${FOOT - 2}H${MIDDLE + BORE}V${hundredth(CENTRE)}H${MIDDLE - BORE}Z`}
      />
      <path class="part" d={walls} />
      <path
        class="part"
        d={`M${MIDDLE - BORE - WALL} ${DECK}V${DECK - 12}H${MIDDLE + BORE + WALL}V${DECK}Z`}
      />
      <Port side={-1} top={exhaust} high={exhaustHeight} free={free(exhaust)} />
      <Port side={1} top={inletTop} high={inletHeight} free={[skirt, inlet]} />
      <path
        class={
          transferOpen ? 'port port-transfer port-line-transfer' : 'edge edge-thin edge-hidden'
        }
        d={`M${MIDDLE - 11} ${at(transfer)}h22V${at(transfer + transferHeight)}h-22Z`}
      />
      <path class="edge edge-thin" d={`M${MIDDLE} ${hundredth(CENTRE)}L${big.join(' ')}`} />
      <path
        class="part part-moving"
        d={`M${MIDDLE - BORE + 1.5} ${at(skirt)}V${at(crown)}H${MIDDLE + BORE - 1.5}V${at(skirt)}Z`}
      />
      <path class="part-rod" d={`M${big.join(' ')}L${MIDDLE} ${pin}`} />
      <circle class="edge edge-filled" cx={big[0]} cy={big[1]} r={7} />
      <circle class="edge edge-filled" cx={MIDDLE} cy={pin} r={5.5} />
      <circle class="edge edge-filled" cx={MIDDLE} cy={hundredth(CENTRE)} r={4} />
      {title.startsWith('1') ? (
        <>
          <Label words="crown" at={[2, DECK + 1]} to={[MIDDLE - BORE + 8, at(crown)]} />
          <Label
            words="exhaust"
            at={[2, at(exhaust) - 16]}
            to={[MIDDLE - BORE - 18, at(exhaust + exhaustHeight / 2)]}
          />
          <Label words="skirt" at={[2, at(skirt) + 5]} to={[MIDDLE - BORE + 6, at(skirt) - 4]} />
          <Label words="inlet" at={[MIDDLE + BORE + WALL + 4, at(inlet) + 15]} />
          <Label words="crankcase" at={[MIDDLE, CENTRE + CASE + 15]} anchor="middle" />
        </>
      ) : null}
      {exhaustOpen ? (
        <Flow from={[MIDDLE - BORE + 14, leaving]} to={[MIDDLE - BORE - 24, leaving]} />
      ) : null}
      {inletOpen ? (
        <Flow from={[below, at(inlet - 8)]} to={[MIDDLE + BORE - 10, at(inlet - 4)]} />
      ) : null}
      {transferOpen ? <Flow from={[MIDDLE, at(transfer + 6)]} to={[MIDDLE + 6, at(12)]} /> : null}
    </g>
  );
}

type Place = readonly [x: number, y: number];
function Flow({ from, to }: { readonly from: Place; readonly to: Place }) {
  return (
    <>
      <path class="motion" d={`M${from.join(' ')}L${to.join(' ')}`} />
      <path class="motion-head" d={arrowHead(from, to)} />
    </>
  );
}

/** One turn of a piston-ported two-stroke in four places of the crank, to scale. */
export default function OneTurn() {
  return (
    <LineDrawing
      id="one-turn"
      title="One turn of a two-stroke in four places"
      description="Four sections of one engine, to scale, its crank turning clockwise. 1: the piston rises, all is shut above it, and under its skirt the inlet on the right has come open, so that the crankcase draws in. 2: the spark came before the top; the gas burns and pushes the piston down, while below it the fresh charge is squeezed. 3: the crown has uncovered the exhaust on the left, and the burnt gas leaves. 4: the crown has uncovered the transfers too, and the charge from the crankcase comes up through them."
      height={2 * PANEL.high + 8}
    >
      {phases.map((phase, i) => (
        <Panel
          key={phase.title}
          phase={phase}
          x={(i % 2) * PANEL.wide}
          y={Math.floor(i / 2) * (PANEL.high + 8)}
        />
      ))}
    </LineDrawing>
  );
}
