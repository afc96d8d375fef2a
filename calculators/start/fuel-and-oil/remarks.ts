import { decimalsApart, fixed } from '../../frame/text/format.ts';
import type { Remark } from '../../frame/types.ts';
import { ratioOf, type Computed, type Values } from './compute.ts';

/** What a topped-up tank comes to against the ratio wanted. */
function ofTheTank(v: Values, computed: Computed): string | undefined {
  if (v.already === 0) return undefined;
  const ratio = ratioOf(v);
  const mixed = computed['mixed-ratio'] as number;
  if (mixed > ratio * 1.02) {
    return `With oil for the new petrol only, the tank comes to ${fixed(mixed, 1)} to 1: less oil than wanted, since what was there had less. Use the oil that brings all to the ratio.`;
  }
  return mixed < ratio / 1.02
    ? `With oil for the new petrol only, the tank comes to ${fixed(mixed, 1)} to 1: a little more oil than wanted, which smokes but does no harm.`
    : 'What was there and what is put in agree, near enough.';
}

/** The least oil that engines run on which take it with their petrol, in parts of petrol (common practice). */
const LEAST_OIL = 100;

/** A caution where a ratio has so little oil that a digit too many is likelier; nothing where it has not. */
const tooLittle = (ratio: number, what: (figures: string) => string): string | undefined =>
  ratio > LEAST_OIL
    ? `${what(`${fixed(ratio, decimalsApart(ratio, LEAST_OIL, 0))} to 1`)} less oil than engines are run on. The leanest ratios in use are near ${String(LEAST_OIL)} to 1 (common practice). See whether it has a digit too many before you mix: an engine without oil seizes.`
    : undefined;

/** The most oil that engines run on, in parts of petrol (common practice): more is likelier a ratio typed as per cent. */
const MOST_OIL = 10;

/** A caution where there is so much oil that it is likelier to be another way of telling it. */
function tooMuch(v: Values): string | undefined {
  const ratio = ratioOf(v);
  if (ratio >= MOST_OIL) return undefined;
  const so =
    v.by === 'percent'
      ? `${fixed(v.percent, 1)} per cent is ${fixed(ratio, 1)} to 1:`
      : `${fixed(ratio, 1)} to 1 is`;
  const remedy =
    v.by === 'percent'
      ? 'If it is a ratio, choose Ratio above.'
      : 'If it is per cent, choose that above.';
  return `${so} more oil than engines are run on. From 16 to 50 to 1 is common practice. ${remedy}`;
}

/** More petrol than is mixed at once for such an engine, litres. */
const MUCH_PETROL = 100;

export const remarks = (v: Values, computed: Computed): readonly Remark[] => [
  {
    about: 'whether there is too much oil',
    quiet: true,
    leads: true,
    say: () => tooMuch(v),
  },
  {
    about: 'whether so much is mixed at once',
    quiet: true,
    leads: true,
    say: () =>
      v.fuel > MUCH_PETROL
        ? `That is oil for ${fixed(v.fuel, 0)} litres of petrol, more than is mixed at once. Millilitres are typed as ml.`
        : undefined,
  },
  {
    about: 'whether it is oil enough',
    leads: true,
    say: () => tooLittle(ratioOf(v), (figures) => `${figures} is`),
  },
  {
    about: 'whether the tank has oil enough',
    leads: true,
    say: () =>
      v.already === 0
        ? undefined
        : tooLittle(v['already-ratio'], (figures) => `The mix in the tank, ${figures}, has`),
  },
  {
    about: 'how to mix it',
    say: () =>
      v.already === 0
        ? `Half of the petrol into a clean can, then all of the oil, and shake; then the rest of the petrol, and shake again. ${fixed(1000 / ratioOf(v), 0)} ml goes to every litre.`
        : undefined,
  },
  { about: 'what the tank comes to', say: () => ofTheTank(v, computed) },
  {
    about: 'where to mix it',
    say: () =>
      v.already === 0
        ? undefined
        : 'Mix in a can, not in the tank: oil that sinks to the tap blocks the first jet it meets, and the engine then runs on petrol alone.',
  },
];
