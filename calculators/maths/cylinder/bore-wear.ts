/**
 * How round and straight a bore is, from readings at several heights and in two directions, and the next
 * oversize that takes the wear away. Lengths in mm.
 */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertWithin } from '../numeric/within.ts';

export interface BoreReadings {
  /** Diameters along the crank and across it, one for each height. */
  readonly along: readonly number[];
  readonly across: readonly number[];
}

export interface BoreWear {
  /** Across less along, for each height: positive where the bore is wider across the crank. */
  readonly ovals: readonly number[];
  /** The largest difference between the directions at one height. */
  readonly ovality: number;
  /** The largest difference between the heights in one direction. */
  readonly taper: number;
  readonly least: number;
  readonly widest: number;
}

const rangeOf = (readings: readonly number[]): number =>
  Math.max(...readings) - Math.min(...readings);

/** @throws MathsError `readings` unless each height has a reading in both directions. */
export function boreWear({ along, across }: BoreReadings): BoreWear {
  if (
    along.length === 0 ||
    along.length !== across.length ||
    [...along, ...across].some((reading) => !Number.isFinite(reading))
  ) {
    throw new MathsError(
      'readings',
      ['along', 'across'],
      'Each height needs a reading along the crank and one across it, in millimetres.',
    );
  }
  const ovals = across.map((reading, i) => reading - along[i]!);
  const all = [...along, ...across];
  return {
    ovals,
    ovality: Math.max(...ovals.map(Math.abs)),
    taper: Math.max(rangeOf(along), rangeOf(across)),
    least: Math.min(...all),
    widest: Math.max(...all),
  };
}

/** Rounding error of a sum of oversizes, in steps. */
const EPSILON = 1e-9;

export interface Oversize {
  /** Over the standard bore: a whole number of steps, 0 where the standard bore still holds. */
  readonly over: number;
  /** The bore after honing. */
  readonly bore: number;
}

/** Further from its standard size than this share of it no bore was ever honed: it is another barrel’s. */
const MOST_OVER = 0.1;

/**
 * Refuses a standard bore, above 0 mm, that is another barrel's.
 *
 * @throws MathsError `not-its-standard` where the largest reading is more than a tenth of it away.
 */
export function assertItsStandard(widest: number, standard: number): void {
  if (Math.abs(widest - standard) > MOST_OVER * standard) {
    throw new MathsError(
      'not-its-standard',
      ['standard'],
      `A bore of ${sayNumber(widest)} mm is no oversize of a standard bore of ${sayNumber(standard)} mm: none is bored a tenth over (common practice). Give the standard bore of this barrel.`,
    );
  }
}

/**
 * The smallest oversize whose bore takes away all wear.
 *
 * @param widest The largest reading.
 * @param standard The bore when it was new, above 0.
 * @param step From one oversize to the next, above 0.
 * @param cleanUp What boring and honing take off the widest place, on the diameter, 0 or more.
 */
export function nextOversize(
  widest: number,
  standard: number,
  step: number,
  cleanUp: number,
): Oversize {
  const why = 'Look at the parts list of the piston’s maker.';
  assertWithin(
    { quantity: 'standard', words: 'The standard bore', unit: 'mm', min: 0, above: true, why },
    standard,
  );
  assertWithin(
    { quantity: 'step', words: 'The step of the oversizes', unit: 'mm', min: 0, above: true, why },
    step,
  );
  assertWithin(
    {
      quantity: 'cleanUp',
      words: 'What honing takes off',
      unit: 'mm',
      min: 0,
      why: 'A few hundredths of a millimetre are usual.',
    },
    cleanUp,
  );
  const steps = Math.max(0, Math.ceil((widest + cleanUp - standard) / step - EPSILON));
  return { over: steps * step, bore: standard + steps * step };
}
