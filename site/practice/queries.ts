import type { Bench } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import type { FloatCard } from '../../calculators/practice/float.ts';
import type { SlidesCard } from '../../calculators/practice/slides.ts';

const query = (figures: Readonly<Record<string, string | number>>): string =>
  `?${new URLSearchParams(Object.entries(figures).map(([key, value]) => [key, String(value)])).toString()}`;

/** The latest reading on the pad of each cylinder with the lamp out, mm before the top. */
function fired({ card }: Engine, { notes }: Bench): Record<string, string> {
  const latest = Array.from({ length: card.cylinders }, (_, set) =>
    notes.findLast(
      ({ cylinder, dial, lamp }) => cylinder === set && lamp === 'out' && dial !== undefined,
    ),
  );
  if (!latest.every((note) => note !== undefined)) return {};
  return Object.fromEntries(latest.map((note, i) => [`fired-${i + 1}`, `${note.dial}mm`]));
}

/** The disc's two latest readings on the pad, one come to each way. */
function stopped({ notes }: Bench): Record<string, string> {
  const before = notes.findLast(({ way }) => way > 0);
  const after = notes.findLast(({ way }) => way < 0);
  if (!before || !after || before.disc >= 0 || after.disc <= 0) return {};
  return { before: `${-before.disc}deg`, after: `${after.disc}deg`, scale: 'both-ways' };
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
    'degree-disc': query({ outside: `${engine.card.discDiameter}mm` }),
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
      ...fired(engine, bench),
    }),
  };
}

export const slidesQueries = ({
  slides,
  thread,
}: SlidesCard): Readonly<Record<string, string>> => ({
  'slide-balance': query({ slides, thread: `${thread}mm` }),
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
