import { MathsError } from './errors.ts';
import { repeatedReadings } from './repeated-readings.ts';
import { coverageBetween } from './student.ts';

/** Degrees of freedom of a ± that was stated and is itself reliable to a quarter. */
const STATED_FREEDOM = 8;
/** Readings that scatter more than so many times what was stated disagree with it. */
const DISAGREE = 2;

/** What a stated ± and several readings say together. */
export interface StatedAndRead {
  /** ± of the mean, in the readings' unit: never less than the stated one. */
  readonly plusMinus: number;
  /**
   * Whether the readings bear the stated ± out (`borne-out`: it stays as it is), scatter more than it
   * says (`wider`), or so much more that it counts for little (`disagree`).
   */
  readonly verdict: 'borne-out' | 'wider' | 'disagree';
}

/**
 * The ± of the mean of several readings, for one of which a ± was stated.
 *
 * The stated ± is taken as reliable to 25 per cent, which is worth 8 degrees of freedom, so that its
 * standard uncertainty s₀ is the ± over Student's t of 8. It is pooled with the scatter s of n readings:
 * variance (8 s₀² + (n − 1) s²)/(8 + n − 1), and the ± of one reading is the root of that times
 * Student's t of 8 + n − 1. What of it exceeds the stated ± is scatter and shrinks with the root of n;
 * the stated part may be common to all readings (a zero that is off), so that it stays whole. Readings
 * that agree with the stated ± leave it as it is, and one reading alone would.
 *
 * Where s is more than twice s₀ the readings disagree with what was stated: its weight, the 8, then
 * falls as (2 s₀/s)², so that the scatter tells. Where nothing was stated that leaves Student's t of the
 * readings alone.
 *
 * Source: JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in
 * measurement, G.4.2 (8 degrees of freedom of a 25 per cent reliability), annex G.3 with table G.2
 * (Student's t) and 4.2.4 (a pooled estimate of variance; named from memory). The limit of twice, and
 * that the stated part stays whole, are this project's own.
 *
 * @param stated The ± of one reading, 0 or more, in the readings' unit.
 * @param readings 2 to 20, all in one unit.
 * @throws MathsError as `repeatedReadings` does; `stated-uncertainty` for a ± that is negative or no number.
 */
export function statedAndRead(stated: number, readings: readonly number[]): StatedAndRead {
  if (!(stated >= 0) || !Number.isFinite(stated)) {
    throw new MathsError('stated-uncertainty', ['stated'], 'A ± must be a number, 0 or more.');
  }
  const { count, deviation, ofMean } = repeatedReadings(readings);
  if (stated === 0) return { plusMinus: ofMean, verdict: 'disagree' };
  const ofStated = stated / coverageBetween(STATED_FREEDOM);
  const within = (DISAGREE * ofStated) / deviation;
  const weight = STATED_FREEDOM * Math.min(1, within ** 2);
  const freedom = weight + count - 1;
  const variance = (weight * ofStated ** 2 + (count - 1) * deviation ** 2) / freedom;
  const ofOne = coverageBetween(freedom) * Math.sqrt(variance);
  if (ofOne <= stated) return { plusMinus: stated, verdict: 'borne-out' };
  return {
    plusMinus: Math.hypot(stated, Math.sqrt((ofOne ** 2 - stated ** 2) / count)),
    verdict: within < 1 ? 'disagree' : 'wider',
  };
}
