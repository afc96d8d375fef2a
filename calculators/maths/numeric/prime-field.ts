import type { Rows } from './linear.ts';

/** The greatest prime below 2²⁶: a product of two remainders is still a whole number exactly. */
export const PRIME = 67_108_859;

const remainder = (value: number): number => ((value % PRIME) + PRIME) % PRIME;

/** What times a remainder is 1, as its power of two less than the prime (Fermat). */
function inverse(value: number): number {
  let power = value;
  let product = 1;
  for (let left = PRIME - 2; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) product = (product * power) % PRIME;
    power = (power * power) % PRIME;
  }
  return product;
}

/** Rows brought to their simplest form: each begins with a 1 that stands alone in its column. */
export interface Reduced {
  readonly rows: Rows;
  /** Column of each row's leading 1, in order: as many as rows are independent. */
  readonly leading: readonly number[];
}

/**
 * Gauss–Jordan elimination of whole numbers by their remainders after division by `PRIME`, where
 * nothing is lost in rounding: what is dependent comes out as exactly so.
 *
 * @param matrix Rows of whole numbers, of a size up to 2⁵³.
 */
export function reduced(matrix: Rows): Reduced {
  const left = matrix.map((row) => row.map(remainder));
  const rows: number[][] = [];
  const leading: number[] = [];
  const columns = left[0]?.length ?? 0;
  for (let column = 0; column < columns && left.length > 0; column += 1) {
    const at = left.findIndex((row) => row[column] !== 0);
    if (at < 0) continue;
    const [found] = left.splice(at, 1);
    const scale = inverse(found![column]!);
    const row = found!.map((entry) => (entry * scale) % PRIME);
    for (const other of [...left, ...rows]) {
      const times = other[column]!;
      if (times === 0) continue;
      for (let j = column; j < columns; j += 1) {
        other[j] = remainder(other[j]! - ((times * row[j]!) % PRIME));
      }
    }
    rows.push(row);
    leading.push(column);
  }
  return { rows, leading };
}
