import { MathsError } from './errors.ts';
import { coverageFactor } from './student.ts';

/** Most readings of one quantity that are taken together. */
export const MOST_READINGS = 20;

/** What several readings of one quantity say together, in their own unit. */
export interface Repeated {
  readonly count: number;
  readonly mean: number;
  readonly lowest: number;
  readonly highest: number;
  /** Standard deviation of one reading, from the scatter of all. */
  readonly deviation: number;
  /** Standard deviation of the mean: that of one reading over the root of their number. */
  readonly standardError: number;
  /** The mean is within this of what would come of readings without end, 95 times in 100. */
  readonly ofMean: number;
  /** What one of these readings alone would be within, by the same scatter. */
  readonly ofOne: number;
}

/**
 * Mean and scatter of readings of one quantity, each taken anew.
 *
 * The scatter of few readings is itself uncertain, so that its ± is Student's t times the standard
 * error: 12.7 times with two readings, 4.3 with three, 2.8 with five. What all readings have in common
 * (the instrument, a zero that is off) no number of them shows.
 *
 * Source: JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in
 * measurement, 4.2.1 to 4.2.3 (mean, experimental standard deviation and that of the mean) and
 * Annex G.3 with table G.2 (Student's t).
 *
 * @param readings 2 to 20, all in one unit.
 * @throws MathsError `readings-count`, or `readings-value` for what is no number.
 */
export function repeatedReadings(readings: readonly number[]): Repeated {
  const count = readings.length;
  if (count < 2 || count > MOST_READINGS) {
    throw new MathsError(
      'readings-count',
      ['readings'],
      `From 2 to ${MOST_READINGS} readings are taken together, not ${count}. Leave some out, or give their mean.`,
    );
  }
  if (!readings.every((reading) => Number.isFinite(reading))) {
    throw new MathsError('readings-value', ['readings'], 'Every reading must be a number.');
  }
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  const deviation = Math.sqrt(squares / (count - 1));
  const standardError = deviation / Math.sqrt(count);
  const factor = coverageFactor(count - 1);
  return {
    count,
    mean,
    lowest: Math.min(...readings),
    highest: Math.max(...readings),
    deviation,
    standardError,
    ofMean: factor * standardError,
    ofOne: factor * deviation,
  };
}
