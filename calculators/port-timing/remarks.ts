import { showFixed } from '../frame/format.ts';
import type { ComputedOf, Known } from '../frame/types.ts';
import type { Values } from './compute.ts';
import { portName } from './inputs.ts';
import type { results } from './results.ts';

const changes = {
  barrel: 'barrel raised',
  exhaust: 'exhaust cut higher',
  transfers: 'transfers cut higher',
  inlet: 'inlet cut lower',
} as const;

const single = (value: unknown): number | undefined =>
  typeof value === 'number' ? value : undefined;

export function remarks(
  v: Values,
  r: ComputedOf<typeof results>,
  { lengths }: Known,
): readonly string[] {
  const say = (mm: number, decimals: number): string => showFixed(mm, 'mm', decimals, lengths);
  const list: string[] = [];
  const blowdown = single(r.blowdown) ?? 0;
  if (blowdown <= 0) {
    list.push(
      'The transfer opens before the exhaust, or with it: burnt gas under full pressure would blow into the crankcase. Measure both edges again. If they are right, this barrel and piston must not run together.',
    );
  }
  const clears = r.clears as readonly number[];
  clears.forEach((by, index) => {
    if (by < 0) {
      list.push(
        `${portName(index + 1)}: at the bottom the crown leaves ${say(-by, 1)} of the port covered, so that it never opens fully. Check that piston, barrel and base gasket belong together.`,
      );
    }
  });
  const cover = single(r['skirt-cover']) ?? 0;
  if (cover < 0) {
    list.push(
      `At the top the skirt ends ${say(-cover, 1)} above the exhaust’s bottom edge, so that the exhaust opens into the crankcase. Unless the maker meant it so, this is the wrong piston for the barrel.`,
    );
  }
  if (v.by !== 0) {
    const squish =
      v.change === 'barrel' ? ' The squish clearance changes by just as much: prove it again.' : '';
    list.push(`“After the change” stands for: ${changes[v.change]} by ${say(v.by, 2)}.${squish}`);
  }
  if (v.offset !== 0) {
    list.push(
      'With a pin offset the ports are not timed symmetrically about bottom dead centre: read opening and closing apart.',
    );
  }
  return list;
}
