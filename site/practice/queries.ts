import { alike, type Bench, type Note } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { wrapped } from '../../calculators/practice/instruments.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import type { FloatCard } from '../../calculators/practice/float.ts';
import type { SlidesBench, SlidesCard } from '../../calculators/practice/slides.ts';

const query = (figures: Readonly<Record<string, string | number>>): string =>
  `?${new URLSearchParams(Object.entries(figures).map(([key, value]) => [key, String(value)])).toString()}`;

/**
 * The latest reading on the pad of each cylinder that was come to forwards and found the lamp out, mm
 * before the top. A cylinder that has none is left to the calculator's example.
 */
const fired = ({ notes }: Bench): Record<string, string> =>
  Object.fromEntries(
    notes
      .filter(({ dial, lamp, way }) => lamp === 'out' && way > 0 && dial !== undefined)
      .map(({ cylinder, dial }) => [`fired-${cylinder + 1}`, `${dial}mm`]),
  );

/** What a note tells of the crank: the mean of two pointers where there are two. */
const crankAt = ({ disc, opposite }: Note): number =>
  opposite === undefined ? disc : disc + wrapped(opposite + 180 - disc) / 2;

/** The heights of two readings by the indicator, and how far they differ. */
function heights(one: Note, other: Note): Record<string, string> {
  if (one.dial === undefined || other.dial === undefined) return {};
  const [height, apart] = [(one.dial + other.dial) / 2, Math.abs(one.dial - other.dial)];
  if (height <= 0 || apart > 1) return {};
  return {
    height: `${hundredth(height)}mm`,
    ...(apart > 0.02 && { 'height-error': `${hundredth(apart)}mm` }),
  };
}

/** The latest reading of the disc on the pad and that come to the other way, the disc standing alike. */
function stopped({ notes }: Bench): Record<string, string> {
  const last = notes.at(-1);
  const other = notes.findLast((note) => note.way !== last?.way && alike(note, last!));
  if (!last || !other) return {};
  const [before, after] = last.way > 0 ? [last, other] : [other, last];
  if (crankAt(before) >= 0 || crankAt(after) <= 0) return {};
  return {
    before: `${-crankAt(before)}deg`,
    after: `${crankAt(after)}deg`,
    scale: 'both-ways',
    ...heights(before, after),
  };
}

/** What each calculator is opened with: the card's figures, and the pad's where it has them. */
export function crankQueries(engine: Engine, bench: Bench): Readonly<Record<string, string>> {
  const { stroke, rodLength, pinOffset, target, cylinders, plateRadius, slotRadius, gap, given } =
    engine.card;
  const geometry = { stroke: `${stroke}mm`, rod: `${rodLength}mm`, offset: `${pinOffset}mm` };
  return {
    'find-tdc': query({
      ...geometry,
      method: engine.task === 'heights' ? 'equal' : 'stop',
      ...stopped(bench),
    }),
    'degree-disc': query({
      ...geometry,
      outside: `${engine.card.discDiameter}mm`,
      numbering: 'both-ways',
      turning: 'clockwise',
    }),
    'breaker-cam': query({ gap: `${gap}mm`, lobes: 1, 'speed-ratio': 1 }),
    'piston-position': given
      ? query({
          ...geometry,
          given: 'other',
          'given-stroke': `${given.stroke}mm`,
          'given-rod': `${given.rodLength}mm`,
          'given-offset': `${given.pinOffset}mm`,
          from: 'travel',
          travel: `${given.before}mm`,
        })
      : query({ ...geometry, from: 'travel', travel: `${target}mm` }),
    'plate-setting': query({
      ...geometry,
      cylinders,
      target: `${target}mm`,
      'slot-radius': `${slotRadius}mm`,
      'plate-radius': `${plateRadius}mm`,
      'speed-ratio': 1,
      ...fired(bench),
    }),
  };
}

export const slidesQueries = (
  { slides, thread, target }: SlidesCard,
  { found }: SlidesBench,
): Readonly<Record<string, string>> => ({
  'slide-balance': query({
    slides,
    thread: `${thread}mm`,
    method: 'drill',
    to: 'wanted',
    wanted: `${target}mm`,
    ...Object.fromEntries(
      found.flatMap((opening, i) =>
        opening === undefined ? [] : [[`opening-${i + 1}`, `${opening}mm`]],
      ),
    ),
  }),
});

export const floatQueries = (
  { lever, feed, level }: FloatCard,
  gauge: number | undefined,
): Readonly<Record<string, string>> => ({
  'float-level': query({
    'pivot-to-needle': `${lever.pivotToNeedle}mm`,
    'pivot-to-float': `${lever.pivotToFloat}mm`,
    'float-mass': `${lever.floatMass}g`,
    'float-area': lever.floatArea,
    'float-depth': `${lever.floatDepth}mm`,
    seat: `${feed.seat}mm`,
    head: `${feed.head}mm`,
    density: feed.density,
    wanted: `${level}mm`,
    ...(gauge !== undefined && { height: `${gauge}mm` }),
  }),
});
