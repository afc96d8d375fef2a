import { ODE_SOLVER, solvedAt } from './ode.ts';

export const RUNNING_SUM = ODE_SOLVER;

/** Integral of `rate` from `from` to `to`, by extrapolation over ever smaller steps. */
export function runningSum(rate: (x: number) => number, from: number, to: number): number {
  return solvedAt((x) => [rate(x)], from, [0], to)[0]!;
}
