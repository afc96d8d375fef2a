import { fieldUnit, type Ranged } from '../frame/field/field-unit.ts';
import { inputDigits, isTurned, placesOfTenth, withUnit } from '../frame/text/format.ts';
import { toShown, type LengthDisplay, type UnitName } from '../frame/text/units.ts';

/**
 * The unit of a step's boxes. What is wanted, judged and written down of its readings is said in the
 * same, so that a figure may be typed as it stands beside its box.
 */
export const stepUnit = (reading: Ranged, lengths: LengthDisplay): UnitName =>
  fieldUnit(reading, lengths);

/**
 * The digits of a figure in `unit`: those that it has as it was typed, or to a tenth of its step where
 * it was typed in another unit, since 1 psi is not known to be 6.8948 kPa, nor 16 thou to be 0.4064 mm.
 */
export function toldDigits(value: number, unit: UnitName, step: number): string {
  const digits = inputDigits(value, unit, step);
  if (!isTurned(value, unit)) return digits.replace('-', '−');
  return String(Number(Number(digits).toFixed(placesOfTenth(toShown(step, unit))))).replace(
    '-',
    '−',
  );
}

/** The digits of a reading in the unit of its box. */
export const readingDigits = (
  value: number,
  reading: Ranged & { readonly step: number },
  lengths: LengthDisplay,
): string => toldDigits(value, stepUnit(reading, lengths), reading.step);

/** The same with its unit. */
export const showReading = (
  value: number,
  reading: Ranged & { readonly step: number },
  lengths: LengthDisplay,
): string => withUnit(readingDigits(value, reading, lengths), stepUnit(reading, lengths));
