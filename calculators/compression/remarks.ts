import { showFixed } from '../frame/format.ts';
import type { ComputedOf, Known } from '../frame/types.ts';
import { squishClearance } from '../maths/compression.ts';
import type { Values } from './compute.ts';
import type { results } from './results.ts';

export function remarks(
  v: Values,
  r: ComputedOf<typeof results>,
  { lengths }: Known,
): readonly string[] {
  const list = [
    'Two ratios, two schemes: a geometric figure and a trapped one of the same engine are far apart. Ask which of them a handbook or a friend means before you compare.',
  ];
  const squish = r.squish as number;
  if (squish <= 0) {
    list.push(
      'With these heights the crown meets the head before the top. Do not turn this engine over by kick or motor: check the heights, then prove them with solder, turning gently by hand.',
    );
  }
  if (v['squish-from'] === 'solder') {
    const sum = squishClearance(v.deck, v.gasket, 0);
    list.push(
      `Deck and gasket add up to ${showFixed(sum, 'mm', 2, lengths)}; the solder says ${showFixed(v.solder, 'mm', 2, lengths)}. The difference is the depth of the squish band in the head, or a reading to be taken again.`,
    );
  }
  const after = r['squish-after'];
  if (squish > 0 && typeof after === 'number' && after <= 0) {
    list.push('After the change asked about, crown and head would meet. Take off less.');
  }
  const left = r['squish-for'];
  if (squish > 0 && typeof left === 'number' && left <= 0) {
    list.push(
      'Skimming for the ratio wanted would let crown and head meet. The volume must come out of the bowl’s shape and not off this face; or ask for a lower ratio.',
    );
  }
  return list;
}
