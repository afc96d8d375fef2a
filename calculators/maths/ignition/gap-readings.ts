import { MathsError } from '../numeric/errors.ts';
import { fitLine, slopeError, type LineFit } from '../numeric/line-fit.ts';
import { coverageFactor } from '../numeric/student.ts';

/** One trial on the bench: points set to `gap`, crank turned forwards until they opened. */
export interface GapReading {
  /** Gap at full lift, mm, above 0. */
  readonly gap: number;
  /** Crank degrees before top dead centre at which the points then opened. */
  readonly angle: number;
}

/** What trials at several gaps tell about the lift curve where the points open. */
export interface GapLine {
  readonly line: LineFit;
  /** Crank degrees earlier for each mm of wider gap. */
  readonly degreesPerMillimetre: number;
  /** What the flank lifts the contacts there, mm for each crank degree. */
  readonly liftPerDegree: number;
  /**
   * Half of the range that holds the true `degreesPerMillimetre` 95 times in 100, judged by the
   * scatter of the trials about the line; undefined for two trials, which fit a line exactly.
   */
  readonly slopeRange: number | undefined;
  /** Smallest and largest gap tried, mm; outside them the line is a guess. */
  readonly from: number;
  readonly to: number;
}

/**
 * Lays a line through two or more trials: opening angle against gap. Since the points open where
 * the lobe has lifted them by the full lift less the gap, each trial is one point of the lift
 * curve, counted down from full lift, and the line is that curve near opening.
 *
 * Throws for fewer than two trials, trials all at one gap, or a line on which a wider gap opens
 * later, which no cam does.
 */
export function fitGapReadings(readings: readonly GapReading[]): GapLine {
  const gaps = readings.map(({ gap }) => gap);
  if (!gaps.every((gap) => gap > 0)) {
    throw new MathsError(
      'never-open',
      ['trialGap'],
      'Every gap tried must be above 0 mm; with no gap the points do not open. Correct the reading.',
    );
  }
  if (readings.length < 2) {
    throw new MathsError(
      'too-few-readings',
      ['trials'],
      'Two trials at different gaps are the least that shows how the gap moves the timing. Set another gap and find where the points open.',
    );
  }
  const from = Math.min(...gaps);
  const to = Math.max(...gaps);
  if (from === to) {
    throw new MathsError(
      'same-gap',
      ['trialGap'],
      'All the trials are at one gap, so they say nothing about what the gap does. Set another gap, at least 0.1 mm away, and find where the points open.',
    );
  }
  const line = fitLine(readings.map(({ gap, angle }) => ({ x: gap, y: angle })));
  if (!(line.slope > 0)) {
    throw new MathsError(
      'wider-opens-later',
      ['trialAngle'],
      'These trials say that a wider gap opens the points later, which no cam does. Check that each gap stands beside its own angle, that the angles are before top dead centre, and that the crank was turned forwards each time.',
    );
  }
  return {
    line,
    degreesPerMillimetre: line.slope,
    liftPerDegree: 1 / line.slope,
    slopeRange:
      line.residual === undefined
        ? undefined
        : coverageFactor(line.count - 2) * slopeError(line, line.residual),
    from,
    to,
  };
}

/** Crank degrees before top dead centre at which the line has the points open with `gap` mm. */
export function angleAtGap(fit: GapLine, gap: number): number {
  return fit.line.intercept + fit.line.slope * gap;
}
