import { MathsError } from '../../maths/numeric/errors.ts';
import { sayNumber } from '../../maths/numeric/rounding.ts';
import type { InnerEdge } from '../../maths/plate/band-openings.ts';
import { depthWithin } from '../../maths/plate/edge-parts.ts';
import { apart, type Place } from '../../maths/plate/place.ts';
import { fromEdge } from '../../maths/plate/from-edge.ts';
import { landOutline, type Edge, type Land } from '../../maths/plate/land-outline.ts';
import { betweenEdges, narrowestNeck } from '../../maths/plate/necks.ts';
import type { Values } from './compute.ts';

/** The land round each hole, as far as the edge of the part. */
export const landsOf = (v: Values, places: readonly Place[]): readonly Land[] =>
  places.map(({ x, y }, i) => ({ x, y, radius: v.hole[i]! / 2 + v.land[i]! }));

/** The edge of the part, anticlockwise; none where no outline is asked for. */
export function edgesOf(v: Values, places: readonly Place[], middle: Place): readonly Edge[] {
  if (v.outline === 'none') return [];
  if (v.outline === 'round') {
    const { x, y } = middle;
    return [{ kind: 'arc', x, y, radius: v.outside / 2, from: 0, to: 360, hollow: false }];
  }
  return landOutline(landsOf(v, places), v.bulge);
}

/** Diameter of the bore; a band has its opening instead. */
export const boreOf = (v: Values): number =>
  v.outline === 'none' || v.band !== undefined ? 0 : v.bore;

/** The holes that are named as lying in the opening, from 0. */
export const openHoles = (v: Values): readonly number[] =>
  v.outline === 'none' || v.band === undefined
    ? []
    : [...new Set(v['in-opening'])].map((number) => number - 1);

export interface Metal {
  /** mm. */
  readonly wall: number;
  readonly between: readonly [string, string];
}

const hole = (index: number): string => `hole ${index + 1}`;

/** What an edge of the outline is called: the land that it goes round, or the hole it runs on from. */
function edgeName(edges: readonly Edge[], index: number, places: readonly Place[]): string {
  const roundHole = (edge: Edge): number =>
    edge.kind === 'line' || edge.hollow ? -1 : places.findIndex((one) => apart(one, edge) < 1e-9);
  const own = roundHole(edges[index]!);
  if (own >= 0) return `the land of ${hole(own)}`;
  const before = roundHole(edges.at(index - 1)!);
  return before >= 0 ? `the edge on from ${hole(before)}` : 'the edge';
}

/** Across a neck of the part, which a hollow edge makes. */
function acrossNeck(edges: readonly Edge[], places: readonly Place[]): Metal[] {
  const neck = narrowestNeck(edges);
  if (!neck) return [];
  const [a, b] = neck.edges;
  return [{ wall: neck.wall, between: [edgeName(edges, a, places), edgeName(edges, b, places)] }];
}

/** Between one opening and another, where a band is wide enough to part them. */
const betweenOpenings = (openings: readonly (readonly InnerEdge[])[]): Metal[] =>
  openings.flatMap((one, i) =>
    openings.slice(0, i).map((other): Metal => ({
      wall: Math.min(...one.flatMap((a) => other.map((b) => betweenEdges(a.edge, b.edge)))),
      between: ['one opening', 'another'],
    })),
  );

/** To a millionth of a millimetre: a land is as wide as it was given, wherever its hole lies. */
const withoutDust = (figure: number): number => Math.round(figure * 1e6) / 1e6;

/**
 * The least metal between any two holes, from one to the bore, or from one of them to the edge or the
 * opening, across the band, across a neck between two edges, or between two openings. Holes that lie
 * in the opening have none.
 *
 * @throws MathsError `no-metal` where there is none.
 */
export function thinnest(
  v: Values,
  places: readonly Place[],
  middle: Place,
  edges: readonly Edge[],
  openings: readonly (readonly InnerEdge[])[],
): Metal {
  const bore = boreOf(v);
  const open = openHoles(v);
  const round = [
    ...places.flatMap((place, i) =>
      open.includes(i) ? [] : [{ ...place, radius: v.hole[i]! / 2, name: hole(i) }],
    ),
    ...(bore > 0 ? [{ ...middle, radius: bore / 2, name: 'the bore' }] : []),
  ];
  const between = round.flatMap((a, i) =>
    round.slice(0, i).map((b): Metal => ({
      wall: apart(a, b) - a.radius - b.radius,
      between: [b.name, a.name],
    })),
  );
  // A hollow edge may run past a hole altogether: what lies outside counts as below nothing.
  const toEdge =
    edges.length === 0
      ? []
      : round.map((one): Metal => ({
          wall: depthWithin(edges, one.x, one.y) - one.radius,
          between: [one.name, 'the edge'],
        }));
  const inner = openings.flat();
  const toOpening = round.flatMap((one) =>
    inner.map(({ edge }): Metal => ({
      wall: fromEdge(edge, one.x, one.y) - one.radius,
      between: [one.name, 'the opening'],
    })),
  );
  const across = inner.some(({ land }) => land === undefined)
    ? [{ wall: v.band!, between: ['the edge', 'the opening'] } satisfies Metal]
    : [];
  const all: readonly Metal[] = [
    ...between,
    ...toEdge,
    ...toOpening,
    ...across,
    ...acrossNeck(edges, places),
    ...betweenOpenings(openings),
  ];
  const least = all.reduce((a, b) => (b.wall < a.wall ? b : a));
  if (least.wall > 0) return { ...least, wall: withoutDust(least.wall) };
  const [first, second] = least.between;
  const at = second === 'the edge' ? (v.outline === 'round' ? 'outside' : 'bulge') : 'hole';
  throw new MathsError(
    'no-metal',
    [least.between.includes('the bore') ? 'bore' : at],
    `There is no metal between ${first} and ${second}: they run ${sayNumber(Math.round(-least.wall * 100) / 100)} mm into each other. Check the diameters, and how the distances were measured.`,
  );
}
