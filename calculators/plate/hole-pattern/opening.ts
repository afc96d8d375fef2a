import { MathsError } from '../../maths/numeric/errors.ts';
import { sayNumber } from '../../maths/numeric/rounding.ts';
import { bandOpenings, type InnerEdge } from '../../maths/plate/band-openings.ts';
import { depthWithin } from '../../maths/plate/edge-parts.ts';
import type { Place } from '../../maths/plate/place.ts';
import type { Edge } from '../../maths/plate/land-outline.ts';
import type { Values } from './compute.ts';
import { noSuchHole } from './no-such-hole.ts';
import { landsOf, openHoles } from './part.ts';

/**
 * What the band leaves open, largest first; nothing without a band.
 *
 * @throws MathsError as `bandOpenings`; `no-such-hole`, or `not-in-opening` for a hole that is named
 *   as lying there and does not.
 */
export function openingsOf(
  v: Values,
  places: readonly Place[],
  edges: readonly Edge[],
): readonly (readonly InnerEdge[])[] {
  const { band } = v;
  if (band === undefined || edges.length === 0) return [];
  const open = openHoles(v);
  for (const hole of open) {
    if (hole >= places.length) throw noSuchHole('in-opening', hole + 1, places.length);
  }
  const lands = landsOf(v, places).map((land, i) =>
    open.includes(i) ? { ...land, radius: 0 } : land,
  );
  const openings = bandOpenings(edges, band, lands);
  for (const hole of open) {
    const place = places[hole]!;
    const room = Math.min(
      depthWithin(edges, place.x, place.y) - band,
      ...lands.flatMap(({ x, y, radius }) =>
        radius > 0 ? [Math.hypot(x - place.x, y - place.y) - radius] : [],
      ),
    );
    const over = v.hole[hole]! / 2 - room;
    if (over <= 1e-6) continue;
    throw new MathsError(
      'not-in-opening',
      ['in-opening'],
      `Hole ${hole + 1} does not lie wholly in the opening: it runs ${sayNumber(Math.ceil(over * 100) / 100)} mm into the band or a land. Take it off this list, or make what it runs into narrower.`,
    );
  }
  return openings;
}
