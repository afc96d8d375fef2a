import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  crankWords,
  floatWords,
  readActs,
  slidesWords,
  writeActs,
  type Words,
} from '../../calculators/practice/acts.ts';
import { setUp, type Act } from '../../calculators/practice/bench.ts';
import { inventEngine } from '../../calculators/practice/engine.ts';
import { work } from '../../calculators/practice/work.ts';

/** Any act that a vocabulary can tell of. */
const actOf = (words: Words): fc.Arbitrary<{ act: string }> =>
  fc.oneof(
    ...Object.entries(words).map(([act, [field, kind]]) => {
      if (field === undefined) return fc.constant({ act });
      const value: fc.Arbitrary<unknown> =
        kind === 'figure'
          ? fc.double({ min: -720, max: 720, noNaN: true }).map((by) => by + 0)
          : kind === 'place'
            ? fc.integer({ min: 0, max: 20 })
            : kind === 'switch'
              ? fc.boolean()
              : fc.constantFrom(...kind);
      return value.map((each) => ({ act, [field]: each }));
    }),
  );

describe('acts in words', () => {
  it.each([
    ['crank', crankWords],
    ['slides', slidesWords],
    ['float', floatWords],
  ])('come back as they were done: %s', (_, words) => {
    fc.assert(
      fc.property(fc.array(actOf(words), { maxLength: 30 }), (acts) => {
        expect(readActs(words, writeActs(words, acts))).toEqual(acts);
      }),
    );
  });

  it.each([
    'turn',
    'turn:',
    'turn:x',
    'turn:4000',
    'turn:NaN',
    'put:finger',
    'coil:maybe',
    'cylinder:0',
    'cylinder:1.5',
    'zero:1',
    'toString',
    'turn:1,,turn:2',
    '<b>',
  ])('what cannot be read is read in no part: %s', (text) => {
    expect(readActs(crankWords, text)).toBeUndefined();
  });

  it('done anew lead to the same bench', () => {
    const acts: Act[] = [
      { act: 'turn', by: 95.3 },
      { act: 'put', inHole: 'indicator' },
      { act: 'kick' },
      { act: 'zero' },
      { act: 'turn', by: -33.333333333 },
      { act: 'note' },
      { act: 'cylinder', cylinder: 2 },
      { act: 'plate', by: 0.15 },
    ];
    const engine = inventEngine(4711, 'plate');
    const run = (all: readonly Act[]) =>
      all.reduce((bench, act) => work(engine, bench, act), setUp(engine));
    expect(run(readActs<Act>(crankWords, writeActs(crankWords, acts))!)).toEqual(run(acts));
  });
});
