import type { Land } from '../../calculators/maths/plate/land-outline.ts';

export const land = (x: number, y: number, radius: number): Land => ({ x, y, radius });

/** Lands of 5 mm at the corners of 60 by 20 mm: the long edges lie 30 mm apart. */
export const bar = [land(0, 0, 5), land(60, 0, 5), land(60, 20, 5), land(0, 20, 5)];
