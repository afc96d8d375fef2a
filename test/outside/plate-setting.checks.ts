import solver from 'javascript-lp-solver';
import { arcForTiming, settlePlate } from '../../calculators/maths/plate/plate-setting.ts';
import type { OutsideCheck } from './types.ts';

const cases: readonly (readonly [target: number, found: readonly number[]])[] = [
  [21, [24.3, 19.2, 21.7]],
  [25, [25.4, 26.1]],
  [18, [14, 15.5, 13.2, 16.9]],
  [22, [22, 22.8, 20.1, 23.4, 21.9, 19.7, 22.2, 24.6]],
  [20, [17.5]],
];

/**
 * The same question put as a linear programme: least t with −t ≤ error + move ≤ t for every
 * cylinder. The solver takes no negative unknowns, so the move is a difference of two.
 */
function byLinearProgramme(
  target: number,
  found: readonly number[],
): { move: number; worst: number } {
  const constraints: Record<string, { max: number }> = {};
  const advance: Record<string, number> = { worst: 0 };
  const retard: Record<string, number> = { worst: 0 };
  const bound: Record<string, number> = { worst: 1 };
  found.forEach((angle, index) => {
    const error = angle - target;
    const early = `early${String(index)}`;
    const late = `late${String(index)}`;
    constraints[early] = { max: -error };
    constraints[late] = { max: error };
    advance[early] = 1;
    advance[late] = -1;
    retard[early] = -1;
    retard[late] = 1;
    bound[early] = -1;
    bound[late] = -1;
  });
  const result = solver.Solve({
    optimize: 'worst',
    opType: 'min',
    constraints,
    variables: { advance, retard, bound },
  }) as unknown as Record<string, number | undefined>;
  return { move: (result.advance ?? 0) - (result.retard ?? 0), worst: result.bound ?? 0 };
}

/** Tries every hundredth of a degree and keeps the turn whose worst error is least. */
function byTrying(target: number, found: readonly number[]): { move: number; worst: number } {
  let best = { move: 0, worst: Number.POSITIVE_INFINITY };
  for (let step = -3000; step <= 3000; step += 1) {
    const move = step / 100;
    let worst = 0;
    for (const angle of found) worst = Math.max(worst, Math.abs(angle - target + move));
    if (worst < best.worst) best = { move, worst };
  }
  return best;
}

const methods = [
  [
    byLinearProgramme,
    'Linear programme solved by javascript-lp-solver 1.0.3 (npm)',
    'library',
    1e-6,
    'the solver works to about eight figures',
  ],
  [
    byTrying,
    'Every turn from −30° to +30° tried in steps of 0.01°',
    'hand-worked',
    0.0051,
    'half a step of the search',
  ],
] as const;

const minimaxChecks = cases.flatMap(([target, found]) =>
  methods.flatMap(([method, source, kind, tolerance, why]): OutsideCheck[] => [
    {
      topic: 'plate-setting',
      what: `best turn of the plate, target ${String(target)}°, found ${found.join('°, ')}°`,
      source,
      kind,
      unit: 'crank °',
      expected: () => method(target, found).move,
      ours: () => settlePlate(found, target).move,
      tolerance,
      why,
    },
    {
      topic: 'plate-setting',
      what: `worst error left, target ${String(target)}°, found ${found.join('°, ')}°`,
      source,
      kind,
      unit: 'crank °',
      expected: () => method(target, found).worst,
      ours: () => settlePlate(found, target).worst,
      tolerance,
      why,
    },
  ]),
);

export const checks: readonly OutsideCheck[] = [
  ...minimaxChecks,
  {
    topic: 'plate-setting',
    what: '2° of timing on a circle of 30 mm radius, cam at crank speed',
    source: 'By hand: 2/360 of the circumference, 2π·30 mm = 188.496 mm, is 1.047 mm',
    kind: 'hand-worked',
    unit: 'mm',
    expected: 1.047,
    ours: () => arcForTiming(2, 30, 1),
    tolerance: 0.0005,
  },
];
