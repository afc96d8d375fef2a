import { MathsError } from './errors.ts';
import { fitLine, heightError, slopeError, type LineFit } from './line-fit.ts';

/** One trial on the bench: points set to `gap`, crank turned forwards until they opened. */
export interface GapReading {
  /** Gap at full lift, mm. */
  readonly gap: number;
  /** Crank degrees before top dead centre at which the points then opened. */
  readonly angle: number;
}

/** How exact one reading is, as a standard deviation; 0 for unknown. */
export interface ReadingErrors {
  /** mm */
  readonly gap: number;
  /** crank degrees */
  readonly angle: number;
}

/** What trials at several gaps tell about the lift curve where the points open. */
export interface GapLine {
  readonly line: LineFit;
  /** Crank degrees earlier for each mm of wider gap. */
  readonly degreesPerMillimetre: number;
  /** Lift at the contacts for each crank degree near opening, mm; what the flank does there. */
  readonly liftPerDegree: number;
  /**
   * What the error estimate rests on: the scatter of the trials about the line, the reading errors
   * given, whichever is larger; `nothing` when there are two trials and no reading errors, which
   * fit a line exactly and cannot be judged.
   */
  readonly judgedBy: 'scatter' | 'readings' | 'nothing';
  /** Standard error of one opening angle about the line, crank degrees. */
  readonly angleError: number | undefined;
  /** Standard error of `degreesPerMillimetre`. */
  readonly slopeError: number | undefined;
  /** Smallest and largest gap tried, mm; outside them the line is a guess. */
  readonly from: number;
  readonly to: number;
}

/**
 * Lays a line through two or more trials: opening angle against gap. Since the points open where
 * the lobe has lifted them by the full lift less the gap, each trial is one point of the lift
 * curve, counted down from full lift, and the line is that curve near opening.
 *
 * Errors in the gap are turned into errors of angle with the slope of the line (the effective
 * variance; J. Orear, "Least squares when both variables have uncertainties", American Journal of
 * Physics 50 (1982) 912–916, named from memory), and both added as squares.
 *
 * Throws for fewer than two trials, trials all at one gap, or a line on which a wider gap opens
 * later, which no cam does.
 */
export function fitGapReadings(
  readings: readonly GapReading[],
  errors: ReadingErrors = { gap: 0, angle: 0 },
): GapLine {
  for (const { gap } of readings) {
    if (!(gap > 0)) {
      throw new MathsError(
        'never-open',
        ['readings'],
        'Every gap tried must be above 0; with no gap the points do not open. Correct the reading.',
      );
    }
  }
  if (!(errors.gap >= 0 && errors.angle >= 0)) {
    throw new MathsError(
      'reading-errors',
      ['gapError', 'angleError'],
      'A reading error cannot be less than 0. Give 0 if you do not know it.',
    );
  }
  const gaps = readings.map(({ gap }) => gap);
  if (readings.length < 2) {
    throw new MathsError(
      'too-few-readings',
      ['readings'],
      'Two trials at different gaps are the least that shows how the gap moves the timing. Set another gap and find where the points open.',
    );
  }
  if (Math.max(...gaps) === Math.min(...gaps)) {
    throw new MathsError(
      'same-gap',
      ['readings'],
      'All the trials are at one gap, so they say nothing about what the gap does. Set another gap, at least 0.1 mm away, and find where the points open.',
    );
  }
  const line = fitLine(readings.map(({ gap, angle }) => ({ x: gap, y: angle })));
  if (!(line.slope > 0)) {
    throw new MathsError(
      'wider-opens-later',
      ['readings'],
      'These trials say that a wider gap opens the points later, which no cam does. Check that each gap stands beside its own angle, that the angles are before top dead centre, and that the crank was turned forwards each time.',
    );
  }
  const fromReadings = Math.hypot(errors.angle, line.slope * errors.gap);
  const fromScatter = line.residual ?? 0;
  const judgedBy =
    line.residual !== undefined && fromScatter >= fromReadings
      ? 'scatter'
      : fromReadings > 0
        ? 'readings'
        : 'nothing';
  const angleError = judgedBy === 'nothing' ? undefined : Math.max(fromReadings, fromScatter);
  return {
    line,
    degreesPerMillimetre: line.slope,
    liftPerDegree: 1 / line.slope,
    judgedBy,
    angleError,
    slopeError: angleError === undefined ? undefined : slopeError(line, angleError),
    from: Math.min(...gaps),
    to: Math.max(...gaps),
  };
}

/** Crank degrees before top dead centre at which the line has the points open with `gap` mm. */
export function angleAtGap(fit: GapLine, gap: number): number {
  return fit.line.intercept + fit.line.slope * gap;
}

/** Standard error of `angleAtGap`, crank degrees; undefined where the trials cannot be judged. */
export function angleAtGapError(fit: GapLine, gap: number): number | undefined {
  return fit.angleError === undefined ? undefined : heightError(fit.line, gap, fit.angleError);
}

/** Gap, mm, at which the line has the points open `angle` crank degrees before top dead centre. */
export function gapForAngle(fit: GapLine, angle: number): number {
  return (angle - fit.line.intercept) / fit.line.slope;
}
