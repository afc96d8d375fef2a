import type { RestsOn } from '../../frame/types.ts';
import type { Values } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const piston = ['stroke', 'rod', 'offset'] as const;

/** Timings read in degrees need no engine; read as travel they are turned into degrees by it. */
const oneFound = (v: Values) =>
  v.as === 'angle'
    ? (['cylinders', 'as', 'fired-angle-N'] as const)
    : (['cylinders', 'as', 'fired-N', ...piston] as const);
const found = (v: Values) =>
  v.as === 'angle'
    ? (['cylinders', 'as', 'fired-angle', 'target-angle'] as const)
    : (['cylinders', 'as', 'fired', 'target', ...piston] as const);

export const restsOn: RestsOn<typeof inputs, typeof results> = {
  'plate-move': found,
  worst: found,
  spread: found,
  error: found,
  'plate-turn': (v) => [...found(v), 'speed-ratio'],
  'plate-edge': (v) => [...found(v), 'speed-ratio', 'plate-radius'],
  'set-move': (v) => [...found(v), 'speed-ratio', 'slot-radius'],
  'as-found': oneFound,
  'error-before': (v) => [...oneFound(v), 'target', 'target-angle'],
  position: (v) => [...found(v), ...piston],
};
