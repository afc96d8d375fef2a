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
import { dialShows, discShows, lampWord } from '../../calculators/practice/instruments.ts';
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

  it.each([
    [
      1,
      'gap',
      'coil:off,put:indicator',
      { crank: -67.712547, disc: -74.75, dial: undefined, lamp: 'lit', notes: [] },
    ],
    [
      4711,
      'stop',
      'turn:61.5,turn:-7.25,put:indicator,straighten,zero,disc:2.5,note,turn:30,disc-zero,turn:12,note,strike-out:1',
      { crank: 26.003058, disc: 12, dial: 1.87, lamp: 'lit', notes: [12] },
    ],
    [
      4711,
      'plate',
      'cylinder:2,put:indicator,coil:off,turn:200,kick,screw:-35,plate:0.35,slot:-0.2,turn:17,note',
      { crank: 831.071907, disc: 116.5, dial: 0.95, lamp: 'out', notes: [116.5] },
    ],
    [
      77,
      'disc',
      'put:stop,turn:300,note,turn:-300,note,disc:-4',
      { crank: -314.084714, disc: 49.75, dial: undefined, lamp: 'lit', notes: [-37.75, 53.75] },
    ],
  ] as const)(
    'of an address mean for ever what they meant: engine %i, %s, %s',
    (number, task, text, found) => {
      const engine = inventEngine(number, task);
      const bench = readActs<Act>(crankWords, text)!.reduce(
        (before, act) => work(engine, before, act),
        setUp(engine),
      );
      expect({
        crank: Number(bench.crank.toFixed(6)),
        disc: discShows(engine, bench),
        dial: dialShows(engine, bench),
        lamp: lampWord(engine, bench),
        notes: bench.notes.map(({ disc }) => disc),
      }).toEqual(found);
    },
  );

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
      { act: 'pointer', by: -2.25 },
      { act: 'pointer-zero' },
    ];
    const engine = inventEngine(4711, 'plate');
    const run = (all: readonly Act[]) =>
      all.reduce((bench, act) => work(engine, bench, act), setUp(engine));
    expect(run(readActs<Act>(crankWords, writeActs(crankWords, acts))!)).toEqual(run(acts));
  });
});
