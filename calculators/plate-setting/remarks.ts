import { fixed } from '../frame/format.ts';
import type { ComputedOf } from '../frame/types.ts';
import { withinTolerance } from '../maths/plate-setting.ts';
import type { Values } from './compute.ts';
import type { results } from './results.ts';

/** More than this between cylinders is a mistake in measuring rather than a matter of setting. */
const UNLIKELY_SPREAD = 20;

/** Pass or fail, and the order of work. */
export function remarks(v: Values, computed: ComputedOf<typeof results>): readonly string[] {
  const errors = computed.error as readonly number[];
  const before = computed['error-before'] as readonly number[];
  const spread = computed.spread as number;
  const tolerance = `± ${fixed(v.tolerance, 2)}°`;
  const out = errors.flatMap((error, index) =>
    withinTolerance([error], v.tolerance) ? [] : [String(index + 1)],
  );
  const said: string[] = [];
  if (withinTolerance(before, v.tolerance)) {
    said.push(`Pass as found: every cylinder is within ${tolerance}. Leave plate and sets alone.`);
  } else if (out.length === 0) {
    said.push(`Pass with the plate alone: turned so, every cylinder is within ${tolerance}.`);
  } else {
    said.push(
      `Fail with the plate alone: ${out.length === 1 ? 'cylinder' : 'cylinders'} ${out.join(', ')} would still be outside ${tolerance}. Move ${out.length === 1 ? 'that set' : 'those sets'} in the slot after the plate is set, by the table: + is against the way the cam turns, which is earlier.`,
    );
  }
  if (spread > UNLIKELY_SPREAD) {
    said.push(
      `${fixed(spread, 0)}° between cylinders is more than slots allow. Check that each was measured at its own top dead centre, turning forwards, and that the sets are not swapped.`,
    );
  }
  said.push(
    'Order of work: gap every set first, since the gap moves the timing; then measure every cylinder; then turn the plate and lock it; then move single sets in their slots; then gap and measure all of them once more, since a set moved in its slot may have changed its gap.',
  );
  return said;
}
