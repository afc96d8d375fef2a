import { fieldUnit, type Ranged } from '../frame/field-unit.ts';
import { inputDigits, showIn, withUnit } from '../frame/format.ts';
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
 * A reading in the unit of its box, with the digits that it has: as it was typed, or to a tenth of
 * its step where it was typed in another unit, since 1 psi is not known to be 6.8948 kPa.
 */
export function showReading(
  value: number,
  reading: Ranged & { readonly step: number },
  lengths: LengthDisplay,
): string {
  const unit = stepUnit(reading, lengths);
  if (!isTurned(value)) return showIn(value, unit, reading.step);
  const places = Math.max(0, Math.round(-Math.log10(toShown(reading.step / 10, unit))));
  const digits = Number(inputDigits(value, unit, reading.step)).toFixed(places);
  return withUnit(String(Number(digits)).replace('-', '−'), unit);
}
