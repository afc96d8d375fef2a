/**
 * Turning a blank from hole to hole without a readout: with a dividing head, or against the counted
 * teeth of a lathe gear. All angles are reckoned from set 1, so that what is rounded at one set is
 * not carried on to the next.
 */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

export interface HeadSetting {
  /** Whole turns of the crank from the set before. */
  readonly turns: number;
  /** Further holes of the circle from the set before. */
  readonly holes: number;
  /** How far the set then is from where it should be, degrees; positive is too far. */
  readonly error: number;
}

export interface HeadPlan {
  /** Holes in the circle to use. */
  readonly circle: number;
  /** One for each angle; the first stands still. */
  readonly settings: readonly HeadSetting[];
}

/**
 * Turns and holes of a dividing head for each set, all in one hole circle: the circle with the least
 * worst error, and of equals the one with the fewest holes to count.
 *
 * Crank turns for an angle: angle × worm ratio / 360. Source: the ratio itself.
 *
 * @param angles From the first set, degrees, rising, the first 0.
 * @param wormRatio Turns of the crank for one of the work, more than 0; 40 on most heads, 60 or 90 on
 *   many rotary tables (common practice).
 * @param circles Holes in each circle of the division plates to hand; whole numbers of 1 and more.
 * @throws MathsError `worm-not-positive`, `no-circles`, `circle-not-whole`.
 */
export function headPlan(
  angles: readonly number[],
  wormRatio: number,
  circles: readonly number[],
): HeadPlan {
  if (!(wormRatio > 0) || !Number.isFinite(wormRatio)) {
    throw new MathsError(
      'worm-not-positive',
      ['wormRatio'],
      `The worm ratio must be more than 0, not ${sayNumber(wormRatio)}: it is how many turns of the crank turn the work once. Most dividing heads have 40, many rotary tables 60 or 90.`,
    );
  }
  if (circles.length === 0) {
    throw new MathsError(
      'no-circles',
      ['circles'],
      'At least one hole circle is needed. Count the holes of the circles on your division plates and enter them.',
    );
  }
  for (const circle of circles) {
    if (!Number.isInteger(circle) || circle < 1) {
      throw new MathsError(
        'circle-not-whole',
        ['circles'],
        `A hole circle has a whole number of holes, 1 or more, not ${sayNumber(circle)}. Count them again.`,
      );
    }
  }
  const plans = [...circles]
    .sort((a, b) => a - b)
    .map((circle) => planOn(circle, angles, wormRatio));
  const slack = 1e-9;
  return plans.reduce((best, plan) => (worst(plan) < worst(best) - slack ? plan : best));
}

function planOn(circle: number, angles: readonly number[], wormRatio: number): HeadPlan {
  const perDegree = (wormRatio * circle) / 360;
  const counts = angles.map((angle) => Math.round(angle * perDegree));
  return {
    circle,
    settings: counts.map((count, i) => {
      const step = count - (counts[i - 1] ?? count);
      return {
        turns: Math.floor(step / circle),
        holes: step % circle,
        error: count / perDegree - angles[i]!,
      };
    }),
  };
}

const worst = (plan: HeadPlan): number =>
  Math.max(...plan.settings.map(({ error }) => Math.abs(error)));

export interface ToothSetting {
  /** Teeth from set 1. */
  readonly tooth: number;
  /** How far the set then is from where it should be, degrees; positive is too far. */
  readonly error: number;
}

/**
 * The nearest whole tooth for each set, on a gear fixed to the spindle and held by a pawl.
 *
 * @param angles From the first set, degrees, the first 0.
 * @param teeth Of the gear, a whole number of 2 or more.
 * @throws MathsError `teeth-not-whole`.
 */
export function toothPlan(angles: readonly number[], teeth: number): readonly ToothSetting[] {
  if (!Number.isInteger(teeth) || teeth < 2) {
    throw new MathsError(
      'teeth-not-whole',
      ['teeth'],
      `A gear has a whole number of teeth, 2 or more, not ${sayNumber(teeth)}. Count them again, with a chalk mark on the first.`,
    );
  }
  return angles.map((angle) => {
    const tooth = Math.round((angle * teeth) / 360);
    return { tooth, error: (tooth * 360) / teeth - angle };
  });
}
