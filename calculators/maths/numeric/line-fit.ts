import { MathsError } from './errors.ts';

/** A straight line `y = intercept + slope·x` laid through points by least squares. */
export interface LineFit {
  readonly count: number;
  readonly slope: number;
  readonly intercept: number;
  readonly meanX: number;
  /** Sum of squares of x about its mean. */
  readonly spreadX: number;
  /**
   * Residual standard deviation of y, with count − 2 degrees of freedom; undefined for two
   * points, through which a line always passes.
   */
  readonly residual: number | undefined;
}

/**
 * Least-squares line through two or more points with at least two different x.
 *
 * Source of the formulas: NIST/SEMATECH, *e-Handbook of Statistical Methods*, sections 4.4.3.1
 * and 4.1.4.1 (linear least squares), and the textbook standard errors of slope and prediction,
 * N. R. Draper and H. Smith, *Applied Regression Analysis*, 3rd ed., Wiley, 1998, chapter 1.
 */
export function fitLine(points: readonly { readonly x: number; readonly y: number }[]): LineFit {
  const count = points.length;
  if (count < 2) {
    throw new MathsError(
      'too-few-points',
      ['points'],
      'A line needs at least two readings. Take another at a different setting.',
    );
  }
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / count;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / count;
  const spreadX = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  if (!(spreadX > 0)) {
    throw new MathsError(
      'same-x',
      ['points'],
      'All the readings were taken at one setting, so they say nothing about how the setting matters. Take another at a different setting.',
    );
  }
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / spreadX;
  const intercept = meanY - slope * meanX;
  const squares = points.reduce((sum, { x, y }) => sum + (y - intercept - slope * x) ** 2, 0);
  const residual = count > 2 ? Math.sqrt(squares / (count - 2)) : undefined;
  return { count, slope, intercept, meanX, spreadX, residual };
}

/** Standard error of the slope when each y is uncertain by `errorY` (standard deviation). */
export function slopeError(fit: LineFit, errorY: number): number {
  return errorY / Math.sqrt(fit.spreadX);
}
