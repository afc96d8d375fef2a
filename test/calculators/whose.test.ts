import { describe, expect, it, vi } from 'vitest';
import { csvSummary } from '../../calculators/frame/copies.ts';
import { fromQuery, originsIn, toQuery } from '../../calculators/frame/address.ts';
import { allFrom, evaluate, type Evaluation } from '../../calculators/frame/evaluate.ts';
import type { Field } from '../../calculators/frame/field/fields.ts';
import type { Origin } from '../../calculators/frame/types.ts';
import {
  remarksOf,
  restsOnExample,
  verdictOf,
  whoseAnswer,
} from '../../calculators/frame/whose.ts';
import { isExample } from '../../calculators/frame/whose-field.ts';
import { calculators } from '../../site/all-calculators.ts';
import { changedRows, pick, reading, someState, someText, spreader, whole } from './states.ts';

vi.setConfig({ testTimeout: 120_000 });

const NOT_YET = /not judged yet/i;
const EXAMPLE = /^In this example: /;

/** All that a calculator says of a state: remarks, and the words beside each row of its tables. */
function allSaid(calculator: (typeof calculators)[number], state: Evaluation): string[] {
  const rows = [1, 2, 3, 4, 5, 6, 7, 8];
  const verdicts = Object.entries(calculator.tables ?? {}).flatMap(([id, { verdict }]) =>
    verdict
      ? rows.flatMap((row) => {
          const there = Object.entries(calculator.results).some(([name, spec]) => {
            const value = state.results[name];
            return spec.table === id && Array.isArray(value) && value.length >= row;
          });
          const words = there ? verdictOf(calculator, state, id, 'mm', row) : '';
          return words === '' ? [] : [`${id} ${String(row)}: ${words}`];
        })
      : [],
  );
  return [...remarksOf(calculator, state), ...verdicts];
}

const told = (said: readonly string[]): string[] =>
  said.filter((line) => !NOT_YET.test(line) && !line.includes('In this example'));

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (_, calculator) => {
    it('calls what it says of figures that nobody gave an example', () => {
      const state = evaluate(calculator, {}, reading);
      for (const remark of remarksOf(calculator, state)) {
        const plain = !EXAMPLE.test(remark);
        // What is said of no figure at all is true of every engine.
        if (plain) {
          const next = spreader(3);
          for (let i = 0; i < 10; i += 1) {
            const other = someState(calculator, next)!;
            const texts = whole(other);
            const origins = Object.fromEntries(
              Object.keys(texts).map((key): [string, Origin] => [key, 'example']),
            );
            const said = remarksOf(
              calculator,
              evaluate(calculator, texts, { ...reading, origins }),
            );
            const same = said.filter((line) => !EXAMPLE.test(line));
            for (const line of same) expect(line).not.toMatch(/\d\.\d/);
          }
        }
        expect(remark).not.toMatch(NOT_YET);
      }
    });

    it('names its example beside an engine of the reader’s own, and says nothing of it', () => {
      const state = evaluate(calculator, {}, { ...reading, ownEngine: true });
      const said = allSaid(calculator, state);
      for (const line of said) expect(line).not.toContain('In this example');
      expect(whoseAnswer(calculator, state)).toMatch(/still the example’s: /);
      // What is said all the same is said of every engine.
      const next = spreader(7);
      for (let i = 0; i < 6; i += 1) {
        const texts: Record<string, string> = {};
        for (const field of state.fields.filter(isExample)) {
          texts[field.key] = someText(field, next);
        }
        const origins = allFrom(texts, 'example');
        const other = evaluate(calculator, texts, { ...reading, origins, ownEngine: true });
        if (!other.computed) continue;
        const others = remarksOf(calculator, other);
        for (const line of told(remarksOf(calculator, state))) expect(others).toContain(line);
      }
    });

    it('speaks plainly when all is given', () => {
      const next = spreader(5);
      for (let i = 0; i < 10; i += 1) {
        const state = someState(calculator, next)!;
        for (const line of allSaid(calculator, state)) {
          expect(line).not.toMatch(NOT_YET);
          expect(line).not.toContain('In this example');
        }
      }
    });

    it('gives no order that a figure nobody gave could change', () => {
      const next = spreader(11);
      let tried = 0;
      for (let i = 0; i < 12; i += 1) {
        const state = someState(calculator, next)!;
        const share = pick(next, [0.2, 0.5, 0.8, 0.95]);
        const origins: Record<string, Origin> = {};
        for (const { key } of state.fields) origins[key] = next() < share ? 'yours' : 'example';
        origins[pick(next, state.fields).key] = 'yours';
        const texts = whole(state);
        const partly = evaluate(calculator, texts, { ...reading, origins });
        const before = told(allSaid(calculator, partly));
        for (let moves = 0; moves < 12; moves += 1) {
          const moved = { ...texts };
          const examples = partly.fields.filter(isExample);
          const some = moves % 2 === 0 ? examples : examples.slice(moves, moves + 1);
          for (const field of some) moved[field.key] = someText(field, next);
          const after = evaluate(calculator, moved, { ...reading, origins });
          if (!after.computed) continue;
          tried += 1;
          const every = allSaid(calculator, after);
          const said = told(every);
          const rowOf = (line: string): string | undefined => /^[a-z]+ \d: /.exec(line)?.[0];
          // A row that is no longer there is not judged otherwise.
          const there = (line: string): boolean =>
            rowOf(line) === undefined || every.some((other) => other.startsWith(rowOf(line)!));
          const gone = before.filter((line) => there(line) && !said.includes(line));
          expect(gone, `example: ${examples.map(({ key }) => key).join(' ')}`).toEqual([]);
        }
      }
      expect(tried).toBeGreaterThan(20);
    });

    it('tells of each result all the inputs that can change it', () => {
      const next = spreader(17);
      for (let i = 0; i < 8; i += 1) {
        const state = someState(calculator, next)!;
        for (const field of state.fields) {
          const after = evaluate(
            calculator,
            { ...whole(state), [field.key]: someText(field, next) },
            reading,
          );
          if (!after.computed) continue;
          for (const name of Object.keys(calculator.results)) {
            const rows = changedRows(state.results[name]!, after.results[name]!);
            if (rows === undefined) continue;
            const says = calculator.restsOn?.[name];
            if (calculator.restsOn === undefined) continue;
            expect(says, `${name} is said to rest on something`).toBeDefined();
            if (says === undefined) continue;
            // What is taken for granted under one choice may not be under the other.
            const keys = [state, after].flatMap(({ values }) =>
              typeof says === 'function' ? says(values as never) : says,
            );
            const base = calculator.inputs[field.key] ? field.key : field.key.replace(/-\d+$/, '');
            const row = rows.length === 1 && field.key.endsWith(`-${String(rows[0])}`);
            const known =
              keys.includes(base) ||
              (keys as readonly string[]).includes(field.key) ||
              (row && keys.includes(`${base}-N`));
            expect(known, `${name} rests on ${field.key}`).toBe(true);
          }
        }
      }
    });
  },
);

it('the skirt over the exhaust rests on no transfer', () => {
  const calculator = calculators.find(({ slug }) => slug === 'port-timing')!;
  const texts = { deck: '0.5', skirt: '20', 'port-1': '28', 'height-1': '20' };
  const judged = /the exhaust opens into the crankcase/;
  const own = evaluate(calculator, texts, reading);
  expect(remarksOf(calculator, own).filter((line) => judged.test(line))).toHaveLength(1);
  const { 'port-1': _, ...without } = texts;
  const lacking = evaluate(calculator, without, reading);
  expect(remarksOf(calculator, lacking).join('\n')).toContain(
    'Not judged yet: whether the skirt keeps the exhaust shut. Exhaust, top edge is still',
  );
});

/** Rests on the pattern of texts and origins that a reader, a link and the sheet bring. */
describe('whose figures an address holds', () => {
  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
    '%s: the same after a link, and no figure of the example has become somebody’s',
    (_, calculator) => {
      const next = spreader(23);
      for (let i = 0; i < 20; i += 1) {
        const texts = whole(someState(calculator, next)!);
        const given = Object.fromEntries(Object.entries(texts).filter(() => next() < (i % 4) / 3));
        const before = evaluate(calculator, given, reading);
        const query = toQuery(before);
        const after = evaluate(calculator, fromQuery(query), {
          ...reading,
          origins: originsIn(query),
        });
        const examples = (state: Evaluation): string[] =>
          state.fields.filter(isExample).map((field: Field) => field.key);
        expect(examples(after)).toEqual(examples(before));
        expect(remarksOf(calculator, after)).toEqual(remarksOf(calculator, before));
        expect(after.problems.map(({ sentence }) => sentence)).toEqual(
          before.problems.map(({ sentence }) => sentence),
        );
      }
    },
  );

  it('no calculator has an input by the name of the key that says so', () => {
    for (const { inputs } of calculators) expect(Object.keys(inputs)).not.toContain('example');
  });
});

it('a figure in degrees rests on nothing of the engine that it was given for', () => {
  const calculator = calculators.find(({ slug }) => slug === 'piston-position')!;
  const own = { given: 'other', stroke: '50', rod: '100', offset: '0' };
  const rests = (texts: Record<string, string>, name: string): boolean => {
    const all = { ...own, ...texts };
    const state = evaluate(calculator, all, { ...reading, origins: allFrom(all, 'yours') });
    return restsOnExample(calculator, state, name);
  };
  const degrees = { from: 'angle', angle: '22' };
  expect(rests(degrees, 'travel')).toBe(false);
  expect(rests(degrees, 'angle')).toBe(false);
  expect(rests(degrees, 'given-travel')).toBe(true);
  const travel = { from: 'travel', travel: '2.7' };
  expect(rests(travel, 'travel')).toBe(true);
  expect(rests(travel, 'given-travel')).toBe(false);
});

it('counts each figure still to be given, also where two are called alike', () => {
  const calculator = calculators.find(({ slug }) => slug === 'piston-position')!;
  const state = evaluate(calculator, { given: 'other', travel: '2.7' }, reading);
  expect(whoseAnswer(calculator, state)).toMatch(/^4 figures are still the example’s/);
});

it('metal between holes rests on nothing that the dividing head is asked', () => {
  const calculator = calculators.find(({ slug }) => slug === 'plate-layout')!;
  const own = whole(evaluate(calculator, {}, reading));
  const { worm: _, circles: __, teeth: ___, ...plate } = own;
  const state = evaluate(calculator, plate, { ...reading, origins: allFrom(plate, 'yours') });
  expect(restsOnExample(calculator, state, 'wall')).toBe(false);
  expect(restsOnExample(calculator, state, 'turns')).toBe(true);
});

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  'the table of figures of %s',
  (_, calculator) => {
    it('holds no digits of the arithmetic: ten at most, three of a ±', () => {
      const [, ...rows] = csvSummary(calculator, evaluate(calculator, {}, reading)).split('\r\n');
      const cells = rows.flatMap((row) => row.match(/(?<=,)-?\d+\.\d+(?=,)/gu) ?? []);
      const digits = (cell: string): number => cell.replace(/^-?0?\.?0*|\./gu, '').length;
      expect(cells.filter((cell) => digits(cell) > 10)).toEqual([]);
      expect(cells.filter((cell) => /^-?0\.0{8}/u.test(cell))).toEqual([]);
    });
  },
);
