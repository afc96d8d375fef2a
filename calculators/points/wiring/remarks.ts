import { attempt } from '../../frame/attempt.ts';
import { decimalsApart, fixed, inputDigits } from '../../frame/text/format.ts';
import { Absent, type Known, type Remark } from '../../frame/types.ts';
import { noSurer } from '../../frame/text/no-surer.ts';
import { orAssumed, whoseLimit } from '../../frame/whose-limit.ts';
import { standardWithin, STANDARD_WIRES } from '../../maths/wiring/wire.ts';
import {
  atVolts,
  fuseOf,
  lostInContacts,
  SIDES,
  wayThrough,
  wireFor,
  type Computed,
  type Values,
} from './compute.ts';

const size = (area: number): string => `${inputDigits(area, 'wire')} mm²`;
const rating = (amperes: number): string => `${inputDigits(amperes, 'A')} A`;

/** What the size may lose by its standard, where the typed copper is within the loss and that is not. */
function ofThePoorest(v: Values): string {
  const sold = standardWithin(v.area);
  if (sold === undefined || sold.area < v.area * 0.999) return '';
  const { percent } = wayThrough(v, sold);
  return percent > v.loss
    ? ` A wire sold as ${size(sold.area)} may have less copper, or poorer, and lose ${fixed(percent, decimalsApart(percent, v.loss, 1))} per cent by its standard: only one size more is sure.`
    : '';
}

function ofTheLoss(v: Values, computed: Computed, known: Known): string {
  const percent = computed['drop-percent'] as number;
  const energy = 100 - (computed['energy-left'] as number);
  const places = decimalsApart(percent, v.loss, 1);
  const unsure = noSurer(percent - v.loss, known.spreads['drop-percent']);
  const allowed = `the ${fixed(v.loss, places)} per cent of volts ${whoseLimit(known, 'loss')}`;
  const takes = `Wire and contacts take ${fixed(percent, places)} per cent of the volts and ${fixed(energy, 0)} per cent of the spark’s energy`;
  return percent <= v.loss
    ? `${takes}, within ${allowed}.${unsure}${ofThePoorest(v)}`
    : `${takes}, more than ${allowed}.${unsure}`;
}

function ofTheContacts(v: Values, computed: Computed, known: Known): string | undefined {
  const inContacts = ((computed.load as number) * v.contacts) / 1000;
  const drop = computed.drop as number;
  if (lostInContacts(v) > v.loss) {
    return `Switch, fuse and joints alone lose more than the ${fixed(v.loss, 1)} per cent ${whoseLimit(known, 'loss')}, whatever the wire. Clean them, renew the switch, or let it work a relay beside the battery that feeds the coils.`;
  }
  return inContacts > drop / 2 && (computed['drop-percent'] as number) > v.loss
    ? `Over the loss${orAssumed(known, 'loss')}, and ${fixed(inContacts, 2)} V of the ${fixed(drop, 2)} V are lost in switch, fuse and joints: clean those before you buy wire.`
    : undefined;
}

function ofTheGuard(v: Values, computed: Computed, known: Known): string | undefined {
  if (computed.fuse instanceof Absent) return undefined;
  const fuse = computed.fuse as number;
  const load = known.isAssumed('fuse-load') ? ` (load ${fixed(v['fuse-load'], 0)}% assumed)` : '';
  const fitted = standardWithin(v.area);
  if (fitted === undefined) {
    return `The wire of ${size(v.area)} is thinner than any that is made for it, and the fuse of ${rating(fuse)}${load} does not guard it: it would burn first.`;
  }
  return fitted.bears < fuse
    ? `A wire of ${size(fitted.area)} bears ${rating(fitted.bears)}. The fuse of ${rating(fuse)}${load} does not guard it: in a short the wire burns first. Fit a thicker wire, never a larger fuse.`
    : `The fuse of ${rating(fuse)}${load} guards a wire of ${size(fitted.area)}, which bears ${rating(fitted.bears)}.`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  { about: 'whether the way loses too much', say: () => ofTheLoss(v, computed, known) },
  {
    about: 'whether the contacts are at fault',
    quiet: true,
    say: () => ofTheContacts(v, computed, known),
  },
  { about: 'whether the fuse guards the wire', say: () => ofTheGuard(v, computed, known) },
  {
    about: 'how long it may be left on',
    say: () =>
      `Left on with all points shut it draws up to ${fixed((computed['shut-current'] as number) + v.others, 1)} A, what the wire itself holds back left out, and every coil heats. Turn the engine until the points are open, or switch off.`,
  },
  {
    about: 'coils with two leads',
    quiet: true,
    say: () =>
      v.leads === 'two'
        ? 'The spark of such a coil goes out through one plug and home through the other. With one lead off, neither plug fires, and the high tension looks for a way through the coil itself: common practice. For every test earth both plugs by their bodies, or switch off.'
        : undefined,
  },
  {
    about: 'whether a coil wants a ballast',
    quiet: true,
    say: () => {
      const wanted = computed['ballast-for'] as number;
      return wanted > v.ballast
        ? `A coil would draw more than the ${fixed(v['current-limit'], 1)} A ${whoseLimit(known, 'current-limit')}. A ballast of ${fixed(wanted, 1)} Ω before each holds it to that.`
        : undefined;
    },
  },
];

/** What a standard size is good for. */
export function ofSize(v: Values, index: number): string {
  const wire = STANDARD_WIRES[index - 1]!;
  const fuse = attempt(() => fuseOf(v));
  if (fuse instanceof Absent) return 'no blade fuse carries this current';
  const { percent } = wayThrough(v, wire);
  if (wire.bears < fuse) return 'fuse too large';
  if (percent > v.loss) return 'loses too much';
  const smallest = attempt(() => wireFor(v, fuse));
  return !(smallest instanceof Absent) && smallest.area === wire.area
    ? 'the smallest that will do'
    : 'will do';
}

/** Fuse and wire at one of the two voltages. */
export function ofSide(v: Values, index: number): string {
  const other = atVolts(v, SIDES[index - 1]!);
  const fuse = attempt(() => fuseOf(other));
  if (fuse instanceof Absent) return 'no blade fuse carries this current';
  const wire = attempt(() => wireFor(other, fuse));
  return wire instanceof Absent
    ? `fuse of ${rating(fuse)}; no wire loses so little${lostInContacts(other) > v.loss ? ', the contacts alone take more' : ''}`
    : `fuse of ${rating(fuse)}, wire of ${size(wire.area)}`;
}
