import { trueScaleFiles } from '../../drawing/true-scale-files.ts';
import type { Values } from './compute.ts';

/** Lettering a template is much code, which only a file wants. */
export const downloads = trueScaleFiles('hole-pattern', async (v: Values, lengths) =>
  (await import('./template.ts')).patternDrawing(v, lengths),
);
