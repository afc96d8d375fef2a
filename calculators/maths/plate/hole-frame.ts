import type { Pair } from './hole-network.ts';
import { apart, type Place } from './place.ts';

/** Turned and moved so that hole 1 lies at 0 0, hole 2 on +X and hole 3 on the side of +Y. */
export function inFrame(places: readonly Place[]): Place[] {
  const [origin, second, third] = places as readonly [Place, Place, Place?];
  const length = Math.hypot(second.x - origin.x, second.y - origin.y);
  const [cos, sin] = [(second.x - origin.x) / length, (second.y - origin.y) / length];
  const up = (place: Place): number => -(place.x - origin.x) * sin + (place.y - origin.y) * cos;
  const side = third !== undefined && up(third) < 0 ? -1 : 1;
  return places.map((place, i) => ({
    x: i === 0 ? 0 : (place.x - origin.x) * cos + (place.y - origin.y) * sin,
    y: i < 2 ? 0 : side * up(place),
  }));
}

/** The coordinates that are not 0 by the choice of axes, and the places they stand for. */
export const toUnknowns = (places: readonly Place[]): number[] => [
  places[1]!.x,
  ...places.slice(2).flatMap(({ x, y }) => [x, y]),
];
export const column = (hole: number): number => 2 * hole - 3;
export const toPlaces = (unknowns: readonly number[]): Place[] => [
  { x: 0, y: 0 },
  { x: unknowns[0]!, y: 0 },
  ...Array.from({ length: (unknowns.length - 1) / 2 }, (_, i) => ({
    x: unknowns[1 + 2 * i]!,
    y: unknowns[2 + 2 * i]!,
  })),
];

/** How each distance changes with each unknown. */
export function slopesOf(places: readonly Place[], pairs: readonly Pair[]): number[][] {
  return pairs.map(([a, b]) => {
    const row = new Array<number>(2 * places.length - 3).fill(0);
    const length = apart(places[a]!, places[b]!) || 1e-12;
    const way = [
      (places[a]!.x - places[b]!.x) / length,
      (places[a]!.y - places[b]!.y) / length,
    ] as const;
    for (const [hole, sign] of [
      [a, 1],
      [b, -1],
    ] as const) {
      if (hole === 0) continue;
      if (hole === 1) row[0] = sign * way[0];
      else {
        row[column(hole)] = sign * way[0];
        row[column(hole) + 1] = sign * way[1];
      }
    }
    return row;
  });
}
