import { misfitsOf, sumOfSquares, type Net } from './hole-distances.ts';
import { apart, type Place } from './place.ts';

interface Spoke {
  readonly to: Place;
  readonly length: number;
}

type Between = (a: number, b: number) => number | undefined;

/** What is measured between two holes; the first of several readings. */
function betweenIn({ pairs, lengths }: Net): Between {
  const measured = new Map<string, number>();
  pairs.forEach(([a, b], k) => {
    for (const key of [`${a} ${b}`, `${b} ${a}`]) {
      if (!measured.has(key)) measured.set(key, lengths[k]!);
    }
  });
  return (a, b) => measured.get(`${a} ${b}`);
}

/** Every three holes with all distances between them, laid down; the others lie nowhere yet. */
function triangles(holes: number, between: Between): (Place | undefined)[][] {
  const found: (Place | undefined)[][] = [];
  for (let c = 2; c < holes; c += 1) {
    for (let b = 1; b < c; b += 1) {
      for (let a = 0; a < b; a += 1) {
        const [ab, ac, bc] = [between(a, b), between(a, c), between(b, c)];
        if (ab === undefined || ac === undefined || bc === undefined) continue;
        const x = (ab ** 2 + ac ** 2 - bc ** 2) / (2 * ab);
        const laid = new Array<Place | undefined>(holes).fill(undefined);
        laid[a] = { x: 0, y: 0 };
        laid[b] = { x: ab, y: 0 };
        laid[c] = { x, y: Math.sqrt(Math.max(0, ac ** 2 - x ** 2)) };
        found.push(laid);
      }
    }
  }
  return found;
}

/** Where two circles about holes that lie already cross, or come nearest to it. */
function crossings(first: Spoke, second: Spoke): readonly [Place, Place] {
  const [wx, wy] = [second.to.x - first.to.x, second.to.y - first.to.y];
  const reach = Math.hypot(wx, wy) || 1e-12;
  const along = (first.length ** 2 - second.length ** 2 + reach ** 2) / (2 * reach);
  const across = Math.sqrt(Math.max(0, first.length ** 2 - along ** 2));
  const at = (side: number): Place => ({
    x: first.to.x + (along * wx - side * wy) / reach,
    y: first.to.y + (along * wy + side * wx) / reach,
  });
  return [at(across), at(-across)];
}

/**
 * Places built up from a triangle, hole by hole, the one next that hangs on most of those that lie:
 * each on the side on which its distances fit better. Nothing where one hangs on fewer than two.
 */
function builtOn(triangle: readonly (Place | undefined)[], between: Between): Place[] | undefined {
  const places = [...triangle];
  const spokes = (hole: number): Spoke[] =>
    places.flatMap((to, other) => {
      const length = between(hole, other);
      return to === undefined || length === undefined ? [] : [{ to, length }];
    });
  let left = [...places.keys()].filter((hole) => places[hole] === undefined);
  while (left.length > 0) {
    const next = left.reduce((a, b) => (spokes(b).length > spokes(a).length ? b : a));
    const [first, second, ...others] = spokes(next);
    if (!first || !second) return undefined;
    const misfit = (at: Place): number =>
      sumOfSquares(others.map(({ to, length }) => length - apart(at, to)));
    const [one, other] = crossings(first, second);
    places[next] = misfit(other) < misfit(one) ? other : one;
    left = left.filter((hole) => hole !== next);
  }
  return places as Place[];
}

/**
 * Rough places of so many holes: the best of what is built up from each triangle. Exact where the
 * distances are and each hole hangs on three that lie before it; nothing where nothing can be built.
 */
export function builtUp(holes: number, net: Net): Place[] | undefined {
  const between = betweenIn(net);
  const off = (places: readonly Place[]): number => sumOfSquares(misfitsOf(net, places));
  return triangles(holes, between)
    .flatMap((triangle) => {
      const built = builtOn(triangle, between);
      return built ? [built] : [];
    })
    .sort((a, b) => off(a) - off(b))[0];
}
