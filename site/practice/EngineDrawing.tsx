import type { TargetedKeyboardEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Bench } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import {
  dialShows,
  DIAL_RANGE,
  discShows,
  lampPower,
  opening,
  wrapped,
} from '../../calculators/practice/instruments.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';
import { DiscFace } from './DiscFace.tsx';
import { Pointer } from './Pointer.tsx';
import { useRound } from './use-round.ts';
import { useLengths } from './lengths.ts';
import { heard } from './words.ts';

interface Props {
  readonly engine: Engine;
  readonly bench: Bench;
  /** The leaf of the feeler gauge in hand, mm. */
  readonly leaf: number | undefined;
  /** Going over too fast to read. */
  readonly blurred: boolean;
  readonly turn: (by: number) => void;
  readonly bend: (by: number) => void;
}

const WIDTH = 360;
const HEIGHT = 452;
const CENTRE = { x: 136, y: 344 } as const;
/** Pixels for a mm: a disc of 160 mm is 192 across. */
const SCALE = 1.2;
const RIM = 80 * SCALE;
/** The disc is cut out in the middle, so that crank and rod are seen. */
const RING = 34;
const POINTER = 90;
/** The points are enlarged so many pixels for a mm, and beside the engine stand so low at most. */
const ENLARGED = 60;
const POINTS_DOWN = 140;
/** From the head up to the middle of the indicator's dial, and its radius. */
const DIAL_UP = 52;
const DIAL = 38;
/** What a turn of the dial's hand is, mm: a hundred hundredths of a millimetre, or a hundred thou. */
const A_TURN = { mm: 1, in: 2.54 } as const;

/** Where the drawing begins: above what is fitted, so that nothing bare stands over it. */
function topOf({ task }: Engine, { inHole }: Bench, head: number): number {
  const top = head - (inHole === 'indicator' ? DIAL_UP + DIAL + 8 : 24);
  return hasPoints(task) ? Math.min(top, POINTS_DOWN) : top;
}

const whole = (value: number): number => Math.round(value);
const halves = (value: number): number => Math.round(value * 2) / 2;

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 0.5,
  ArrowUp: 0.5,
  ArrowLeft: -0.5,
  ArrowDown: -0.5,
  PageUp: 10,
  PageDown: -10,
};

/** The indicator with its plunger on the crown, leaning as it was screwed in. */
function Indicator({
  engine,
  bench,
  crown,
  head,
}: Pick<Props, 'engine' | 'bench'> & { crown: number; head: number }) {
  const shown = dialShows(engine, bench);
  const lean = bench.upright ? 0 : Math.round(engine.hidden.lean);
  const aTurn = A_TURN[useLengths()];
  const hand = shown === undefined ? 0 : wrapped((shown / aTurn) * 360);
  const small = shown === undefined ? 0 : wrapped((shown / aTurn) * 36);
  const dial = head - DIAL_UP;
  return (
    <g transform={`rotate(${-lean} ${CENTRE.x} ${head})`} aria-hidden="true">
      <path
        class="part indicator"
        d={`M${CENTRE.x - 2} ${dial + 36}V${shown === undefined ? whole(head + DIAL_RANGE * SCALE) : crown}h4V${dial + 36}`}
      />
      <path class="part" d={`M${CENTRE.x - 6} ${dial + 34}h12V${head + 4}h-12z`} />
      <circle class="part dial-face" cx={CENTRE.x} cy={dial} r={DIAL} />
      <g transform={`translate(${CENTRE.x} ${dial})`}>
        <path
          class="tick"
          d={Array.from({ length: 20 }, (_, i) => {
            const turn = (i * 18 * Math.PI) / 180;
            const [s, c] = [Math.sin(turn), Math.cos(turn)];
            const r = i % 2 === 0 ? 31 : 34;
            return `M${halves(r * s)} ${halves(-r * c)}L${halves(37 * s)} ${halves(-37 * c)}`;
          }).join('')}
        />
        {[0, 25, 50, 75].map((mark) => {
          const turn = (mark * 3.6 * Math.PI) / 180;
          return (
            <text
              key={mark}
              x={halves(22 * Math.sin(turn))}
              y={halves(-23 * Math.cos(turn))}
              dy="0.32em"
              text-anchor="middle"
            >
              {mark}
            </text>
          );
        })}
        <circle class="turned-line" cy={8} r={7} />
        <path class="dial-small" d="M0 8V2" transform={`rotate(${small.toFixed(1)} 0 8)`} />
        <path class="dial-hand" d="M0 5V-33" transform={`rotate(${hand.toFixed(1)})`} />
        <circle r={3} class="dial-hub" />
      </g>
    </g>
  );
}

/** The contacts of the set in hand, enlarged, and the lamp across them, below the drawing's top. */
function Points({
  engine,
  bench,
  leaf,
  top,
}: Pick<Props, 'engine' | 'bench' | 'leaf'> & { top: number }) {
  const apart = whole(opening(engine, bench) * ENLARGED);
  const power = lampPower(engine, bench);
  const x = 306;
  const foot = 80;
  const thick = leaf === undefined ? 0 : whole(leaf * ENLARGED);
  const fits = thick <= apart;
  return (
    <g aria-hidden="true" transform={`translate(0 ${top})`}>
      <text x={x} y={18} text-anchor="middle">
        {engine.card.cylinders > 1 ? `points of ${bench.cylinder + 1}` : 'points'}, ×
        {whole(ENLARGED / SCALE)}
      </text>
      <path class="contact-block fixed" d={`M${x - 22} ${foot}h44v12h-44z`} />
      <path class="contact-block" d={`M${x - 22} ${foot - apart}v-12h44v12z`} />
      {leaf !== undefined && (
        <path
          class="leaf"
          d={`M${fits ? x - 18 : x + 28} ${foot - (fits ? 0 : 0)}v${-thick}h${354 - (fits ? x - 18 : x + 28)}v${thick}z`}
        />
      )}
      <path class="wire" d={`M${x} ${foot + 12}V104`} />
      <circle class={power > 0 ? 'bulb lit' : 'bulb'} cx={x} cy={120} r={16} />
      {power > 0 ? (
        <path
          class="rays"
          d={`M${x - 26} 120h-8M${x + 26} 120h8M${x - 18} 138l-6 6M${x + 18} 138l6 6M${x} 146v8`}
        />
      ) : (
        <path class="filament" d={`M${x - 7} 124l4-8 3 8 3-8 4 8`} />
      )}
      <text x={x} y={172} text-anchor="middle">
        lamp {power > 0 ? 'lit' : 'out'}
      </text>
    </g>
  );
}

/** Where the disc's face lies: turned, and where it is bored off centre, to one side. */
function discPlace({ hidden, task }: Engine, bench: Bench, shown: number): string {
  const centre = `translate(${CENTRE.x} ${CENTRE.y})`;
  if (task !== 'disc') return `${centre} rotate(${(POINTER + bench.pointer + shown).toFixed(2)})`;
  const turned = Math.round((bench.crank - hidden.discZero + bench.discShift) * 4) / 4;
  const aside = (-hidden.discOffAt * Math.PI) / 180;
  const [x, y] = [Math.sin(aside), -Math.cos(aside)].map((part) =>
    (part * hidden.discOff * SCALE).toFixed(1),
  );
  return `${centre} rotate(${wrapped(POINTER + turned).toFixed(2)}) translate(${x} ${y})`;
}

/** Barrel, piston, crank and disc to scale, with what is fitted to them; the disc turns the crank. */
export function EngineDrawing({ engine, bench, leaf, blurred, turn, bend }: Props) {
  const { card, task } = engine;
  const lengths = useLengths();
  const drag = useRound({ centre: CENTRE, move: turn });
  const wheel = useRef<SVGGElement>(null);
  const latest = useRef(turn);
  latest.current = turn;

  useEffect(() => {
    const node = wheel.current!;
    const rolled = (event: WheelEvent): void => {
      event.preventDefault();
      latest.current(event.deltaY > 0 ? -0.5 : 0.5);
    };
    node.addEventListener('wheel', rolled, { passive: false });
    return () => node.removeEventListener('wheel', rolled);
  }, []);

  const angle = bench.crank - engine.hidden.tops[bench.cylinder]!;
  const radians = (angle * Math.PI) / 180;
  const throwLength = (card.stroke / 2) * SCALE;
  const rod = card.rodLength * SCALE;
  const bore = card.stroke * 1.04 * SCALE;
  const crownHeight = card.stroke * 0.5 * SCALE;
  const bigX = halves(CENTRE.x + throwLength * Math.sin(radians));
  const bigY = halves(CENTRE.y - throwLength * Math.cos(radians));
  const crownTop = CENTRE.y - throwLength - rod - crownHeight;
  const crown = halves(crownTop + bench.travels[bench.cylinder]! * SCALE);
  const pin = crown + crownHeight;
  const head = whole(crownTop - 8);
  const [left, right] = [whole(CENTRE.x - bore / 2), whole(CENTRE.x + bore / 2)];
  const foot = CENTRE.y - RIM - 4;
  const top = topOf(engine, bench, head);
  const shown = discShows(engine, bench);

  const key = (event: TargetedKeyboardEvent<SVGGElement>): void => {
    const by = STEPS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    turn(event.shiftKey ? by / 5 : by);
  };

  return (
    <svg
      class="plot practice-engine"
      viewBox={`0 ${top} ${WIDTH} ${HEIGHT - top}`}
      role="group"
      aria-label="The engine"
    >
      <path
        class="casting barrel"
        aria-hidden="true"
        d={`M${left} ${foot}V${head}H${CENTRE.x - 8}v-9h-${whole(bore / 2) + 3}V${foot}zM${right} ${foot}V${head}H${CENTRE.x + 8}v-9h${whole(bore / 2) + 3}V${foot}z`}
      />
      <g aria-hidden="true" class={blurred ? 'blurred' : undefined}>
        <path
          class="part part-moving piston"
          d={`M${left + 2} ${pin + card.stroke * 0.45 * SCALE}V${crown}H${right - 2}V${pin + card.stroke * 0.45 * SCALE}z`}
        />
        <path class="part-rod" d={`M${bigX} ${bigY}L${CENTRE.x} ${pin}`} />
        <circle class="part gudgeon-pin" cx={CENTRE.x} cy={pin} r={6} />
      </g>
      {bench.inHole === 'stop' && (
        <path
          class="part stop"
          aria-hidden="true"
          d={`M${CENTRE.x - 6} ${head - 16}V${whole(crownTop + engine.hidden.stopHeight * SCALE)}h12V${head - 16}z`}
        />
      )}
      {bench.inHole === 'indicator' && (
        <Indicator engine={engine} bench={bench} crown={crown} head={head} />
      )}
      <g
        ref={wheel}
        class={`crank-wheel${blurred ? ' blurred' : ''}`}
        role="slider"
        tabindex={0}
        aria-label="Crank, with the degree disc"
        aria-valuemin={-180}
        aria-valuemax={180}
        aria-valuenow={shown}
        aria-valuetext={heard(engine, bench, lengths)}
        onKeyDown={key}
        {...drag}
      >
        <circle class="crank-hit" cx={CENTRE.x} cy={CENTRE.y} r={RIM + 2} />
        <circle
          class="disc-ring"
          cx={CENTRE.x}
          cy={CENTRE.y}
          r={RIM - RING / 2}
          stroke-width={RING}
        />
        <circle class="turned-line" cx={CENTRE.x} cy={CENTRE.y} r={RIM - RING} />
        <g transform={discPlace(engine, bench, shown)}>
          <DiscFace radius={RIM} />
        </g>
        <circle class="part big-end" cx={bigX} cy={bigY} r={9} />
        <path class="part-rod crank" d={`M${CENTRE.x} ${CENTRE.y}L${bigX} ${bigY}`} />
        <circle class="part" cx={CENTRE.x} cy={CENTRE.y} r={8} />
        <circle class="crank-ring" cx={CENTRE.x} cy={CENTRE.y} r={RIM + 1} />
      </g>
      <Pointer
        engine={engine}
        bench={bench}
        centre={CENTRE}
        rim={RIM}
        held={WIDTH - 74}
        width={WIDTH}
        bend={bend}
      />
      <g aria-hidden="true">
        {task === 'disc' && (
          <>
            <path
              class="part pointer"
              d={`M${CENTRE.x - RIM + 8} ${CENTRE.y}l-16 -5H8v10h${CENTRE.x - RIM - 16}z`}
            />
            <text x={8} y={CENTRE.y - 12}>
              B
            </text>
          </>
        )}
        <path
          class="turning"
          d={`M${CENTRE.x + 103} ${CENTRE.y + 32}A108 108 0 0 1 ${CENTRE.x + 54} ${CENTRE.y + 93}m0 0l11 -1m-11 1l3 -11`}
        />
        <text x={CENTRE.x + 92} y={CENTRE.y + 74}>
          forwards
        </text>
        <text x={6} y={HEIGHT - 6}>
          to scale
        </text>
      </g>
      {hasPoints(task) && <Points engine={engine} bench={bench} leaf={leaf} top={top} />}
    </svg>
  );
}
