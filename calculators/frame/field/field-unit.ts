import { displayUnit, type LengthDisplay, type UnitName } from '../text/units.ts';

/** What decides in which unit a field is shown. */
export interface Ranged {
  readonly unit: UnitName;
  readonly min: number;
  readonly max: number;
  readonly step?: number;
  readonly whole?: boolean | undefined;
  /** Whether it is often stamped on the part in hundredths of a millimetre. */
  readonly stamped?: boolean | undefined;
  /** Whether engines are so alike in it that ten times as much is a slip of the point. */
  readonly alike?: boolean | undefined;
  /** The ± of a reading: small whatever its range. */
  readonly isError?: boolean | undefined;
}

/** Steps no coarser than this are those of gaps, clearances and jets, mm. */
const FINE_STEP = 0.05;
/** A range that ends here is no length of an engine, and two digits of thou hold what is in it, mm. */
const SHORT_RANGE = 20;

/**
 * The unit printed beside a field, in which a bare number typed there is meant. Where lengths are
 * shown in inches, a small length set in fine steps (a gap, a clearance, a jet, a ±) is in thou, as
 * feeler gauges are marked. It hangs on the field alone: a unit that changed with the figure would
 * change its meaning while it is typed.
 */
export function fieldUnit(spec: Ranged, lengths: LengthDisplay): UnitName {
  const shown = displayUnit(spec.unit, lengths);
  if (spec.unit !== 'mm' || shown === 'mm') return shown;
  const fine = spec.step !== undefined && spec.step <= FINE_STEP;
  return fine && (spec.isError === true || spec.max <= SHORT_RANGE) ? 'thou' : shown;
}
