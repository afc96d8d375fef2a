import { createRequire } from 'node:module';

/** What is used of odex, which ships sources that strict type checking refuses. */
interface Odex {
  readonly Solver: new (unknowns: number) => {
    absoluteTolerance: number;
    relativeTolerance: number;
    maxSteps: number;
    solve(
      derivative: (x: number, y: readonly number[]) => readonly number[],
      from: number,
      start: readonly number[],
      to: number,
    ): { readonly y: readonly number[] };
  };
}

const { Solver } = createRequire(import.meta.url)('odex') as Odex;

export const RUNNING_SUM = 'odex 2.0.4 (Gragg-Bulirsch-Stoer)';

/** Integral of `rate` from `from` to `to`, by extrapolation over ever smaller steps. */
export function runningSum(rate: (x: number) => number, from: number, to: number): number {
  const solver = new Solver(1);
  solver.relativeTolerance = 1e-11;
  solver.absoluteTolerance = 1e-11;
  solver.maxSteps = 100_000;
  return solver.solve((x) => [rate(x)], from, [0], to).y[0]!;
}
