import { expect, it, vi } from 'vitest';
import { allFrom, evaluate } from '../../calculators/frame/evaluate.ts';
import { restsOnExample } from '../../calculators/frame/whose.ts';
import { isExample } from '../../calculators/frame/whose-field.ts';
import { calculators } from '../../site/all-calculators.ts';
import { changedRows, reading, someState, someText, spreader, whole } from './states.ts';

vi.setConfig({ testTimeout: 120_000 });

/** Enough that every input that can change a result is met in a state where it does. */
const STATES = 150;
const MOVES = 2;

/** What changes a result in so few states that these do not meet one, as `result key`, and why it can. */
const SELDOM: Readonly<Record<string, readonly (readonly [pairs: RegExp, why: string])[]>> = {
  'jet-set': [
    [
      /^chosen (known-number|known-bore|volume|head|coefficient)$/,
      'It makes all areas larger by as much, which tells beside a size that is given.',
    ],
  ],
  'degree-disc': [[/^mark-\w+ marks-after$/, 'The example has none, and random texts keep to it.']],
  'firing-order': [
    [/^sets (firing-order|pin|lean)$/, 'Tops that fall together are rare among random ones.'],
  ],
  'breaker-cam': [
    [/ lobes$/, 'A dwell is that of one lobe of so many, and few fit another number.'],
  ],
  'port-timing': [
    [/^inlet-(opens disc-closes|closes disc-opens)$/, 'A disc that would never shut has neither.'],
  ],
  compression: [
    [/^squish-(after|for) /, 'There is none where a skim would leave nothing above the piston.'],
  ],
};

/** What a calculator says that its results rest on, in any of the states met, and that changed them in none. */
function neverChanging(calculator: (typeof calculators)[number]): readonly string[] {
  const named = new Set<string>();
  const moved = new Set<string>();
  const next = spreader(41);
  for (let i = 0; i < STATES; i += 1) {
    const state = someState(calculator, next);
    if (state === undefined) continue;
    const says = Object.entries(calculator.restsOn ?? {}).flatMap(([result, told]) =>
      (typeof told === 'function' ? told(state.values as never) : told!).map(
        (key) => [result, key] as const,
      ),
    );
    for (const [result, key] of says) named.add(`${result} ${key}`);
    for (const field of state.fields) {
      const series = calculator.inputs[field.key] ? field.key : field.key.replace(/-\d+$/, '');
      const waiting = says.filter(
        ([result, key]) =>
          !moved.has(`${result} ${key}`) && [field.key, series, `${series}-N`].includes(key),
      );
      for (let moves = 0; moves < (waiting.length > 0 ? MOVES : 0); moves += 1) {
        const texts = { ...whole(state), [field.key]: someText(field, next) };
        const after = evaluate(calculator, texts, reading);
        if (!after.computed) continue;
        for (const [result, key] of waiting) {
          const rows = changedRows(state.results[result]!, after.results[result]!);
          if (rows !== undefined) moved.add(`${result} ${key}`);
        }
      }
    }
  }
  const seldom = SELDOM[calculator.slug] ?? [];
  return [...named].filter(
    (pair) => !moved.has(pair) && !seldom.some(([pairs]) => pairs.test(pair)),
  );
}

// The holes of a pattern are fitted together: a distance to one moves all, by far more states than these.
const apart = calculators.filter(({ slug }) => slug !== 'hole-pattern');

it.each(apart.map((calculator) => [calculator.slug, calculator] as const))(
  '%s: what a result is said to rest on can change it',
  (_, calculator) => {
    expect(neverChanging(calculator)).toEqual([]);
  },
);

it.each([
  // Each by its formula: a groove’s ring is that of no other, a gap is that of any lobe, readings of a bore
  // are none of its size, and a port has its own edge.
  ['needle-and-clip', 'clip-annulus', 'clip'],
  ['breaker-cam', 'crank-degrees-per-gap', 'lobes'],
  ['piston-clearance', 'taper', 'bore'],
  ['port-timing', 'raise-for', 'port-2'],
  ['port-timing', 'cylinder-transfer', 'port-1'],
] as const)('%s: %s waits for no %s', (slug, result, key) => {
  const calculator = apart.find((one) => one.slug === slug)!;
  const { [key]: _, ...texts } = whole(evaluate(calculator, {}, reading));
  const state = evaluate(calculator, texts, { ...reading, origins: allFrom(texts, 'yours') });
  expect(isExample(state.fields.find((field) => field.key === key)!)).toBe(true);
  expect(restsOnExample(calculator, state, result)).toBe(false);
});
