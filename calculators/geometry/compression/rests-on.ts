import type { RestsOn } from '../../frame/types.ts';
import type { Values } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const swept = ['stroke', 'rod', 'offset', 'bore'] as const;
const above = [...swept, 'exhaust-opens'] as const;
const parts = ['bore', 'gasket', 'gasket-bore', 'deck', 'dome'] as const;
const plug = ['plug-allowance', 'plug-hole', 'plug-thread', 'plug-pitch', 'plug-reach'] as const;

/** Measured whole, in the engine, the volume needs nothing but the plug's; else all its parts. */
const clearance = (v: Values) =>
  v.measured === 'whole'
    ? (['measured', 'whole-volume', ...plug] as const)
    : (['measured', 'head-volume', ...plug, ...parts] as const);
const squish = (v: Values) =>
  v['squish-from'] === 'solder'
    ? (['squish-from', 'solder'] as const)
    : (['squish-from', 'gasket', 'deck', 'band-depth'] as const);

const wanted = ['wanted-scheme', 'wanted-ratio'] as const;
const face = ['bore', 'skim-face', 'bowl-mouth'] as const;
const change = [
  ...face,
  'skim',
  'gasket',
  'gasket-bore',
  'gasket-change',
  'base-gasket-change',
] as const;
const others = ['cylinders', 'other-volume', 'other-deck'] as const;
const side = (v: Values) => [...clearance(v), ...others] as const;

export const restsOn: RestsOn<typeof inputs, typeof results> = {
  ratio: (v) => [...swept, ...clearance(v)],
  'trapped-ratio': (v) => [...above, ...clearance(v)],
  squish,
  swept,
  'swept-all': [...swept, 'cylinders'],
  'swept-trapped': above,
  clearance,
  'head-alone': (v) => [...clearance(v), ...parts],
  'head-volume-for': [...above, ...parts, ...wanted],
  'skim-for': (v) => [...above, ...clearance(v), ...wanted, ...face],
  'squish-for': (v) => [...above, ...clearance(v), ...squish(v), ...wanted, ...face],
  'ratio-after': (v) => [...swept, ...clearance(v), ...change],
  'trapped-after': (v) => [...above, ...clearance(v), ...change],
  'squish-after': (v) => [...clearance(v), ...squish(v), ...change],
  'cylinder-clearance': side,
  'cylinder-match': side,
  'cylinder-ratio': (v) => [...swept, ...side(v)],
  'cylinder-trapped': (v) => [...above, ...side(v)],
  'ratio-spread': (v) => [...swept, ...side(v)],
};
