import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertWithin } from '../numeric/within.ts';

/** Coils fed side by side through one wire, their points shut: a ladder with a single rung of each. */
export interface Supply {
  /** Volts at the battery while current flows, above 0. */
  readonly volts: number;
  /** Coils side by side, 0 or more. */
  readonly coils: number;
  /** Resistance of one coil with its ballast, Ω, above 0. */
  readonly ohms: number;
  /** Current of whatever else is on the same wire, A, 0 or more; taken to be drawn whatever comes. */
  readonly others: number;
}

/**
 * Current, A, that settles in a wire of `series` Ω (0 or more, contacts included) which feeds the
 * coils with all points shut. With the voltage left at the coils v: V = v + I·r, I = n·v/R + others.
 *
 * @throws MathsError `out-of-range`.
 */
export function settledCurrent({ volts, coils, ohms, others }: Supply, series: number): number {
  assertWithin(
    {
      quantity: 'volts',
      words: 'The voltage',
      unit: 'V',
      min: 0,
      above: true,
      why: 'Measure it at the battery.',
    },
    volts,
  );
  assertWithin(
    {
      quantity: 'coils',
      words: 'The number of coils',
      unit: '',
      min: 0,
      why: 'Count those that the wire feeds.',
    },
    coils,
  );
  assertWithin(
    {
      quantity: 'ohms',
      words: 'The resistance of a coil and its ballast',
      unit: 'ohm',
      min: 0,
      above: true,
      why: 'A coil without resistance is a short circuit.',
    },
    ohms,
  );
  assertWithin(
    {
      quantity: 'others',
      words: 'The other current',
      unit: 'A',
      min: 0,
      why: 'Give 0 if nothing else is on the wire.',
    },
    others,
  );
  assertWithin(
    {
      quantity: 'series',
      words: 'The resistance of wire and contacts',
      unit: 'ohm',
      min: 0,
      why: 'Give 0 for a wire without loss.',
    },
    series,
  );
  const conductance = coils / ohms;
  return (others + conductance * volts) / (1 + conductance * series);
}

/**
 * Per cent of the spark's energy that is left when only `left` of `full` volts (above 0) reach the
 * coil: the current of a coil goes with its volts at every moment of its charge, and the energy with
 * the square of the current.
 */
export const energyLeft = (left: number, full: number): number =>
  100 * (Math.max(0, left) / full) ** 2;

/**
 * Volts left of `volts` (above 0) after `current` A through `series` Ω.
 *
 * @throws MathsError `nothing-left` where the wire would take all of them.
 */
export function voltsLeft(volts: number, current: number, series: number): number {
  const left = volts - current * series;
  if (left > 0) return left;
  throw new MathsError(
    'nothing-left',
    ['current', 'others', 'length', 'contacts'],
    `Wire and contacts of ${sayNumber(series)} ohm cannot carry ${sayNumber(current)} A: at ${sayNumber(volts)} V no more than ${sayNumber(volts / series)} A would flow with nothing behind them. Measure current, length and contacts again.`,
  );
}
