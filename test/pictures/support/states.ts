import { evaluate, knownKeys, type Evaluation } from '../../../calculators/frame/evaluate.ts';
import type { AnyCalculator, Input } from '../../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../../calculators/frame/text/units.ts';

/** Numbers from 0 to 1 that are the same in every run (mulberry32). */
export function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const pick = <T>(of: readonly T[], roll: () => number): T => of[Math.floor(roll() * of.length)]!;

function inputOf(calculator: AnyCalculator, key: string): Input | undefined {
  const inputs = calculator.inputs as Record<string, Input>;
  return inputs[key] ?? inputs[key.replace(/-\d+$/, '')];
}

/** A figure in its range: at an end, near the usual one, or anywhere. */
function figure(input: Exclude<Input, { kind: 'choice' }>, roll: () => number): number {
  const { min, max } = input;
  const usual =
    input.kind === 'number' ? input.default : input.kind === 'list' ? input.default[0] : undefined;
  const kind = roll();
  if (kind < 0.15) return min;
  if (kind < 0.3) return max;
  const value =
    usual === undefined || kind > 0.75 ? min + roll() * (max - min) : usual * (0.5 + roll());
  const within = Math.min(max, Math.max(min, value));
  return input.whole ? Math.round(within) : Number(within.toPrecision(5));
}

function textOf(input: Input, roll: () => number): string {
  if (input.kind === 'choice') return pick(Object.keys(input.options), roll);
  if (input.kind !== 'list') return String(figure(input, roll));
  if (input.order) return pick(['123', '1-3-2', '3, 1, 2', '1 2', '1-3-2-4', '1-4-2-3'], roll);
  const count = 1 + Math.floor(roll() * Math.min(input.most, 8));
  return Array.from({ length: count }, () => String(figure(input, roll))).join(' ');
}

export interface State {
  readonly texts: Readonly<Record<string, string>>;
  readonly lengths: LengthDisplay;
  readonly evaluation: Evaluation;
}

/** The default state and so many legal ones about it, in mm and in inches. */
export function statesOf(calculator: AnyCalculator, count: number, seed = 7): State[] {
  const roll = dice(seed);
  const keys = [...knownKeys(calculator)].filter((key) => inputOf(calculator, key) !== undefined);
  const choices = keys.filter((key) => inputOf(calculator, key)!.kind === 'choice');
  const of = (texts: Record<string, string>, lengths: LengthDisplay): State => ({
    texts,
    lengths,
    evaluation: evaluate(calculator, texts, { lengths }),
  });
  const states = [of({}, 'mm'), of({}, 'in')];
  for (let tries = 0; states.length < count + 2 && tries < 40 * count; tries += 1) {
    const texts: Record<string, string> = {};
    for (const key of choices) {
      if (roll() < 0.4) texts[key] = textOf(inputOf(calculator, key)!, roll);
    }
    const altered = 1 + Math.floor(roll() * 4);
    for (let i = 0; i < altered; i += 1) {
      const key = pick(keys, roll);
      texts[key] = textOf(inputOf(calculator, key)!, roll);
    }
    const state = of(texts, roll() < 0.7 ? 'mm' : 'in');
    if (state.evaluation.computed && state.evaluation.problems.length === 0) states.push(state);
  }
  return states;
}
