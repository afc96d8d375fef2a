import { MathsError } from './errors.ts';

/**
 * Results of a model: a figure each, or nothing where that result does not exist (NaN does as well);
 * nothing at all where the inputs make no engine.
 */
export type Outputs = readonly (number | undefined)[] | undefined;

/** What the errors of the inputs do to one result. */
export interface Uncertain {
  /** The combined ± of the result, in its own unit. */
  readonly plusMinus: number;
  /** What each input's error alone does to it, in the order of the inputs; never negative. */
  readonly contributions: readonly number[];
  /** Each input's part of the variance, 0 to 1, together 1; all 0 for a result without a ±. */
  readonly shares: readonly number[];
}

export interface Propagated extends Uncertain {
  /** `f` of the values themselves. */
  readonly value: number;
}

/**
 * A result may run away towards the edge of the possible. The change up to the edge counts with this
 * many times the change half way to it at the most; a square root, the steepest edge of a figure that
 * ends there, makes it 3.4.
 */
const STEEPEST_EDGE = 4;
/** Halvings that place the edge of the possible: a millionth of a millionth of the step. */
const HALVINGS = 40;

/**
 * What reading errors do to all results of a model at once, each input moved alone and all results
 * worked out with each move.
 *
 * **What a ± means here.** It is a half-width: the true figure is taken to lie within it either way,
 * at whatever level the reader had in mind (two times in three, nineteen times in twenty). It is read
 * as a standard uncertainty at that level, and the result's ± is meant at the same level.
 *
 * Each input is moved by its error to either side. Its contribution is the root of the mean of the
 * squares of both changes, which is the same as half their difference (the slope's part) and the mean
 * of both (the bend's part) combined. On a straight line that is the slope times the error. At a
 * turning point, as piston travel has at the top, it is the change itself and not nil. Contributions
 * of independent inputs are combined by root-sum-square.
 *
 * Where one side is impossible (a travel above the top), it counts with as much as the other side, or
 * with the change up to its own edge, whichever is more. Where both are, the changes up to the edges
 * count, scaled up to the error. So a ± never shrinks when an error grows because a side is missing.
 *
 * Source: JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in
 * measurement, clause 5.1.2 (combination), the note to 5.1.3 (finite differences) and the note to
 * 5.1.2 (terms of higher order).
 *
 * @param f Results as a function of the inputs; may throw a MathsError beside the values.
 * @param values The inputs.
 * @param errors Their errors, one for each value, 0 or more; a missing one is 0.
 * @returns For each result what the errors do to it; nothing for one that does not exist at the
 *   values, or exists there only and nowhere beside.
 * @throws MathsError whatever `f` throws for the values themselves; `bad-uncertainty` for an error
 *   that is negative or not a number.
 */
export function propagateAll(
  f: (x: readonly number[]) => Outputs,
  values: readonly number[],
  errors: readonly number[],
): readonly (Uncertain | undefined)[] {
  const centre = f(values) ?? [];
  const byInput = values.map((_, index) => changesBy(f, values, index, errors[index] ?? 0, centre));
  return centre.map((at, result) =>
    exists(at) ? combined(byInput.map((changes) => changes[result]!)) : undefined,
  );
}

/**
 * The same for a model with a single result.
 *
 * @throws MathsError as above; `no-neighbour` where `f` has a value at that point only.
 */
export function propagate(
  f: (x: readonly number[]) => number,
  values: readonly number[],
  errors: readonly number[],
): Propagated {
  const value = f(values);
  const [uncertain] = propagateAll((x) => [f(x)], values, errors);
  if (uncertain) return { value, ...uncertain };
  throw new MathsError(
    'no-neighbour',
    ['uncertainty'],
    'The reading error cannot be worked out: the figures lie just where the engine stops being possible.',
  );
}

const exists = (figure: number | undefined): figure is number =>
  figure !== undefined && Number.isFinite(figure);

function combined(contributions: readonly number[]): Uncertain | undefined {
  if (!contributions.every((one) => Number.isFinite(one))) return undefined;
  const plusMinus = Math.hypot(...contributions);
  const shares = contributions.map((one) => (plusMinus > 0 ? (one / plusMinus) ** 2 : 0));
  return { plusMinus, contributions, shares };
}

/** What one input's error does to each result; NaN where that cannot be told. */
function changesBy(
  f: (x: readonly number[]) => Outputs,
  values: readonly number[],
  index: number,
  error: number,
  centre: readonly (number | undefined)[],
): readonly number[] {
  if (error === 0) return centre.map(() => 0);
  if (!(error > 0) || !Number.isFinite(error)) {
    throw new MathsError(
      'bad-uncertainty',
      ['uncertainty'],
      'A reading error must be a number of 0 or more.',
    );
  }
  const known = new Map<number, Outputs>();
  const movedBy = (step: number): Outputs => {
    if (!known.has(step)) known.set(step, attempt(f, values.with(index, values[index]! + step)));
    return known.get(step);
  };
  return centre.map((at, result) => {
    if (!exists(at)) return Number.NaN;
    const changeFor = (step: number): number | undefined => {
      const moved = movedBy(step)?.[result];
      return exists(moved) ? moved - at : undefined;
    };
    return contribution(changeFor, error);
  });
}

function attempt(f: (x: readonly number[]) => Outputs, x: readonly number[]): Outputs {
  try {
    return f(x);
  } catch (problem) {
    if (problem instanceof MathsError) return undefined;
    throw problem;
  }
}

const rootMeanSquare = (up: number, down: number): number => Math.hypot(up, down) / Math.SQRT2;

function contribution(changeFor: (step: number) => number | undefined, error: number): number {
  const up = changeFor(error);
  const down = changeFor(-error);
  if (up !== undefined && down !== undefined) return rootMeanSquare(up, down);
  const only = up ?? down;
  if (only !== undefined) {
    const missing = edge(changeFor, up === undefined ? error : -error);
    return rootMeanSquare(only, Math.max(Math.abs(only), missing.change));
  }
  const sides = [edge(changeFor, error), edge(changeFor, -error)] as const;
  const reach = Math.max(...sides.map(({ reach }) => reach));
  if (reach === 0) return Number.NaN;
  const [further, nearer] = sides[0].reach === reach ? sides : [sides[1], sides[0]];
  const missing = nearer.reach < reach ? Math.max(nearer.change, further.change) : nearer.change;
  return (error / reach) * rootMeanSquare(further.change, missing);
}

/** How far an input can be moved towards an impossible `step`, and the amount of change there. */
function edge(
  changeFor: (step: number) => number | undefined,
  step: number,
): { readonly reach: number; readonly change: number } {
  // The commonest edge is the value itself, as nil of a mass: told by one step, not by forty.
  if (changeFor(step * 2 ** -HALVINGS) === undefined) return { reach: 0, change: 0 };
  let possible = 0;
  let impossible = 1;
  let change = 0;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const part = (possible + impossible) / 2;
    const found = changeFor(step * part);
    if (found === undefined) impossible = part;
    else {
      possible = part;
      change = found;
    }
  }
  const half = changeFor((step * possible) / 2);
  const most = half === undefined ? Infinity : STEEPEST_EDGE * Math.abs(half);
  return { reach: Math.abs(step) * possible, change: Math.min(Math.abs(change), most) };
}
