import { det, identity, inv, lusolve, matrix, multiply, transpose } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  cholesky,
  inverseNormal,
  leastSquares,
  leverage,
  normal,
  rank,
  solveBy,
  type Rows,
} from '../../calculators/maths/numeric/linear.ts';

const rows = (of: Rows): number[][] => of.map((row) => [...row]);

/** Entry by entry, to a part in a thousand million. */
function alike(ours: Rows, other: Rows): void {
  expect(ours.length).toBe(other.length);
  ours.forEach((row, i) => row.forEach((entry, j) => expect(entry).toBeCloseTo(other[i]![j]!, 9)));
}

const slopes: Rows = [
  [1, 2, 0],
  [0, 1, -1],
  [3, 0, 2],
  [1, 1, 1],
];
const square = multiply(transpose(rows(slopes)), rows(slopes)) as number[][];

describe('how many rows are independent', () => {
  it.each<readonly [string, number, Rows]>([
    ['none', 0, []],
    [
      'rows of nothing',
      0,
      [
        [0, 0],
        [0, 0],
      ],
    ],
    ['one', 1, [[5]]],
    [
      'two alike',
      1,
      [
        [1, 2],
        [2, 4],
      ],
    ],
    [
      'two alike of different size',
      1,
      [
        [1e-6, 2e-6, -1e-6],
        [1e6, 2e6, -1e6],
      ],
    ],
    [
      'more rows than columns',
      2,
      [
        [1, 0],
        [0, 1],
        [1, 1],
      ],
    ],
    [
      'more columns than rows',
      2,
      [
        [1, 0, 4],
        [0, 1, 5],
      ],
    ],
    [
      'a third that is the sum of two',
      2,
      [
        [1, 2, 3],
        [4, 5, 6],
        [5, 7, 9],
      ],
    ],
    [
      'a third that is not',
      3,
      [
        [1, 2, 3],
        [4, 5, 6],
        [5, 7, 10],
      ],
    ],
    [
      'the largest entry last',
      3,
      [
        [0, 0, 1],
        [0, 2, 1],
        [3, 1, 1],
      ],
    ],
    [
      'one of nothing among others',
      2,
      [
        [0, 0, 0],
        [0, 3, 0],
        [1, 0, 0],
      ],
    ],
  ])('%s: %d', (_, count, of) => {
    expect(rank(of, 1e-9)).toBe(count);
    expect(rank([...of].reverse(), 1e-9)).toBe(count);
  });

  it('is as the determinant has it (mathjs)', () => {
    const full = [
      [2, -1, 0, 3],
      [1, 1, 4, 0],
      [0, 5, 1, 1],
      [3, 0, 2, 7],
    ];
    expect(Math.abs(det(full))).toBeGreaterThan(1);
    expect(rank(full, 1e-9)).toBe(4);
    const lacking = [...full.slice(0, 3), full[0]!.map((entry, j) => entry - 2 * full[2]![j]!)];
    expect(Math.abs(det(lacking))).toBeLessThan(1e-9);
    expect(rank(lacking, 1e-9)).toBe(3);
  });

  it('counts a row as nothing that turns away by less than is asked', () => {
    const nearly = (off: number): Rows => [
      [1, 0],
      [1, off],
    ];
    expect(rank(nearly(1e-3), 1e-2)).toBe(1);
    expect(rank(nearly(1e-3), 1e-4)).toBe(2);
  });
});

describe('a triangle of a symmetric matrix', () => {
  it('times itself is the matrix again', () => {
    const lower = cholesky(square)!;
    const whole = lower.map((row) => [...row, ...new Array<number>(3 - row.length).fill(0)]);
    alike(multiply(whole, transpose(whole)) as number[][], square);
  });

  it('solves as elimination does (mathjs lusolve)', () => {
    const right = [3, -1, 7];
    const other = lusolve(square, right) as number[][];
    solveBy(cholesky(square)!, right).forEach((x, i) => expect(x).toBeCloseTo(other[i]![0]!, 9));
  });

  it('is none where the matrix is not positive', () => {
    expect(cholesky([[0]])).toBeUndefined();
    expect(
      cholesky([
        [1, 2],
        [2, 1],
      ]),
    ).toBeUndefined();
    expect(
      cholesky([
        [1, 1],
        [1, 1],
      ]),
    ).toBeUndefined();
    // So little that it is dust of the sums.
    expect(
      cholesky([
        [4, 4],
        [4, 4 + 1e-20],
      ]),
    ).toBeUndefined();
    expect(cholesky([])).toEqual([]);
  });
});

describe('the normal equations', () => {
  it('are JᵀJ and Jᵀr (mathjs)', () => {
    const right = [1, 4, -2, 5];
    const [ours, side] = normal(slopes, right);
    alike(ours, square);
    const other = multiply(transpose(rows(slopes)), right);
    side.forEach((entry, i) => expect(entry).toBeCloseTo(other[i]!, 12));
    expect(normal([], [])).toEqual([[], []]);
  });

  it('have the inverse that mathjs finds, and none where something is left open', () => {
    const inverse = inverseNormal(slopes)!;
    alike(inverse, inv(square));
    alike(multiply(inverse, square), identity(3).valueOf() as number[][]);
    expect(
      inverseNormal([
        [1, 1],
        [2, 2],
      ]),
    ).toBeUndefined();
  });

  it('tell the variance of what a row stands for: row · (JᵀJ)⁻¹ · row', () => {
    const inverse = inverseNormal(slopes)!;
    for (const row of [
      [1, 0, 0],
      [0, 2, -1],
      [1, 1, 1],
    ]) {
      const other = multiply(multiply(row, matrix(inv(square))), row) as unknown as number;
      expect(leverage(row, inverse)).toBeCloseTo(other, 12);
    }
  });
});

describe('least squares', () => {
  /**
   * Misra1a of the Statistical Reference Datasets (NIST, nonlinear regression), y = b1(1 − e^(−b2·x)):
   * data and certified values recalled from memory; that the one gives the other to eight digits proves
   * them.
   */
  const x = [
    77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760,
  ];
  const y = [
    10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
  ];
  const certified = [238.94212918, 550.15643181] as const;
  /** b2 in millionths, so that both figures are of one size, as the lengths of a pattern are. */
  const misra = ([b1, millionths]: readonly number[]) => {
    const b2 = millionths! / 1e6;
    return {
      residuals: x.map((at, i) => y[i]! - b1! * (1 - Math.exp(-b2 * at))),
      slopes: x.map((at) => [1 - Math.exp(-b2 * at), (b1! * at * Math.exp(-b2 * at)) / 1e6]),
    };
  };

  it.each([
    ['the first start', [500, 100]],
    ['the second start', [250, 500]],
    ['the certified values', certified],
  ])('comes to the certified values of Misra1a from %s', (_, start) => {
    const [b1, b2] = leastSquares(misra, start, 200);
    expect(b1! / certified[0]).toBeCloseTo(1, 9);
    expect(b2! / certified[1]).toBeCloseTo(1, 9);
    const sum = misra([b1!, b2!]).residuals.reduce((all, r) => all + r * r, 0);
    expect(sum).toBeCloseTo(0.12455138894, 9);
  });

  /** Rosenbrock's valley: 10(y − x²) and 1 − x, both nought at 1, 1, round a bend from −1.2, 1. */
  const valley = ([p, q]: readonly number[]) => ({
    residuals: [-10 * (q! - p! * p!), -(1 - p!)],
    slopes: [
      [-20 * p!, 10],
      [-1, 0],
    ],
  });

  it('goes round the bend of Rosenbrock’s valley, where a whole step would lead uphill', () => {
    const [p, q] = leastSquares(valley, [-1.2, 1]);
    expect(p).toBeCloseTo(1, 12);
    expect(q).toBeCloseTo(1, 12);
  });

  it('never ends higher than it began, however few steps it is allowed', () => {
    const sum = (at: readonly number[]): number =>
      valley(at).residuals.reduce((all, r) => all + r * r, 0);
    for (const most of [0, 1, 2, 4]) {
      expect(sum(leastSquares(valley, [-1.2, 1], most))).toBeLessThanOrEqual(sum([-1.2, 1]));
    }
  });

  it('stays where it is when nothing says where to go', () => {
    const flat = () => ({ residuals: [1, 1], slopes: [[0], [0]] });
    expect(leastSquares(flat, [3])).toEqual([3]);
  });

  it('is a straight line’s own solution in a step', () => {
    // Worked by hand: 1, 2, 4 at 0, 1, 2 have the slope 1.5 and begin at 5/6.
    const line = ([a, b]: readonly number[]) => ({
      residuals: [1, 2, 4].map((value, i) => value - a! - b! * i),
      slopes: [0, 1, 2].map((i) => [1, i]),
    });
    const [a, b] = leastSquares(line, [0, 0]);
    expect(a).toBeCloseTo(5 / 6, 12);
    expect(b).toBeCloseTo(1.5, 12);
  });
});
