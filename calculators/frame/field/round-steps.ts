import { onStep } from '../../maths/numeric/steps.ts';
import { fieldUnit, type Ranged } from './field-unit.ts';
import { toShown, type LengthDisplay, type UnitName } from '../text/units.ts';

type Stepped = Ranged & { readonly step: number };

/** A field's step as a round figure of the unit shown: 0.05 mm is 2 thou. */
export const roundStep = ({ step }: Stepped, shown: UnitName): number =>
  Number(toShown(step, shown).toPrecision(1));

/**
 * Where a handle stops that is moved in millimetres while the field shows inches: on a round figure
 * of the unit shown, one step on at the least, within the range.
 *
 * @param value Where it was moved to, in the field's home unit.
 * @param from Where it stood, in the home unit; nothing where it stood nowhere.
 */
export function onRoundStep(
  value: number,
  from: number | undefined,
  spec: Stepped,
  lengths: LengthDisplay,
): number {
  const shown = fieldUnit(spec, lengths);
  if (shown === spec.unit) return value;
  const size = roundStep(spec, shown);
  const perHome = toShown(1, shown);
  let stop = onStep(value * perHome, size);
  if (from !== undefined && value !== from && Math.abs(stop - from * perHome) < size / 2) {
    stop = onStep(from * perHome + Math.sign(value - from) * size, size);
  }
  return Math.min(spec.max, Math.max(spec.min, stop / perHome));
}
