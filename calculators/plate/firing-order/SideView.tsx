import { fixed } from '../../frame/text/format.ts';
import type { Throw } from '../../maths/crank/engine-balance.ts';
import { travelBefore } from '../../maths/crank/slider-crank.ts';
import { Key, type KeyEntry } from '../../picture/common/key.tsx';
import { spreadOut } from '../../picture/common/labels.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import { pinDirections } from './EndView.tsx';
import { BADGE, CylinderBadge } from './marks.tsx';

interface Props {
  readonly throws: readonly Throw[];
  readonly turned: number;
  readonly stroke: number;
  readonly rodLength: number;
}

const WIDTH = 340;
const HEIGHT = 340;
const NAMES = 38;
/** Where a force starts, and how long one piston’s own is. */
const FORCE = { from: 74, long: 19 } as const;
const TOP = 106;
const BOTTOM = 312;
const SIDE = 22;
/** Least room for a number. */
const LEAST = 2 * BADGE + 4;

const key: readonly KeyEntry[] = [
  { as: 'line', look: 'force-shaft', words: 'force of each piston on the engine' },
];

/** The crank from its side, each cylinder turned upright about the crank. To scale. */
export function SideView({ throws, turned, stroke, rodLength }: Props) {
  const radius = stroke / 2;
  const crown = stroke * 0.45;
  const skirt = stroke * 0.4;
  const places = throws.map(({ place }) => place);
  const first = Math.min(...places);
  const span = Math.max(...places) - first;
  const tall = (BOTTOM - TOP) / (radius * 2.15 + rodLength + crown);
  const wide = WIDTH - 2 * SIDE;
  const scale = Math.min(tall, wide / (span + stroke));
  const gaps = places.flatMap((a, i) => places.slice(i + 1).map((b) => Math.abs(a - b)));
  const least = Math.min(stroke, ...gaps.filter((gap) => gap > 0).map((gap) => gap * 0.85));
  const room = wide / throws.length - 6;
  const bore = hundredth(Math.min(room, Math.max(LEAST - 8, least * scale)));
  const half = bore / 2;
  const left = (WIDTH - span * scale) / 2;
  const across = spreadOut(
    places.map((place) => left + (place - first) * scale),
    SIDE + half,
    WIDTH - SIDE - half,
    Math.max(LEAST, bore + 4),
  ).map(hundredth);
  const axis = hundredth(BOTTOM - radius * 1.15 * scale);
  const up = (mm: number): number => hundredth(axis - mm * scale);
  const geometry = { stroke, rodLength, pinOffset: 0 };
  const ratio = radius / rodLength;

  const cylinders = pinDirections(throws, turned).map((direction, i) => {
    const after = direction - throws[i]!.lean;
    const cos = Math.cos((after * Math.PI) / 180);
    const pin = radius + rodLength - travelBefore(geometry, after);
    const force = cos + ratio * Math.cos((after * Math.PI) / 90);
    return { x: across[i]!, throwUp: radius * cos, pin, force };
  });
  const order = [...cylinders].sort((a, b) => a.x - b.x);
  const cheek = hundredth(half * 0.55);
  const shaft = order
    .map(({ x, throwUp }) => `H${hundredth(x - cheek)}V${up(throwUp)}h${2 * cheek}V${axis}`)
    .join('');
  const wall = { top: up(radius + rodLength + crown), foot: up(rodLength - radius - skirt) };

  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`The crank from its side, ${fixed(turned, 0)} degrees after the top of cylinder 1, with each piston and the way its inertia pushes the engine`}
    >
      <Key entries={key} width={WIDTH} />
      <path class="centre-line" d={`M8 ${axis}H${WIDTH - 8}`} />
      <path class="web crank-side" d={`M10 ${axis}${shaft}H${WIDTH - 10}`} />
      {cylinders.map(({ x, throwUp, pin, force }, i) => {
        const tip = hundredth(FORCE.from - force * FORCE.long);
        const way = force < 0 ? -1 : 1;
        const head = Math.min(6, Math.abs(tip - FORCE.from));
        return (
          <g key={i} aria-hidden="true">
            <path
              class="part part-hollow"
              d={`M${hundredth(x - half)} ${wall.top}V${wall.foot}M${hundredth(x + half)} ${wall.top}V${wall.foot}`}
            />
            <rect
              class="part part-moving piston"
              x={hundredth(x - half + 1)}
              y={up(pin + crown)}
              width={hundredth(bore - 2)}
              height={hundredth((crown + skirt) * scale)}
            />
            <path class="web rod" d={`M${x} ${up(throwUp)}V${up(pin)}`} />
            <circle class="part gudgeon-pin" cx={x} cy={up(pin)} r={3} />
            <path class="force-shaft" d={`M${x} ${FORCE.from}V${tip}`} />
            <path class="force-head" d={`M${x} ${tip}l-4 ${way * head}h8z`} />
            <CylinderBadge x={x} y={NAMES} number={i + 1} />
          </g>
        );
      })}
      <text x={8} y={HEIGHT - 8}>
        from the side, each cylinder turned upright
      </text>
    </svg>
  );
}
