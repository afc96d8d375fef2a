import { MathsError } from './errors.ts';

export interface Propagated {
  /** `f` of the values themselves. */
  readonly value: number;
  /** The combined ± of the value, in its own unit. */
  readonly plusMinus: number;
  /** What each input's error alone does to the value, in the same order; never negative. */
  readonly contributions: readonly number[];
}

/**
 * What reading errors do to a result. Each input in turn is moved by its error to either side; half
 * the change between the two is that input's contribution, and the contributions of independent
 * errors are combined by root-sum-square.
 *
 * Where the result bends, as piston travel does at the top, both sides may move it the same way and
 * their difference be nil. So the mean of both changes is taken into each contribution as well, again
 * by root-sum-square; for a straight line it is 0.
 *
 * Where `f` has no value on one side (a travel above the top), the other side alone is used. Where it
 * has none on either, smaller steps are tried and their effect scaled up.
 *
 * Source: JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in
 * measurement, clause 5.1.2 (combination), the note to 5.1.3 (finite differences) and the note to
 * 5.1.2 (terms of higher order). The result has the same level of confidence as the errors given: of
 * half-widths taken as standard uncertainties it is a standard uncertainty.
 *
 * @param f The result as a function of its inputs; may throw a MathsError beside the values.
 * @param values The inputs.
 * @param errors Their errors, one for each value, 0 or more.
 * @throws MathsError whatever `f` throws for the values themselves; `bad-uncertainty` for an error
 *   that is negative or not a number; `no-neighbour` where `f` has a value at that point only.
 */
export function propagate(
  f: (x: readonly number[]) => number,
  values: readonly number[],
  errors: readonly number[],
): Propagated {
  const value = f(values);
  const contributions = values.map((_, index) =>
    contribution(f, values, index, errors[index] ?? 0, value),
  );
  return { value, plusMinus: Math.hypot(...contributions), contributions };
}

function contribution(
  f: (x: readonly number[]) => number,
  values: readonly number[],
  index: number,
  error: number,
  centre: number,
): number {
  if (error === 0) return 0;
  if (!(error > 0) || !Number.isFinite(error)) {
    throw new MathsError(
      'bad-uncertainty',
      ['uncertainty'],
      'A reading error must be a number of 0 or more.',
    );
  }
  const changeFor = (step: number): number | undefined => {
    try {
      const moved = f(values.with(index, values[index]! + step));
      return Number.isFinite(moved) ? moved - centre : undefined;
    } catch (problem) {
      if (problem instanceof MathsError) return undefined;
      throw problem;
    }
  };
  for (let shrink = 1; shrink <= 1e6; shrink *= 10) {
    const up = changeFor(error / shrink);
    const down = changeFor(-error / shrink);
    if (up !== undefined && down !== undefined) {
      return shrink * Math.hypot((up - down) / 2, (up + down) / 2);
    }
    const only = up ?? down;
    if (only !== undefined) return shrink * Math.abs(only);
  }
  throw new MathsError(
    'no-neighbour',
    ['uncertainty'],
    'The reading error cannot be worked out: the figures lie just where the engine stops being possible.',
  );
}
