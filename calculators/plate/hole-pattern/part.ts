import { MathsError } from '../../maths/numeric/errors.ts';
import { sayNumber } from '../../maths/numeric/rounding.ts';
import type { Place } from '../../maths/plate/hole-pattern.ts';
import { fromEdge, landOutline, type Edge } from '../../maths/plate/land-outline.ts';
import type { Values } from './compute.ts';

/** The edge of the part, anticlockwise; none where no outline is asked for. */
export function edgesOf(v: Values, places: readonly Place[], middle: Place): readonly Edge[] {
  if (v.outline === 'none') return [];
  if (v.outline === 'round') {
    const { x, y } = middle;
    return [{ kind: 'arc', x, y, radius: v.outside / 2, from: 0, to: 360, hollow: false }];
  }
  const lands = places.map(({ x, y }, i) => ({ x, y, radius: v.hole[i]! / 2 + v.land[i]! }));
  return landOutline(lands, v.bulge);
}

export interface Metal {
  /** mm. */
  readonly wall: number;
  readonly between: readonly [string, string];
}

const hole = (index: number): string => `hole ${index + 1}`;

/** To a millionth of a millimetre: a land is as wide as it was given, wherever its hole lies. */
const withoutDust = (figure: number): number => Number(figure.toFixed(6));

/** Whether a hole lies wholly outside a round edge. */
const outsideRound = (edge: Edge, { x, y }: Place): boolean =>
  edge.kind === 'arc' && Math.hypot(x - edge.x, y - edge.y) > edge.radius;

/**
 * The least metal between any two holes, from one to the bore, or from one of them to the edge.
 *
 * @throws MathsError `no-metal` where there is none.
 */
export function thinnest(
  v: Values,
  places: readonly Place[],
  middle: Place,
  edges: readonly Edge[],
): Metal {
  const bore = v.outline !== 'none' && v.bore > 0 ? v.bore / 2 : 0;
  const round = [
    ...places.map((place, i) => ({ ...place, radius: v.hole[i]! / 2, name: hole(i) })),
    ...(bore > 0 ? [{ ...middle, radius: bore, name: 'the bore' }] : []),
  ];
  const between = round.flatMap((a, i) =>
    round.slice(0, i).map((b): Metal => ({
      wall: Math.hypot(a.x - b.x, a.y - b.y) - a.radius - b.radius,
      between: [b.name, a.name],
    })),
  );
  const single = edges.length === 1 ? edges[0] : undefined;
  const toEdge = round.flatMap((one) =>
    edges.map((edge): Metal => ({
      wall:
        (single && outsideRound(single, one) ? -1 : 1) * fromEdge(edge, one.x, one.y) - one.radius,
      between: [one.name, 'the edge'],
    })),
  );
  const least = [...between, ...toEdge].reduce((a, b) => (b.wall < a.wall ? b : a));
  if (least.wall > 0) return { ...least, wall: withoutDust(least.wall) };
  const [first, second] = least.between;
  const at = second === 'the edge' ? (v.outline === 'round' ? 'outside' : 'bulge') : 'hole';
  throw new MathsError(
    'no-metal',
    [least.between.includes('the bore') ? 'bore' : at],
    `There is no metal between ${first} and ${second}: they run ${sayNumber(Math.round(-least.wall * 100) / 100)} mm into each other. Check the diameters, and how the distances were measured.`,
  );
}
