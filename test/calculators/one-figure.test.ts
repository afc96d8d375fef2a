import { describe, expect, it, vi } from 'vitest';
import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import type { Field } from '../../calculators/frame/field/fields.ts';
import { Absent, type Origin } from '../../calculators/frame/types.ts';
import { remarksOf, verdictOf } from '../../calculators/frame/whose.ts';
import { isExample } from '../../calculators/frame/whose-field.ts';
import { calculators } from '../../site/all-calculators.ts';
import { reading, someText, spreader, whole } from './states.ts';

vi.setConfig({ testTimeout: 240_000 });

type Calculator = (typeof calculators)[number];

/** One figure at its ends, in its middle and about what the example has; a choice with each option. */
function singles(field: Field): readonly string[] {
  if (field.kind === 'choice') return Object.keys(field.options);
  const { min, max, whole: inWholes } = field.spec;
  const about = field.kind === 'list' ? min : (field.value ?? (min + max) / 2);
  const within = (value: number): string => {
    const legal = Math.min(max, Math.max(min, value));
    return String(inWholes ? Math.round(legal) : Number(legal.toPrecision(6)));
  };
  return [...new Set([min, max, (min + max) / 2, about * 1.4, about * 0.6].map(within))];
}

/** The example as it stands, and with each option of each of its choices. */
function examples(calculator: Calculator): readonly Texts[] {
  const { fields } = evaluate(calculator, {}, reading);
  return [
    {},
    ...fields.flatMap((field) =>
      field.kind === 'choice'
        ? Object.keys(field.options)
            .filter((option) => option !== field.value)
            .map((option) => ({ [field.key]: option }))
        : [],
    ),
  ];
}

const WHOSE = /the example’s/;

const withoutFigures = (line: string): string => line.replace(/\d[\d.]*/g, '#');

/** What keeps results from being, where it does not say whose figures it rests on. */
function refusals(state: Evaluation): readonly string[] {
  const said = [
    ...state.problems.map(({ sentence }) => sentence),
    ...Object.values(state.results).flatMap((value) => (value instanceof Absent ? value.why : [])),
  ];
  return [...new Set(said)].filter((line) => !WHOSE.test(line));
}

const isAbsent = ({ results }: Evaluation, name: string): boolean =>
  results[name] instanceof Absent;

/** The results that a sentence keeps away. */
const keptAway = ({ results }: Evaluation, line: string): readonly string[] =>
  Object.keys(results).filter((name) => {
    const value = results[name];
    return value instanceof Absent && value.why === line;
  });

/** Verdicts and remarks, where they do not say that they are not judged yet. */
function advice(calculator: Calculator, state: Evaluation): readonly string[] {
  const verdicts = Object.entries(calculator.tables ?? {}).flatMap(([id, { verdict }]) =>
    verdict
      ? [1, 2, 3].map((row) => {
          const there = Object.entries(calculator.results).some(([name, spec]) => {
            const value = state.results[name];
            return spec.table === id && Array.isArray(value) && value.length >= row;
          });
          const words = there ? verdictOf(calculator, state, id, 'mm', row) : '';
          return words === '' ? '' : `${id} ${String(row)}: ${words}`;
        })
      : [],
  );
  return [...remarksOf(calculator, state), ...verdicts].filter(
    (line) => line !== '' && !WHOSE.test(line),
  );
}

/** The same with every figure that is the example's somewhere else. */
function moved(calculator: Calculator, state: Evaluation, next: () => number): Evaluation {
  const texts: Record<string, string> = { ...whole(state) };
  const origins = Object.fromEntries(
    state.fields.map(({ key, origin }): [string, Origin] => [key, origin]),
  );
  for (const field of state.fields) {
    if (isExample(field) && field.kind !== 'choice') texts[field.key] = someText(field, next);
  }
  return evaluate(calculator, texts, { ...reading, origins });
}

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s, given one figure and no other',
  (_, calculator) => {
    it('says of every refusal that rests on the example too whose figures it rests on', () => {
      const next = spreader(29);
      const seen = new Set<string>();
      let tried = 0;
      for (const example of examples(calculator)) {
        for (const field of evaluate(calculator, example, reading).fields) {
          for (const text of singles(field)) {
            const texts = { ...example, [field.key]: text };
            const state = evaluate(calculator, texts, reading);
            tried += 1;
            for (const line of refusals(state)) {
              const kind = `${field.key} ${withoutFigures(line)}`;
              if (seen.has(kind)) continue;
              seen.add(kind);
              for (let moves = 0; moves < 3; moves += 1) {
                const after = moved(calculator, state, next);
                const others = refusals(after);
                const alike = others.some(
                  (other) => withoutFigures(other) === withoutFigures(line),
                );
                // Another refusal that comes before it tells nothing of this one.
                if (!alike && keptAway(state, line).every((name) => isAbsent(after, name)))
                  continue;
                expect(others, `${calculator.slug}?${JSON.stringify(texts)}`).toContain(line);
              }
            }
          }
        }
      }
      expect(tried).toBeGreaterThan(10);
    });

    it('gives no advice that a figure of the example could change', () => {
      const next = spreader(31);
      for (const field of evaluate(calculator, {}, reading).fields) {
        for (const text of singles(field).slice(0, 3)) {
          const state = evaluate(calculator, { [field.key]: text }, reading);
          const lines = advice(calculator, state);
          if (lines.length === 0) continue;
          const after = moved(calculator, state, next);
          if (!after.computed) continue;
          const others = advice(calculator, after);
          for (const line of lines) {
            const there = /^[a-z]+ \d: /.test(line) || others.includes(line);
            expect(there, `${calculator.slug}?${field.key}=${text}: ${line}`).toBe(true);
          }
        }
      }
    });
  },
);
