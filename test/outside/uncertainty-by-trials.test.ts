/**
 * The ± of every result of every calculator against trials: each reading drawn from a normal
 * distribution with its ± as standard deviation, the whole calculation done with it, and the standard
 * deviation of the results taken. This knows nothing of slopes or bends.
 *
 * Method: JCGM 101:2008, Evaluation of measurement data: Supplement 1 to the Guide to the expression of
 * uncertainty in measurement: Propagation of distributions using a Monte Carlo method, clause 7.
 * Normal deviates and the source of randomness: d3-random 3.0.
 *
 * How near they should come:
 * - Where a result is a straight line over the errors, the ± is its standard deviation. The draws are
 *   put right so that they have their mean and deviation exactly and nothing in common: so few trials
 *   tell it to the last digit. It is taken as one where errors of a tenth have a tenth of the effect.
 * - Where it bends, the ± of the engine is the change at one standard deviation: for a pure bend 1/√2 of
 *   the standard deviation. At a limit that cuts off half of the trials (no less than nothing in the
 *   tank) it is that of both halves together, √(π/(π − 2)) = 1.66 of what is left, and a little more
 *   where it bends as well.
 * - Where it has a kink within the errors, no change at one place tells what happens beyond. These are
 *   named below.
 */
import { randomLcg, randomNormal, randomUniform } from 'd3-random';
import { describe, expect, it } from 'vitest';
import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import type {
  AnyCalculator,
  AnyValues,
  Input,
  ResultValue,
} from '../../calculators/frame/types.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { calculators } from '../../site/all-calculators.ts';

const RANDOM_STATES = 20;
const ATTEMPTS = 500;
const TRIALS = 120;
/** What bends scatters with the draws: so much either way. */
const SCATTER = 0.12;
/** By how much a line may bend and still pass for one. */
const STRAIGHT = 0.02;
const LEAST_OF_A_BEND = 0.65;
const MOST_AT_A_LIMIT = 1.9;

const kinks: Readonly<Record<string, string>> = {
  'breaker-cam opening': 'nil while the points are shut',
  'breaker-cam trial-lift': 'one over a slope, which may be nil within the errors',
  'coil-charge ballast-for': 'nil as long as none is needed',
  'compression cylinder-match': 'against the largest of all, whichever that is',
  'degree-disc disc-print-error': 'an amount without its sign',
  'firing-order primary': 'length of a polygon that closes, an amount without its sign',
  'firing-order primary-left': 'length of a polygon that closes, an amount without its sign',
  'firing-order secondary': 'length of a polygon that closes, an amount without its sign',
  'jet-set next-spread': 'between the widest and the narrowest, whichever they are',
  'jet-set spread': 'between the widest and the narrowest, whichever they are',
  'hole-pattern least-metal': 'of the thinnest place, whichever that is',
  'needle-and-clip equal-at': 'not above full throttle',
  'piston-clearance ovality': 'an amount without its sign, of whichever height is the worst',
  'piston-clearance taper': 'between the widest and the narrowest, whichever they are',
  'piston-clearance widest-clearance': 'at the widest reading, whichever that is',
  'slide-balance free-after': 'against the slide that needs the least work, whichever that is',
  'slide-balance give-back': 'nil as long as nothing is to be given back',
  'slide-balance spread': 'between the widest and the narrowest, whichever they are',
  'slide-balance tightest': 'of the tightest cable, whichever that is',
  'slide-balance turn': 'against the slide that needs the least work, whichever that is',
  'slide-balance work': 'amounts without their sign',
  'wiring ballast-for': 'nil as long as none is needed',
};

type Source = () => number;
type Figures = Readonly<Record<string, number>>;

const reading = { lengths: 'mm' } as const;

const seedOf = (slug: string): number =>
  [...slug].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 65_536, 7) / 65_536;

/** The ± of each reading that has one, by key. */
const errorsOf = ({ errorFields }: Evaluation): Record<string, number> =>
  Object.fromEntries(
    errorFields.map((field) => [field.key.replace(/-error$/, ''), Number(field.value)]),
  );

/** Choices made anew, figures up to a fifth off the defaults, and none at the very end of its range. */
function randomTexts(calculator: AnyCalculator, source: Source): Texts {
  const uniform = randomUniform.source(source);
  const chance = uniform(0, 1);
  const texts: Record<string, string> = {};
  for (const [key, input] of Object.entries<Input>(calculator.inputs)) {
    if (input.kind !== 'choice' || chance() < 0.5) continue;
    const options = Object.keys(input.options);
    texts[key] = options[Math.floor(chance() * options.length)]!;
  }
  const state = evaluate(calculator, texts, reading);
  const errors = errorsOf(state);
  for (const field of state.fields) {
    if (field.kind !== 'figure' || field.value === undefined || field.spec.whole) continue;
    if (chance() < 0.3) continue;
    const { min, max, step } = field.spec;
    const room = 4 * (errors[field.key.replace(/-\d+$/, '')] ?? 0);
    const width = field.value === 0 ? 5 * step : 0.2 * Math.abs(field.value);
    const value = field.value + uniform(-width, width)();
    const inRange = Math.min(max - room, Math.max(min + room, value));
    texts[field.key] = String(Number(inRange.toPrecision(4)));
  }
  return texts;
}

function randomState(calculator: AnyCalculator, source: Source): Evaluation {
  for (let attempt = 0; attempt < ATTEMPTS; attempt += 1) {
    const state = evaluate(calculator, randomTexts(calculator, source), reading);
    if (state.computed && state.problems.length === 0) return state;
  }
  throw new Error(`${calculator.slug}: no engine found at random`);
}

function computed(
  calculator: AnyCalculator,
  values: AnyValues,
  decided: unknown,
): ReadonlyMap<string, number> {
  try {
    return flatten(calculator.compute(values, decided) as Record<string, ResultValue>);
  } catch (problem) {
    if (problem instanceof MathsError) return new Map();
    throw problem;
  }
}

/**
 * Normal deviates in columns, put right one after another (Gram and Schmidt): each has exactly the
 * mean 0 and the deviation 1, and nothing in common with those before it.
 */
function deviates(rows: number, columns: number, normal: Source): number[][] {
  const done: number[][] = [];
  for (let column = 0; column < columns; column += 1) {
    let drawn = Array.from({ length: rows }, normal);
    const flat = Array.from({ length: rows }, () => 1);
    for (const other of [flat, ...done]) {
      const common = drawn.reduce((sum, value, i) => sum + value * other[i]!, 0) / rows;
      drawn = drawn.map((value, i) => value - common * other[i]!);
    }
    const size = Math.sqrt(drawn.reduce((sum, value) => sum + value * value, 0) / rows);
    done.push(drawn.map((value) => value / size));
  }
  return done;
}

interface Drawn {
  readonly count: number;
  readonly deviation: number;
}

/** How each figure scatters when every reading does, by `scale` times its ±. */
function draw(
  calculator: AnyCalculator,
  state: Evaluation,
  scale: number,
  trials: number,
  seed: number,
): ReadonlyMap<string, Drawn> {
  const errors = errorsOf(state);
  const places = Object.keys(errors).flatMap((key) => state.values[key] ?? []);
  const drawn = deviates(trials, places.length, randomNormal.source(randomLcg(seed))());
  const decided = calculator.decide?.(state.values);
  const found = new Map<string, number[]>();
  for (let trial = 0; trial < trials; trial += 1) {
    const values: Record<string, AnyValues[string]> = { ...state.values };
    let place = 0;
    for (const [key, error] of Object.entries(errors)) {
      const move = (value: number): number => value + scale * error * drawn[place++]![trial]!;
      const value = values[key];
      if (typeof value === 'number') values[key] = move(value);
      else if (Array.isArray(value)) values[key] = (value as number[]).map(move);
    }
    for (const [name, figure] of computed(calculator, values, decided)) {
      if (!Number.isFinite(figure)) continue;
      const figures = found.get(name);
      if (figures) figures.push(figure);
      else found.set(name, [figure]);
    }
  }
  return new Map(
    [...found].map(([name, figures]) => {
      const mean = figures.reduce((sum, figure) => sum + figure, 0) / figures.length;
      const squares = figures.reduce((sum, figure) => sum + (figure - mean) ** 2, 0);
      return [name, { count: figures.length, deviation: Math.sqrt(squares / figures.length) }];
    }),
  );
}

interface Compared {
  readonly name: string;
  readonly straight: boolean;
  /** The engine's ± over the deviation of the trials. */
  readonly ratio: number;
}

/** What the result's own ± adds, where it has one. */
const ownOf = (calculator: AnyCalculator, state: Evaluation, name: string): number => {
  const from = calculator.results[name]?.spreadFrom;
  return from === undefined ? 0 : (state.results[from] as number);
};

function compare(
  calculator: AnyCalculator,
  state: Evaluation,
  trials: number,
  index: number,
): Compared[] {
  // The same draws for both, so that a straight line tells itself to the last digit.
  const seed = (seedOf(calculator.slug) + index / (2 * RANDOM_STATES)) % 1;
  const whole = draw(calculator, state, 1, trials, seed);
  const tenth = draw(calculator, state, 0.1, trials, seed);
  const figures: Figures = Object.fromEntries(flatten(state.results));
  // Trials know nothing of readings that contradict each other: what that adds has a check of its own.
  const times = calculator.widened?.by(state.results as never, state.spreads) ?? 1;
  const widenedBy = (name: string): number =>
    calculator.widened?.results.includes(name.replace(/(-\d+)+$/, '')) ? times : 1;
  return Object.entries(state.spreads).flatMap(([name, spread]) => {
    const own = ownOf(calculator, state, name);
    const [one, small] = [whole.get(name)!, tenth.get(name)!];
    const dust = 1e-9 * (1 + Math.abs(figures[name]!));
    if (one.deviation < dust && spread <= own + dust) return [];
    // What may stand in any direction is told as half a round, however far the trials go about it.
    if (2 * spread === calculator.results[name.replace(/(-\d+)+$/, '')]?.cyclic) return [];
    const bent = Math.abs(one.deviation / (10 * small.deviation) - 1) > STRAIGHT;
    const straight = !bent && one.count === trials && small.count === trials;
    return [{ name, straight, ratio: spread / widenedBy(name) / Math.hypot(one.deviation, own) }];
  });
}

const nameOf = (slug: string, name: string): string => `${slug} ${name.replace(/(-\d+)+$/, '')}`;

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  'the ± of %s',
  (slug, calculator) => {
    it('is the one that trials give, at the defaults and at twenty random states', () => {
      const source = randomLcg(seedOf(slug));
      const states = [
        evaluate(calculator, {}, reading),
        ...Array.from({ length: RANDOM_STATES }, () => randomState(calculator, source)),
      ];
      const all = states.flatMap((state, i) => compare(calculator, state, TRIALS, i));
      const agrees = ({ straight, ratio }: Compared): boolean =>
        straight
          ? Math.abs(ratio - 1) <= 2 * STRAIGHT
          : ratio >= LEAST_OF_A_BEND - SCATTER && ratio <= MOST_AT_A_LIMIT + SCATTER;
      const off = all.filter((one) => !agrees(one));
      expect(off.filter(({ name }) => !Object.hasOwn(kinks, nameOf(slug, name)))).toEqual([]);
      const straight = all.filter((one) => one.straight);
      expect(straight.length).toBeGreaterThan(all.length / 4);
      expect(straight.filter(agrees).length).toBeGreaterThan(0.8 * straight.length);
    }, 120_000);
  },
);
