import { listed } from '../numeric/listed.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { crossings } from './edge-crossings.ts';
import {
  areaWithin,
  depthWithin,
  lengthOf,
  partOfEdge,
  placeAlong,
  shareAt,
} from './edge-parts.ts';
import type { Place } from './place.ts';
import { fromEdge } from './from-edge.ts';
import type { Edge, Land } from './land-outline.ts';

/** Shorter than a thousandth of a millimetre a part of an edge is none, mm. */
const NOTHING = 1e-3;
/** So far on the wrong side a place still counts as on the edge, mm. */
const ON = 1e-10;

/** A part of the border of an opening: along the band, or round the land of that number, from 0. */
export interface InnerEdge {
  readonly edge: Edge;
  readonly land?: number;
}

/** A part of a border while it is looked for, with the edge that it was cut from. */
interface Part extends InnerEdge {
  readonly of: InnerEdge;
}

/** The edge moved inwards by the band; nothing where it shrinks away. */
function inwards(edge: Edge, band: number): InnerEdge[] {
  if (edge.kind === 'line') {
    const long = lengthOf(edge);
    const [dx, dy] = [(-(edge.y2 - edge.y1) / long) * band, ((edge.x2 - edge.x1) / long) * band];
    const { x1, y1, x2, y2 } = edge;
    return [{ edge: { kind: 'line', x1: x1 + dx, y1: y1 + dy, x2: x2 + dx, y2: y2 + dy } }];
  }
  const radius = edge.hollow ? edge.radius + band : edge.radius - band;
  return radius > NOTHING ? [{ edge: { ...edge, radius } }] : [];
}

/** The edge of a land as the opening sees it: bent into it, and run clockwise. */
const roundLand = ({ x, y, radius }: Land, land: number): InnerEdge => ({
  land,
  edge: { kind: 'arc', x, y, radius, from: 0, to: 360, hollow: true },
});

/** One edge cut wherever another meets it. */
function cutUp(one: InnerEdge, others: readonly InnerEdge[]): Part[] {
  const { edge } = one;
  const whole = edge.kind === 'arc' && edge.to - edge.from >= 360;
  const met = others
    .flatMap((other) => (other === one ? [] : crossings(edge, other.edge)))
    .map((place) => shareAt(edge, place));
  if (whole && met.length > 0) {
    // Where a circle begins is no place of its own: its last part runs on into its first.
    const [first, ...more] = met.map((share) => share % 1).sort((a, b) => a - b) as [number];
    const from = edge.from + (edge.hollow ? 1 - first : first) * 360;
    const turned: Edge = { ...edge, from, to: from + 360 };
    return between(one, turned, [0, ...more.map((share) => share - first), 1]);
  }
  const shares = met.filter((share) => share > 0 && share < 1).sort((a, b) => a - b);
  return between(one, edge, [0, ...shares, 1]);
}

const between = (of: InnerEdge, edge: Edge, shares: readonly number[]): Part[] =>
  shares
    .slice(1)
    .map((share, i): Part => ({ ...of, of, edge: partOfEdge(edge, shares[i]!, share) }))
    .filter((part) => lengthOf(part.edge) > NOTHING);

const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The parts joined end to start; one that leads nowhere is left out. */
function joined(parts: readonly Part[]): Part[][] {
  const left = new Set(parts);
  const runs: Part[][] = [];
  for (const first of parts) {
    if (!left.delete(first)) continue;
    const run = [first];
    const begin = placeAlong(first.edge, 0);
    for (;;) {
      const last = run.at(-1)!;
      const end = placeAlong(last.edge, 1);
      // Where two lands touch, four parts meet: to change over there keeps two openings apart.
      const rank = (part: Part): number =>
        apart(placeAlong(part.edge, 0), end) + (part.land === last.land ? NOTHING : 0);
      const home = apart(begin, end) + (first.land === last.land && run.length > 1 ? NOTHING : 0);
      const next = [...left].reduce<Part | undefined>(
        (best, part) => (best === undefined || rank(part) < rank(best) ? part : best),
        undefined,
      );
      if (next === undefined || rank(next) >= home) {
        if (apart(begin, end) < 8 * NOTHING) runs.push(run);
        break;
      }
      if (apart(placeAlong(next.edge, 0), end) > 8 * NOTHING) break;
      left.delete(next);
      run.push(next);
    }
  }
  return runs;
}

/** Two parts of one edge that follow each other, as one. */
function both(a: Part, b: Part): Part {
  if (a.edge.kind === 'line' || b.edge.kind === 'line') {
    const [start, end] = [placeAlong(a.edge, 0), placeAlong(b.edge, 1)];
    return { ...a, edge: { kind: 'line', x1: start.x, y1: start.y, x2: end.x, y2: end.y } };
  }
  const { from } = a.edge.hollow ? b.edge : a.edge;
  const sweep = a.edge.to - a.edge.from + b.edge.to - b.edge.from;
  return { ...a, edge: { ...a.edge, from, to: from + sweep } };
}

/** A closed run with each edge in one part. */
function merged(run: readonly Part[]): readonly Part[] {
  const start = Math.max(
    0,
    run.findIndex((part, i) => run.at(i - 1)!.of !== part.of),
  );
  return [...run.slice(start), ...run.slice(0, start)].reduce<Part[]>((done, part) => {
    const last = done.at(-1);
    return last?.of === part.of ? [...done.slice(0, -1), both(last, part)] : [...done, part];
  }, []);
}

/** The borders of what is left open, islands among them, which run clockwise. */
function borders(outline: readonly Edge[], band: number, lands: readonly Land[]): InnerEdge[][] {
  const all = [...outline.flatMap((edge) => inwards(edge, band)), ...lands.map(roundLand)];
  const open = ({ x, y }: Place): boolean =>
    depthWithin(outline, x, y) >= band - ON &&
    lands.every((land) => Math.hypot(x - land.x, y - land.y) >= land.radius - ON);
  const parts = all
    .flatMap((one) => cutUp(one, all))
    .filter(({ edge }) => open(placeAlong(edge, 0.5)));
  return joined(parts).map((run) =>
    merged(run).map(({ edge, land }) => ({ edge, ...(land === undefined ? {} : { land }) })),
  );
}

const areaOf = (border: readonly InnerEdge[]): number => areaWithin(border.map(({ edge }) => edge));

/** To a hundredth of a millimetre, up or down. */
const hundredths = (value: number, way: 'up' | 'down'): string =>
  sayNumber((way === 'up' ? Math.ceil : Math.floor)(value * 100) / 100);

function noOpening(outline: readonly Edge[], band: number, lands: readonly Land[]): MathsError {
  let [narrow, wide] = [0, band];
  for (let turn = 0; turn < 24; turn += 1) {
    const middle = (narrow + wide) / 2;
    const some = borders(outline, middle, lands).some((border) => areaOf(border) > 0);
    [narrow, wide] = some ? [middle, wide] : [narrow, middle];
  }
  return narrow < 0.01
    ? new MathsError(
        'no-opening',
        ['band', 'land'],
        'The lands alone fill the part, so that no band leaves an opening in it. Make the lands narrower, or leave the band out.',
      )
    : new MathsError(
        'no-opening',
        ['band', 'land'],
        `A band of ${sayNumber(band)} mm meets itself across the part and leaves no opening. With these lands it must be narrower than ${hundredths(narrow, 'down')} mm.`,
      );
}

/** What stands free in the opening, and how far from the rest. */
function looseLand(
  island: readonly InnerEdge[],
  all: readonly InnerEdge[][],
  lands: readonly Land[],
): MathsError {
  const numbers = [...new Set(island.map(({ land }) => land!))].sort((a, b) => a - b);
  const edges = all.flatMap((border) => (border === island ? [] : border));
  const gap = Math.min(
    ...numbers.flatMap((number) => {
      const { x, y, radius } = lands[number]!;
      return edges.map(({ edge }) => fromEdge(edge, x, y) - radius);
    }),
  );
  const names = numbers.map((number) => number + 1);
  const holes =
    names.length === 1
      ? `Hole ${names[0]!} with its land stands`
      : `Holes ${listed(names)} with their lands stand`;
  return new MathsError(
    'loose-land',
    ['band', `land-${names[0]!}`],
    `${holes} free in the opening and would fall out: ${hundredths(gap, 'up')} mm part ${names.length === 1 ? 'it' : 'them'} from the rest. Make a land or the band wider by more than that, or name ${names.length === 1 ? 'it' : 'them'} among the holes that lie in the opening.`,
  );
}

/**
 * What a band along the outline of a part leaves open: all that is as far from the outline as the
 * band is wide, and outside every land. The lands stand into it.
 *
 * @param outline Edges anticlockwise that meet without a corner, as `landOutline` gives them.
 * @param band Width, mm, above 0.
 * @param lands Those that must be left standing; a radius of 0 stands for none.
 * @returns The border of each opening anticlockwise, the largest opening first.
 * @throws MathsError `no-opening` where nothing is left open, `loose-land` where a land hangs on
 *   nothing.
 */
export function bandOpenings(
  outline: readonly Edge[],
  band: number,
  lands: readonly Land[],
): readonly (readonly InnerEdge[])[] {
  const standing = lands.map((land, i) => ({ land, i })).filter(({ land }) => land.radius > 0);
  const found = borders(
    outline,
    band,
    standing.map(({ land }) => land),
  ).map((border) =>
    border.map(({ edge, land }) => ({
      edge,
      ...(land === undefined ? {} : { land: standing[land]!.i }),
    })),
  );
  const openings = found.filter((border) => areaOf(border) > NOTHING ** 2);
  if (openings.length === 0)
    throw noOpening(
      outline,
      band,
      standing.map(({ land }) => land),
    );
  const island = found.find((border) => areaOf(border) < -(NOTHING ** 2));
  if (island) throw looseLand(island, found, lands);
  return openings.sort((a, b) => areaOf(b) - areaOf(a));
}
