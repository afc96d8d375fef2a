import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import type { Field } from '../../calculators/frame/field/fields.ts';
import { Absent, type AnyCalculator, type ResultValue } from '../../calculators/frame/types.ts';

export type Next = () => number;

/** Evenly spread numbers from 0 to 1, the same every time (the minimal standard generator). */
export function spreader(seed: number): Next {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

export const reading = { lengths: 'mm' } as const;

export const pick = <T>(next: Next, from: readonly T[]): T =>
  from[Math.floor(next() * from.length)]!;

/** Cylinders in any order, written in any common way. */
export function someOrder(cylinders: number, next: Next): string {
  const left = Array.from({ length: cylinders }, (_, i) => i + 1);
  const order = Array.from(
    { length: cylinders },
    () => left.splice(Math.floor(next() * left.length), 1)[0]!,
  );
  return order.join(pick(next, ['', '-', ', ', ' ']));
}

/** A legal text for a field: mostly near what it holds, now and then anywhere in its range. */
export function someText(field: Field, next: Next): string {
  if (field.kind === 'choice') return pick(next, Object.keys(field.options));
  const { min, max, step, whole } = field.spec;
  const one = (about: number): string => {
    const wide = next() < 0.2;
    const reach = Math.max(Math.abs(about) * 0.15, step * 2);
    const value = wide ? min + next() * (max - min) : about + (next() * 2 - 1) * reach;
    const legal = Math.min(max, Math.max(min, value));
    return String(whole ? Math.round(legal) : Number(legal.toPrecision(5)));
  };
  if (field.kind === 'list' && field.spec.order !== undefined) {
    return next() < 0.5 ? '' : someOrder(field.spec.order.cylinders, next);
  }
  if (field.kind === 'list') return field.value.map(one).join(' ');
  return one(field.value ?? (min + max) / 2);
}

/** The text of every field of a state, so that none is left to a default that hangs on others. */
export const whole = ({ fields }: Evaluation): Texts =>
  Object.fromEntries(fields.filter(({ text }) => text !== '').map(({ key, text }) => [key, text]));

/** The same state with every figure given. */
export const allGiven = (calculator: AnyCalculator, state: Evaluation): Evaluation =>
  evaluate(calculator, whole(state), reading);

/** A state whose figures fit together, each given; nothing where none was found. */
export function someState(calculator: AnyCalculator, next: Next): Evaluation | undefined {
  for (let tries = 0; tries < 20; tries += 1) {
    let state = evaluate(calculator, {}, reading);
    for (let turn = 0; turn < 2; turn += 1) {
      const texts: Record<string, string> = { ...whole(state) };
      for (const field of state.fields) {
        const often = field.kind === 'choice' ? 0.6 : 0.35;
        if (next() < often) texts[field.key] = someText(field, next);
      }
      const changed = evaluate(calculator, texts, reading);
      if (changed.computed) state = changed;
    }
    const given = allGiven(calculator, state);
    if (given.computed && given.problems.length === 0) return given;
  }
  return undefined;
}

/** The rows of a result that differ between two states; every row where it is there in one only. */
export function changedRows(
  before: ResultValue,
  after: ResultValue,
): readonly number[] | undefined {
  const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
  if (before instanceof Absent && after instanceof Absent) return undefined;
  if (alike(before, after)) return undefined;
  if (!Array.isArray(before) || !Array.isArray(after) || before.length !== after.length) return [];
  const [from, to] = [before as unknown[], after as unknown[]];
  return from.flatMap((row, i) => (alike(row, to[i]) ? [] : [i + 1]));
}
