import solver from 'javascript-lp-solver';
import {
  balanceSlides,
  openingsFromVacuum,
} from '../../calculators/maths/carburettor/slide-balance.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'slide-balance';

const findings: readonly (readonly number[])[] = [
  [2.6, 2.5, 2.9],
  [1, 1.4],
  [0, 3, 1, 2],
  [2.2, 2.2, 2.7, 1.1, 2.4],
  [5, 1, 1, 1, 9, 2],
];

/** Tries every opening in steps of a thousandth and keeps the least work. */
function leastByTrial(openings: readonly number[], thread: number): number {
  let least = Infinity;
  for (let step = 0; step <= 10_000; step += 1) {
    const work = openings.reduce((sum, o) => sum + Math.abs(step / 1000 - o) / thread, 0);
    least = Math.min(least, work);
  }
  return least;
}

interface Programme {
  readonly result: number;
}

/** Least sum of turns out and in, each slide's turns bringing it to one opening. */
function leastByProgramme(openings: readonly number[], thread: number): number {
  const constraints: Record<string, { equal: number }> = {};
  const variables: Record<string, Record<string, number>> = { target: {} };
  openings.forEach((opening, i) => {
    constraints[`slide${i}`] = { equal: opening };
    variables.target![`slide${i}`] = 1;
    variables[`out${i}`] = { work: 1, [`slide${i}`]: -thread };
    variables[`in${i}`] = { work: 1, [`slide${i}`]: thread };
  });
  const model = { optimize: 'work', opType: 'min' as const, constraints, variables };
  return (solver.Solve(model) as unknown as Programme).result;
}

export const checks: readonly OutsideCheck[] = [
  ...findings.flatMap((found): OutsideCheck[] => [
    {
      topic,
      what: `Least turns of all adjusters, thread 0.8 mm, openings ${found.join(', ')} mm`,
      source: 'Brute force: 10 001 openings tried',
      kind: 'hand-worked',
      unit: 'turns',
      expected: () => leastByTrial(found, 0.8),
      ours: () => balanceSlides(found, 0.8).work,
      tolerance: 1e-9,
    },
    {
      topic,
      what: `Least turns of all adjusters, thread 1 mm, openings ${found.join(', ')} mm`,
      source: 'Linear programme solved by javascript-lp-solver 1.0.3 (npm)',
      kind: 'library',
      unit: 'turns',
      expected: () => leastByProgramme(found, 1),
      ours: () => balanceSlides(found, 1).work,
      tolerance: 1e-6,
      why: 'the solver works to about eight figures',
    },
  ]),
  {
    topic,
    what: 'Turns of a 0.75 mm thread from an opening of 2.2 mm to 2.5 mm',
    source: 'By hand: 0.3 / 0.75',
    kind: 'hand-worked',
    unit: 'turns',
    expected: 0.4,
    ours: () => balanceSlides([2.2, 2.5], 0.75, 2.5).turns[0]!,
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'Turns that bring a gauge from 24 to 20, which falls by 8 for one turn, when all are to agree with it',
    source: 'By hand: 4 / 8',
    kind: 'hand-worked',
    unit: 'turns',
    expected: 0.5,
    ours: () => -openingsFromVacuum([20, 24], 8, 1)[1]!,
    tolerance: 0,
  },
];
