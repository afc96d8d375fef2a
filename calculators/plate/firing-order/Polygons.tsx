import { fixed } from '../../frame/text/format.ts';
import {
  cranks,
  fromMiddle,
  lengthOfSum,
  type Order,
  type Throw,
  type Vector,
} from '../../maths/crank/engine-balance.ts';
import { belowKey, Key, type KeyEntry } from '../../picture/common/key.tsx';
import { evenly, hundredth } from '../../maths/numeric/steps.ts';

interface Props {
  readonly throws: readonly Throw[];
  readonly turned: number;
  /** The most over a turn of each: N, N m. */
  readonly most: Readonly<
    Record<'primary' | 'secondary' | 'primary-couple' | 'secondary-couple', number>
  >;
}

const WIDTH = 340;
const PANEL = 166;
const RADIUS = 56;
const TITLE = 14;
const MIDDLE = TITLE + 12 + RADIUS;
const FIGURE = MIDDLE + RADIUS + 20;

const key: readonly KeyEntry[] = [
  { as: 'line', look: 'vector', words: 'cranks turning forwards' },
  { as: 'line', look: 'vector vector-back', words: 'their images, backwards' },
  { as: 'line', look: 'vector vector-sum', words: 'their sum now' },
  { as: 'line', look: 'leader', words: 'through one turn' },
];
const HEIGHT = belowKey(key, WIDTH) + 2 * PANEL + 4;

const panels = [
  { name: 'primary', order: 'primary', couple: false, words: 'primary force' },
  { name: 'secondary', order: 'secondary', couple: false, words: 'secondary force' },
  { name: 'primary-couple', order: 'primary', couple: true, words: 'primary couple' },
  { name: 'secondary-couple', order: 'secondary', couple: true, words: 'secondary couple' },
] as const satisfies readonly { order: Order; [key: string]: unknown }[];

/** The corners of a chain of vectors, one hung on the other. */
function chain(from: Vector, vectors: readonly Vector[]): Vector[] {
  const corners = [from];
  for (const { x, y } of vectors) {
    const last = corners.at(-1)!;
    corners.push({ x: last.x + x, y: last.y + y });
  }
  return corners;
}

/** How far the chains reach from the middle at any turn, in the unit of the vectors. */
function reach(direct: readonly Vector[], reverse: readonly Vector[]): number {
  const most = (vectors: readonly Vector[]): number =>
    Math.max(...vectors.map((_, i) => lengthOfSum(vectors.slice(0, i + 1))));
  return Math.max(most(direct), lengthOfSum(direct) + most(reverse));
}

interface PanelProps {
  readonly throws: readonly Throw[];
  readonly turned: number;
  readonly order: Order;
  readonly weights: readonly number[];
  readonly x: number;
  readonly y: number;
}

function Polygon({ throws, turned, order, weights, x, y }: PanelProps) {
  const { direct, reverse } = cranks(throws, order, weights, turned);
  const long = reach(direct, reverse);
  if (long === 0) return <circle class="joint" cx={x} cy={y} r={3} />;
  const scale = RADIUS / long;
  const place = (v: Vector): string =>
    `${hundredth(x + v.x * scale)} ${hundredth(y - v.y * scale)}`;
  const path = (corners: readonly Vector[]): string => `M${corners.map(place).join('L')}`;
  const forwards = chain({ x: 0, y: 0 }, direct);
  const backwards = chain(forwards.at(-1)!, reverse);
  const end = backwards.at(-1)!;
  const nothing = lengthOfSum(direct) + lengthOfSum(reverse) < 1e-9 * long;
  const round = evenly(0, order === 'primary' ? 360 : 180, 60).map((angle) => {
    const then = cranks(throws, order, weights, angle);
    return chain({ x: 0, y: 0 }, [...then.direct, ...then.reverse]).at(-1)!;
  });
  return (
    <>
      {nothing ? null : <path class="leader" d={path(round)} />}
      <path class="vector direct" d={path(forwards)} />
      <path class="vector vector-back reverse" d={path(backwards)} />
      {nothing ? null : <path class="vector vector-sum" d={path([{ x: 0, y: 0 }, end])} />}
      <circle class="joint" cx={x} cy={y} r={3} />
    </>
  );
}

/** The polygons of direct and reverse cranks: what closes is balanced, and what is left shakes. */
export function Polygons({ throws, turned, most }: Props) {
  const level = throws.map(() => 1);
  const arms = fromMiddle(throws);
  const top = belowKey(key, WIDTH);
  const said = ({ name, couple }: (typeof panels)[number]): string =>
    most[name] === 0 ? 'none' : `most ${fixed(most[name], couple ? 1 : 0)} ${couple ? 'N m' : 'N'}`;
  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Polygons of forces and couples, ${fixed(turned, 0)} degrees after the top of cylinder 1: ${panels.map((panel) => `${panel.words} ${said(panel)}`).join(', ')}`}
    >
      <Key entries={key} width={WIDTH} />
      {panels.map((panel, i) => {
        const x = WIDTH * (i % 2 === 0 ? 0.25 : 0.75);
        const y = top + PANEL * Math.floor(i / 2);
        return (
          <g key={panel.name} class={`panel-${panel.name}`}>
            <text class="axis-text" x={x} y={y + TITLE} text-anchor="middle">
              {panel.words}
            </text>
            <Polygon
              throws={throws}
              turned={turned}
              order={panel.order}
              weights={panel.couple ? arms : level}
              x={x}
              y={y + MIDDLE}
            />
            <text x={x} y={y + FIGURE} text-anchor="middle">
              {said(panel)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
