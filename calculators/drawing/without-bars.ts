import { reachOf } from '../maths/plate/land-outline.ts';
import { edgesOf } from './edges-of.ts';
import type { Drawing } from './shapes.ts';

/** From the outermost shape to the edge of the sheet, mm. */
const GAP = 1;

/** A drawing without its proving bars and the room they take: each of several sheets has its own. */
export function withoutBars({ title, shapes }: Drawing): Drawing {
  const kept = shapes.filter(({ layer }) => layer !== 'proving');
  const { left, right, bottom, top } = reachOf(kept.flatMap(edgesOf));
  return {
    title,
    left: left - GAP,
    bottom: bottom - GAP,
    width: right - left + 2 * GAP,
    height: top - bottom + 2 * GAP,
    shapes: kept,
  };
}
