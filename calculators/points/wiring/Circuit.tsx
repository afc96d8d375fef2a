import { Fragment } from 'preact';
import { fixed, inputDigits, showInput } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { Absent } from '../../frame/types.ts';
import {
  fixedContact,
  movingContact,
  SWITCH_RING,
  switchLever,
} from '../../picture/circuit-signs.ts';
import { textWidth } from '../../picture/common/text-width.ts';
import type { Computed, Values } from './compute.ts';

const WIDTH = 360;
/** The feed, from the battery at the right to the coils at the left. */
const FEED = 46;
const BATTERY = 330;
/** Down the left, from the feed to every coil. */
const BUS = 16;
/** The wire of the first coil, and from one coil to the next. */
const FIRST = 152;
const PITCH = 82;
/** So many coils are drawn; of more, the first and the last, or their lettering would be too small to read. */
const DRAWN = 3;
/** Room for a line that tells of the coils between. */
const BETWEEN = 24;
/** Across a coil: ballast, primary, points, condenser and plug. */
const BALLAST = { from: 30, to: 66 } as const;
const PRIMARY = { from: 82, to: 138 } as const;
const POINTS = 192;
const CONDENSER = 262;
const PLUG = 336;
/** The other plug of a coil with two leads. */
const SECOND_PLUG = 308;

const TURNS = 4;
const TURN = (PRIMARY.to - PRIMARY.from) / TURNS;

/** IEC 60617: earth, general; its foot is 12 below. */
const earth = (x: number, y: number): string => `M${x} ${y}v4m-9 0h18m-15 4h12m-9 4h6`;
/** IEC 60617: winding, four half circles to the right from `x`, above the line (1) or below it (0). */
const winding = (x: number, y: number, side: 0 | 1): string =>
  `M${x} ${y}${`a${TURN / 2} ${TURN / 2} 0 0 ${side} ${TURN} 0`.repeat(TURNS)}`;
/** An arrow's head in the middle of a wire, pointing along it. */
const head = (x: number, y: number, dx: number, dy: number): string =>
  dx === 0 ? `M${x} ${y + 6 * dy}l-5 ${-11 * dy}h10z` : `M${x + 6 * dx} ${y}l${-11 * dx} -5v10z`;

/** Words that have room between two places, or nothing. */
const ifRoom = (words: string, room: number): string => (textWidth(words) <= room ? words : '');

/** The high tension: from the secondary to the plug, its other end at the points or at a plug of its own. */
function Secondary({ y, plugs }: { readonly y: number; readonly plugs: readonly number[] }) {
  const low = y - 20;
  const shared = plugs.length > 1;
  return (
    <>
      <path class="wire" d={`M${PRIMARY.from} ${low}h-6V${y - 30}H${PLUG}V${y - 14}`} />
      <path
        class="wire"
        d={`${winding(PRIMARY.from, low, 0)}${shared ? `H${SECOND_PLUG}V${y - 14}` : `h10V${y}`}`}
      />
      {plugs.map((x) => (
        <Fragment key={x}>
          <path class="wire" d={`M${x} ${y - 2}v4${earth(x, y + 2)}`} />
          <path class="pointer plug" d={`${head(x, y - 15, 0, 1)}${head(x, y - 1, 0, -1)}`} />
        </Fragment>
      ))}
    </>
  );
}

interface CoilProps {
  readonly y: number;
  readonly number: number;
  readonly ampere: number;
  readonly ballast: number;
  /** Where its plugs stand, one or two. */
  readonly plugs: readonly number[];
  /** 1 where current flows from the feed to earth, −1 where the feed is the negative side. */
  readonly way: 1 | -1;
}

/** One coil with the signs of its terminals, its points shut, its condenser and its plugs; the first bears the names. */
function Coil({ y, number, ampere, ballast, plugs, way }: CoilProps) {
  const named = number === 1;
  const start = ballast > 0 ? BALLAST.to : BUS;
  return (
    <g class="coil">
      <Secondary y={y} plugs={plugs} />
      <path
        class="wire"
        d={`M${POINTS} ${y}H${CONDENSER}v14M${CONDENSER} ${y + 20}V${y + 34}H${POINTS}${earth(POINTS, y + 34)}`}
      />
      <path class="plates" d={`M${CONDENSER - 9} ${y + 14}h18m-18 6h18`} />
      <path class="plates" d={`M${PRIMARY.from + 2} ${y - 10}H${PRIMARY.to - 2}`} />
      {ballast > 0 ? (
        <>
          <rect
            class="part"
            x={BALLAST.from}
            y={y - 6}
            width={BALLAST.to - BALLAST.from}
            height={12}
          />
          <text x={(BALLAST.from + BALLAST.to) / 2} y={y - 11} text-anchor="middle">
            {ifRoom(`${inputDigits(ballast, 'ohm')} Ω`, 52)}
          </text>
        </>
      ) : null}
      <path
        class="wire wire-live"
        d={`${ballast > 0 ? `M${BUS} ${y}H${BALLAST.from}` : ''}M${start} ${y}H${PRIMARY.from}${winding(PRIMARY.from, y, 1)}H${POINTS}V${y + 10}${fixedContact(POINTS, y + 10)}${movingContact(POINTS, y + 10, false)}M${POINTS} ${y + 26}V${y + 34}`}
      />
      <path class="pointer" d={head(168, y, way, 0)} />
      {[BUS, ...(plugs.length > 1 ? [] : [PRIMARY.to + 10]), POINTS].map((x) => (
        <circle key={x} class="joint" cx={x} cy={y} r={3} />
      ))}
      <circle class="joint" cx={POINTS} cy={y + 34} r={3} />
      <text class="terminal" x={PRIMARY.from - 8} y={y - 4} text-anchor="middle">
        {way > 0 ? '+' : '−'}
      </text>
      <text class="terminal" x={PRIMARY.to + 10} y={y + 16} text-anchor="middle">
        {way > 0 ? '−' : '+'}
      </text>
      <text x={BALLAST.from - 4} y={y + 22}>
        {`coil ${String(number)}: ${fixed(ampere, 2)} A`}
      </text>
      {named ? (
        <>
          <text x={POINTS + 8} y={y + 22}>
            points
          </text>
          <text x={CONDENSER + 14} y={y + 30}>
            condenser
          </text>
          <text x={plugs.at(-1)! - 12} y={y - 4} text-anchor="end">
            {plugs.length > 1 ? 'plugs' : 'plug'}
          </text>
        </>
      ) : null}
    </g>
  );
}

/** The coils that are drawn, each with its height in the sheet. */
const drawnCoils = (coils: number): { readonly number: number; readonly y: number }[] =>
  coils > DRAWN
    ? [
        { number: 1, y: FIRST },
        { number: coils, y: FIRST + PITCH + BETWEEN },
      ]
    : Array.from({ length: coils }, (_, i) => ({ number: i + 1, y: FIRST + PITCH * i }));

/** What is said of the coils that are not drawn. */
const alike = (coils: number, ampere: number): string =>
  `coils 2 ${coils === DRAWN + 1 ? 'and' : 'to'} ${String(coils - 1)}: ${fixed(ampere, 2)} A each`;

interface Props {
  readonly values: Values;
  readonly computed: Computed;
  readonly lengths: LengthDisplay;
}

/**
 * The circuit as it stands with the ignition on and all points shut: battery, fuse, switch, coils, and
 * for each its points, condenser and plug, by the symbols of IEC 60617. Volts and amperes beside it.
 */
export function Circuit({ values: v, computed, lengths }: Props) {
  const drawn = drawnCoils(v.coils);
  const last = drawn.at(-1)!.y;
  const height = last + 50;
  const positive = v.earth === 'negative';
  const way = positive ? 1 : -1;
  const plugs = v.leads === 'two' ? [PLUG, SECOND_PLUG] : [PLUG];
  const [load, drop, left] = [computed.load, computed.drop, computed['at-load']] as number[];
  const each = left! / (v.resistance + v.ballast);
  const fuse =
    computed.fuse instanceof Absent
      ? 'fuse'
      : `fuse ${inputDigits(computed.fuse as number, 'A')} A`;
  const wire = `${showInput(v.length, 'm', lengths, 0.1)}, ${inputDigits(v.area, 'wire')} mm²`;
  const [long, short] = [12, 6] as const;
  const [top, foot] = positive ? [long, short] : [short, long];
  const plate = (half: number, y: number): string => `M${BATTERY - half} ${y}h${2 * half}`;
  return (
    <svg
      class="plot wiring-circuit"
      viewBox={`0 0 ${String(WIDTH)} ${String(height)}`}
      role="img"
      aria-label={`Circuit of ${String(v.coils)} ${v.coils === 1 ? 'coil' : 'coils'}${v.leads === 'two' ? ' with two plugs each' : ''}, ${v.earth} to earth, ignition on and all points shut: battery ${fixed(v.volts, 1)} volts, ${fixed(load!, 1)} amperes through fuse, switch and wire, which lose ${fixed(drop!, 2)} volts, so that ${fixed(left!, 1)} volts reach the coils.`}
    >
      <text x={8} y={16} class="axis-text">
        Ignition on, all points shut
      </text>
      <path class="wire wire-live" d={`M${BATTERY} 66V${FEED}H${BUS}V${last}M${BATTERY} 87V94`} />
      <path class="wire" d={earth(BATTERY, 94)} />
      <path
        class="plates"
        d={`${plate(top, 66)}${plate(foot, 73)}${plate(top, 80)}${plate(foot, 87)}`}
      />
      <rect class="part" x={256} y={FEED - 6} width={30} height={12} />
      <path class="wire wire-live" d={`M256 ${FEED}h30`} />
      <rect class="zone" x={183} y={FEED - 4} width={28} height={8} />
      <path class="wire wire-live" d={switchLever(182, 212, FEED)} />
      <circle class="found-mark" cx={182} cy={FEED} r={SWITCH_RING} />
      <circle class="found-mark" cx={212} cy={FEED} r={SWITCH_RING} />
      <path class="pointer" d={head(232, FEED, -way, 0)} />
      <path class="pointer" d={head(BUS, 120, 0, way)} />
      <g aria-hidden="true">
        <text x={BATTERY + 14} y={62} class="axis-text">
          {positive ? '+' : '−'}
        </text>
        <text x={BATTERY + 14} y={101} class="axis-text">
          {positive ? '−' : '+'}
        </text>
        <text x={BATTERY - 18} y={80} text-anchor="end">
          {`battery ${fixed(v.volts, 1)} V`}
        </text>
        <text x={271} y={32} text-anchor="middle">
          {fuse}
        </text>
        <text x={197} y={32} text-anchor="middle">
          switch
        </text>
        <text x={26} y={38}>
          {ifRoom(wire, 140)}
        </text>
        <text x={26} y={64} class="dimension-text">
          {`lost on the way ${fixed(drop!, 2)} V`}
        </text>
        <text x={26} y={82} class="dimension-text">
          {`${fixed(load!, 2)} A`}
        </text>
        <text x={26} y={112} class="dimension-text">
          {`at the coils ${fixed(left!, 2)} V`}
        </text>
      </g>
      {drawn.map(({ number, y }) => (
        <Coil
          key={number}
          y={y}
          number={number}
          ampere={each}
          ballast={v.ballast}
          plugs={plugs}
          way={way}
        />
      ))}
      {v.coils > DRAWN ? (
        <text x={26} y={FIRST + 64}>
          {alike(v.coils, each)}
        </text>
      ) : null}
    </svg>
  );
}
