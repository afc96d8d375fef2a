import { createRequire } from 'node:module';

type Slopes = (x: number, y: readonly number[]) => readonly number[];
type Observer = (x: number, y: readonly number[]) => void;

/** What is used of odex, which ships sources that strict type checking refuses. */
interface Solver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  denseOutput: boolean;
  grid(step: number, observer: Observer): unknown;
  solve(
    slopes: Slopes,
    from: number,
    start: readonly number[],
    to: number,
    observer?: unknown,
  ): { readonly y: readonly number[] };
}
const { Solver } = createRequire(import.meta.url)('odex') as {
  readonly Solver: new (unknowns: number) => Solver;
};

export const ODE_SOLVER = 'odex 2.0.4 (Gragg-Bulirsch-Stoer)';

function solverFor(start: readonly number[]): Solver {
  const solver = new Solver(start.length);
  solver.relativeTolerance = 1e-11;
  solver.absoluteTolerance = 1e-11;
  solver.maxSteps = 100_000;
  return solver;
}

/** The unknowns at `to`, from their values at `from` and their slopes in between. */
export function solvedAt(
  slopes: Slopes,
  from: number,
  start: readonly number[],
  to: number,
): readonly number[] {
  return solverFor(start).solve(slopes, from, start, to).y;
}

/** The unknowns at `count` even steps from 0 to `to`. */
export function solvedAlong(
  slopes: Slopes,
  start: readonly number[],
  to: number,
  count: number,
): readonly (readonly number[])[] {
  const solver = solverFor(start);
  solver.denseOutput = true;
  const found: number[][] = [];
  const keep = solver.grid(to / count, (_, y) => found.push([...y]));
  solver.solve(slopes, 0, start, to, keep);
  return found;
}
