import { fieldUnit, type Ranged } from '../frame/field-unit.ts';
import { inputDigits, withUnit } from '../frame/format.ts';
import { toShown, type LengthDisplay, type UnitName } from '../frame/units.ts';

/**
 * The unit of a step's boxes. What is wanted, judged and written down of its readings is said in the
 * same, so that a figure may be typed as it stands beside its box.
 */
export const stepUnit = (reading: Ranged, lengths: LengthDisplay): UnitName =>
  fieldUnit(reading, lengths);

/** Whether a value has more digits than anybody types: then it was turned from another unit. */
const isTurned = (value: number): boolean => Number(value.toPrecision(5)) !== value;

/**
 * The digits of a reading in the unit of its box: those that it has as it was typed, or to a tenth of
 * its step where it was typed in another unit, since 1 psi is not known to be 6.8948 kPa.
 */
export function readingDigits(
  value: number,
  reading: Ranged & { readonly step: number },
  lengths: LengthDisplay,
): string {
  const unit = stepUnit(reading, lengths);
  const digits = inputDigits(value, unit, reading.step);
  if (!isTurned(value)) return digits.replace('-', '−');
  const places = Math.max(0, Math.round(-Math.log10(toShown(reading.step / 10, unit))));
  return String(Number(Number(digits).toFixed(places))).replace('-', '−');
}

/** The same with its unit. */
export const showReading = (
  value: number,
  reading: Ranged & { readonly step: number },
  lengths: LengthDisplay,
): string => withUnit(readingDigits(value, reading, lengths), stepUnit(reading, lengths));
