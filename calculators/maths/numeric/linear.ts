/** A matrix as its rows. */
export type Rows = readonly (readonly number[])[];

/** Below this share of the first pivot a pivot is none. */
const NO_PIVOT = 1e-9;

/**
 * How many of the rows are independent of each other: Gaussian elimination with full pivoting on
 * rows brought to length 1.
 *
 * @param least Share of the largest pivot below which one counts as nothing.
 */
export function rank(rows: Rows, least: number): number {
  const left = rows.map((row) => {
    const length = Math.hypot(...row);
    return row.map((entry) => (length > 0 ? entry / length : 0));
  });
  const columns = left[0]?.length ?? 0;
  let found = 0;
  let first = 0;
  while (found < Math.min(left.length, columns)) {
    let best = 0;
    let [pivotRow, pivotColumn] = [found, 0];
    for (let i = found; i < left.length; i += 1) {
      for (let j = 0; j < columns; j += 1) {
        const size = Math.abs(left[i]![j]!);
        if (size > best) [best, pivotRow, pivotColumn] = [size, i, j];
      }
    }
    if (found === 0) first = best;
    if (!(best > least * first)) break;
    const pivot = left[pivotRow]!;
    [left[pivotRow], left[found]] = [left[found]!, pivot];
    for (let i = found + 1; i < left.length; i += 1) {
      const row = left[i]!;
      const factor = row[pivotColumn]! / pivot[pivotColumn]!;
      if (factor === 0) continue;
      for (let j = 0; j < columns; j += 1) row[j] = row[j]! - factor * pivot[j]!;
      row[pivotColumn] = 0;
    }
    found += 1;
  }
  return found;
}

/**
 * Triangle L of a symmetric positive matrix, `L·Lᵀ` (Cholesky); nothing where it is not positive.
 */
export function cholesky(matrix: Rows): number[][] | undefined {
  const lower: number[][] = [];
  for (let i = 0; i < matrix.length; i += 1) {
    const row: number[] = [];
    lower.push(row);
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k += 1) sum -= row[k]! * lower[j]![k]!;
      if (i !== j) row.push(sum / lower[j]![j]!);
      else if (sum > NO_PIVOT ** 2 * matrix[i]![i]!) row.push(Math.sqrt(sum));
      else return undefined;
    }
  }
  return lower;
}

/** Solves `L·Lᵀ·x = right` by the triangle L. */
export function solveBy(lower: Rows, right: readonly number[]): number[] {
  const x = [...right];
  for (let i = 0; i < x.length; i += 1) {
    for (let k = 0; k < i; k += 1) x[i] = x[i]! - lower[i]![k]! * x[k]!;
    x[i] = x[i]! / lower[i]![i]!;
  }
  for (let i = x.length - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < x.length; k += 1) x[i] = x[i]! - lower[k]![i]! * x[k]!;
    x[i] = x[i]! / lower[i]![i]!;
  }
  return x;
}

/** `Jᵀ·J` of rows, and `Jᵀ·r`: what the normal equations of least squares are made of. */
export function normal(rows: Rows, right: readonly number[]): [number[][], number[]] {
  const size = rows[0]?.length ?? 0;
  const square = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const side = new Array<number>(size).fill(0);
  rows.forEach((row, k) => {
    for (let i = 0; i < size; i += 1) {
      const entry = row[i]!;
      if (entry === 0) continue;
      side[i] = side[i]! + entry * right[k]!;
      for (let j = 0; j < size; j += 1) square[i]![j] = square[i]![j]! + entry * row[j]!;
    }
  });
  return [square, side];
}

/**
 * `(JᵀJ)⁻¹` of rows of slopes: variances and covariances of what is fitted, for readings with a
 * variance of 1; nothing where the rows leave something open.
 */
export function inverseNormal(rows: Rows): number[][] | undefined {
  const [square] = normal(
    rows,
    rows.map(() => 0),
  );
  const lower = cholesky(square);
  return (
    lower &&
    square.map((_, i) =>
      solveBy(
        lower,
        square.map((__, j) => (i === j ? 1 : 0)),
      ),
    )
  );
}

/** The variance of what a row of slopes stands for, by such an inverse. */
export function leverage(row: readonly number[], inverse: Rows): number {
  let sum = 0;
  for (let i = 0; i < row.length; i += 1) {
    if (row[i] === 0) continue;
    for (let j = 0; j < row.length; j += 1) sum += row[i]! * row[j]! * inverse[i]![j]!;
  }
  return sum;
}

/** Steps after which a fit that has not settled is left where it is. */
const MOST_STEPS = 60;
/** A step below this share of the size of the figures changes nothing. */
const SETTLED = 1e-13;

/**
 * Least squares of residuals that are not straight in their parameters: Gauss and Newton's steps,
 * held back where one would lead uphill (Levenberg and Marquardt).
 *
 * Source: K. Levenberg, Quarterly of Applied Mathematics 2 (1944), 164; D. W. Marquardt, Journal of
 * the Society for Industrial and Applied Mathematics 11 (1963), 431.
 *
 * @param at Residuals (measured less fitted) and the slopes of what is fitted, a row for each.
 * @param start Where to begin: figures of one kind and size, as the places of holes in mm.
 * @param most Steps at the most.
 */
export function leastSquares(
  at: (x: readonly number[]) => { readonly residuals: readonly number[]; readonly slopes: Rows },
  start: readonly number[],
  most = MOST_STEPS,
): number[] {
  const squares = (residuals: readonly number[]): number =>
    residuals.reduce((sum, r) => sum + r * r, 0);
  let x = [...start];
  let here = at(x);
  let sum = squares(here.residuals);
  let damping = 1e-4;
  for (let step = 0; step < most; step += 1) {
    const [square, side] = normal(here.slopes, here.residuals);
    const lower = cholesky(
      square.map((row, i) =>
        row.map((entry, j) => (i === j ? entry * (1 + damping) + 1e-12 : entry)),
      ),
    );
    const by = lower && solveBy(lower, side);
    const next = by && x.map((value, i) => value + by[i]!);
    const there = next && at(next);
    const less = there ? squares(there.residuals) : Infinity;
    const size = Math.max(...x.map(Math.abs), 1e-9);
    const moved = by ? Math.max(...by.map(Math.abs)) : Infinity;
    if (there && less <= sum) {
      [x, here, sum] = [next!, there, less];
      damping = Math.max(damping / 30, 1e-15);
      if (moved < SETTLED * size) break;
    } else {
      if (moved < 1e-9 * size) break;
      damping *= 10;
      if (damping > 1e12) break;
    }
  }
  return settled(at, x);
}

/** Steps of a fit that is this near, as a share of the size of the figures, grow shorter by themselves. */
const NEAR = 1e-6;
const LAST_STEPS = 5;

/**
 * The bottom itself. Near it the sum of squares is too flat to tell one place from another, to half
 * of the digits; that the steps grow shorter tells it, on every machine alike.
 */
function settled(at: Parameters<typeof leastSquares>[0], near: readonly number[]): number[] {
  let x = [...near];
  let last = NEAR * Math.max(...x.map(Math.abs), 1e-9);
  for (let step = 0; step < LAST_STEPS; step += 1) {
    const { residuals, slopes } = at(x);
    const [square, side] = normal(slopes, residuals);
    const lower = cholesky(square);
    if (!lower) return x;
    const by = solveBy(lower, side);
    const moved = Math.max(...by.map(Math.abs));
    if (!(moved < last)) return x;
    x = x.map((value, i) => value + by[i]!);
    last = moved / 2;
  }
  return x;
}
