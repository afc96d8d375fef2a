import { DEMO_CYLINDERS } from '../demo/engine.ts';
import { MOST_CYLINDERS } from '../maths/limits/cylinder-count.ts';

/** How many carburettors, or their slides, are set alike. */
export const countInput = {
  assumed: true,
  kind: 'number',
  unit: 'count',
  min: 1,
  max: MOST_CYLINDERS,
  why: 'no such engine has more',
  default: DEMO_CYLINDERS,
  step: 1,
  whole: true,
} as const;
