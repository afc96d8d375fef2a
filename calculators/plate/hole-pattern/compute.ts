import { blameFields } from '../../frame/attempt.ts';
import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import { memoize } from '../../frame/memoize.ts';
import { asRead, betweenCentres } from '../../maths/plate/hole-distances.ts';
import { fitHoles } from '../../maths/plate/hole-pattern.ts';
import type { Pattern, Span } from '../../maths/plate/hole-distances.ts';
import type { Place } from '../../maths/plate/place.ts';
import { reachOf, type Edge, type Reach } from '../../maths/plate/land-outline.ts';
import { pitchCircle } from '../../maths/plate/pitch-circle.ts';
import type { inputs } from './inputs.ts';
import { noSuchHole } from './no-such-hole.ts';
import { openingsOf } from './opening.ts';
import { edgesOf, thinnest } from './part.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;

/** The pattern that the inputs describe: each distance measured as most were, but for those named. */
export function patternOf(v: Values): Pattern {
  const spans = v.distance.map(() => v.span);
  for (const way of ['centres', 'outside', 'inside'] satisfies Span[]) {
    for (const number of v[`at-${way}`]) spans[number - 1] = way;
  }
  return {
    diameters: v.hole,
    distances: v.distance.map((read, k) => ({
      from: v.a[k]!,
      to: v.b[k]!,
      read,
      span: spans[k]!,
    })),
  };
}

const DEGREES = 180 / Math.PI;

export interface Centre extends Place {
  /** The hole that lies there, from 0. */
  readonly hole?: number;
  /** The circle about it: of the holes named, or of all others. */
  readonly pitchRadius: number;
  /** Root mean square of how far these lie off it, mm. */
  readonly rms: number;
}

const mean = (figures: readonly number[]): number =>
  figures.reduce((sum, figure) => sum + figure, 0) / figures.length;

/** The circle through some places about a centre that is given. */
function circleAbout(centre: Place, places: readonly Place[]): Pick<Centre, 'pitchRadius' | 'rms'> {
  const radii = places.map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y));
  const pitchRadius = mean(radii);
  return { pitchRadius, rms: Math.sqrt(mean(radii.map((radius) => (radius - pitchRadius) ** 2))) };
}

/** The centre from which radii and angles are counted, and the circle about it. */
export function centreOf(v: Values, places: readonly Place[]): Centre {
  const named = [...new Set(v['circle-holes'])];
  for (const number of named) {
    if (number > places.length) throw noSuchHole('circle-holes', number, places.length);
  }
  const round =
    named.length > 0 ? named.map((number) => number - 1) : places.map((_, index) => index);
  const placesOf = (holes: readonly number[]) => holes.map((hole) => places[hole]!);
  if (v.about === 'hole') {
    const hole = v['centre-hole'] - 1;
    const place = places[hole];
    if (!place) throw noSuchHole('centre-hole', v['centre-hole'], places.length);
    const others = round.filter((other) => other !== hole);
    return {
      ...place,
      hole,
      ...circleAbout(place, others.length > 0 ? placesOf(others) : [place]),
    };
  }
  const on = placesOf(round);
  if (v.about === 'circle') {
    const { x, y, radius, rms } = pitchCircle(on);
    return { x, y, pitchRadius: radius, rms };
  }
  const middle = { x: mean(on.map(({ x }) => x)), y: mean(on.map(({ y }) => y)) };
  return { ...middle, ...circleAbout(middle, on) };
}

/** Radius and angle of each hole, from the line to hole 1, or to hole 2 where 1 is the centre. */
export function polarOf(places: readonly Place[], centre: Centre) {
  const first = places[centre.hole === 0 ? 1 : 0]!;
  const zero = Math.atan2(first.y - centre.y, first.x - centre.x);
  return places.map(({ x, y }, hole) => {
    if (hole === centre.hole) return { radius: 0, angle: 0 };
    const turn = (Math.atan2(y - centre.y, x - centre.x) - zero) * DEGREES;
    return { radius: Math.hypot(x - centre.x, y - centre.y), angle: wrapped(turn) };
  });
}

/** Just short of the line of hole 1 the count begins: holes often stand square or opposite to it. */
const BEFORE = 10;
const wrapped = (angle: number): number => ((((angle + BEFORE) % 360) + 360) % 360) - BEFORE;

/** The maths package's names of a distance's parts, by what their fields are called here. */
const parts: Readonly<Record<string, string>> = { from: 'a', to: 'b', read: 'distance' };

/** Tells an error about distance 2 of that distance's own fields. */
const atFields = <T>(work: () => T): T =>
  blameFields(
    (names) => names.map((of) => of.replace(/^(from|to|read)(?=-\d+$|$)/, (name) => parts[name]!)),
    work,
  );

/** The holes as fitted: asked for by results, picture, remarks and files alike. */
export const fitted = memoize((pattern: Pattern) => fitHoles(pattern), 200);

/** On which side of the others each hole lies is decided by the readings as they are. */
export const decide = (v: Values): readonly Place[] => atFields(() => fitted(patternOf(v)).places);

const holesReach = (places: readonly Place[], v: Values): Reach =>
  reachOf(
    places.map(({ x, y }, i): Edge => ({
      kind: 'arc',
      x,
      y,
      radius: v.hole[i]! / 2,
      from: 0,
      to: 360,
      hollow: false,
    })),
  );

/** @param decided The places that the readings as they are lead to, while a ± moves one of them. */
export function compute(v: Values, decided?: unknown): ComputedOf<typeof results> {
  return atFields(() => {
    const pattern = patternOf(v);
    // From places so near, a fit is found sooner than it would be looked up.
    const fit = decided ? fitHoles(pattern, decided as readonly Place[]) : fitted(pattern);
    const { places, misfits, rms, spare } = fit;
    const centre = centreOf(v, places);
    const polar = polarOf(places, centre);
    const edges = edgesOf(v, places, centre);
    const reach = edges.length > 0 ? reachOf(edges) : holesReach(places, v);
    const openings = openingsOf(v, places, edges);
    const [largest] = openings.map((border) => reachOf(border.map(({ edge }) => edge)));
    const metal = thinnest(v, places, centre, edges, openings);
    return {
      rms,
      spare,
      'least-metal': metal.wall,
      x: places.map(({ x }) => x),
      y: places.map(({ y }) => y),
      radius: polar.map(({ radius }) => radius),
      angle: polar.map(({ angle }) => angle),
      fitted: pattern.distances.map((distance, k) =>
        asRead(pattern, distance, betweenCentres(pattern, distance) - misfits[k]!),
      ),
      misfit: misfits,
      get checked() {
        return fit.checked.map((share) => 100 * share);
      },
      'centre-x': centre.x,
      'centre-y': centre.y,
      'pitch-radius': centre.pitchRadius,
      'off-circle': centre.rms,
      across: reach.right - reach.left,
      upright: reach.top - reach.bottom,
      'opening-across': largest ? largest.right - largest.left : 0,
      'opening-upright': largest ? largest.top - largest.bottom : 0,
    };
  });
}
