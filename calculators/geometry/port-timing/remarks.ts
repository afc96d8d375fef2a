import { showFixed } from '../../frame/text/format.ts';
import type { ComputedOf, Known, Remark } from '../../frame/types.ts';
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

type Computed = ComputedOf<typeof results>;

const remarkOnPort = (r: Computed, index: number, { lengths }: Known): Remark => ({
  about: `whether the ${portName(index + 1).toLowerCase()} opens fully`,
  say: () => {
    const by = (r.clears as readonly number[])[index]!;
    return by < 0
      ? `${portName(index + 1)}: at the bottom the crown leaves ${showFixed(-by, 'mm', 1, lengths)} of the port covered, so that it never opens fully. Check that piston, barrel and base gasket belong together.`
      : undefined;
  },
});

export const remarks = (v: Values, r: Computed, known: Known): readonly Remark[] => [
  {
    about: 'whether the exhaust opens first',
    leads: true,
    say: () =>
      (single(r.blowdown) ?? 0) <= 0
        ? 'The transfer opens before the exhaust, or with it: burnt gas under full pressure would blow into the crankcase. Measure both edges again. If they are right, this barrel and piston must not run together.'
        : undefined,
  },
  ...Array.from({ length: v.ports }, (_, index) => remarkOnPort(r, index, known)),
  {
    about: 'whether the skirt keeps the exhaust shut',
    leads: true,
    say: () => {
      const cover = single(r['skirt-cover']) ?? 0;
      return cover < 0
        ? `At the top the skirt ends ${showFixed(-cover, 'mm', 1, known.lengths)} above the exhaust’s bottom edge, so that the exhaust opens into the crankcase. Unless the maker meant it so, this is the wrong piston for the barrel.`
        : undefined;
    },
  },
  {
    about: 'whether the inlet opens fully',
    say: () => {
      const clear = single(r['inlet-clears']) ?? 0;
      return clear < 0
        ? `At the top the skirt leaves ${showFixed(-clear, 'mm', 1, known.lengths)} of the inlet covered, so that it never opens fully. Check that piston, barrel and base gasket belong together, and that the skirt was measured where it is cut away.`
        : undefined;
    },
  },
  {
    about: 'what the change asked about does',
    quiet: true,
    say: () => {
      if (v.by === 0) return undefined;
      const squish =
        v.change === 'barrel'
          ? ` The squish clearance ${v.by > 0 ? 'grows' : 'shrinks'} by just as much${v.by > 0 ? '' : ', and the piston may strike the head'}: prove it again, and deck, compression and joint with it. Every port of the barrel moves together.`
          : v.change === 'exhaust'
            ? ' A higher exhaust traps less: work out the trapped compression anew.'
            : '';
      return `“After the change” stands for: ${changes[v.change]} by ${showFixed(v.by, 'mm', 2, known.lengths)}.${squish}`;
    },
  },
  {
    about: 'whether the ports are timed alike both ways',
    say: () =>
      v.offset !== 0
        ? 'With a pin offset the ports are not timed symmetrically about bottom dead centre: read opening and closing apart.'
        : undefined,
  },
];
