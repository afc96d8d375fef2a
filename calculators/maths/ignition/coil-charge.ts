import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/**
 * The primary of a battery-and-coil ignition: voltage, winding, ballast resistor and inductance in
 * one loop that the points close. While they are shut the current grows from nothing as
 * `V/R·(1 − e^(−t/τ))` with `τ = L/R` (any text of circuit theory; for an ignition coil,
 * C. K. Alexander and M. N. O. Sadiku, *Fundamentals of Electric Circuits*, chapter 7). The
 * inductance is taken as constant; an iron core near saturation has less.
 */
export interface Primary {
  /** Volts at the coil's feed while current flows, above 0. */
  readonly volts: number;
  /** Resistance of the primary winding, ohm, above 0. */
  readonly resistance: number;
  /** Ballast resistor and leads in series with it, ohm, 0 or more. */
  readonly ballast: number;
  /** Inductance of the primary, mH, above 0. */
  readonly inductance: number;
}

/** Throws a sentence for the user when the figures describe no working primary circuit. */
export function assertPrimary(primary: Primary): void {
  if (!(primary.volts > 0 && primary.volts < Infinity)) {
    throw new MathsError(
      'volts',
      ['volts'],
      'The voltage at the coil must be above 0 V. Measure it at the coil with the points shut, since a flat battery and old wiring lose some.',
    );
  }
  if (!(primary.resistance > 0 && primary.resistance < Infinity)) {
    throw new MathsError(
      'resistance',
      ['resistance'],
      'The resistance of the primary winding must be above 0 ohm. Measure it across the two low-tension terminals with the wires off, and take off what the meter shows with its leads held together.',
    );
  }
  if (!(primary.ballast >= 0 && primary.ballast < Infinity)) {
    throw new MathsError(
      'ballast',
      ['ballast'],
      'The ballast resistance must be 0 ohm or more. Give 0 if there is no ballast resistor.',
    );
  }
  if (!(primary.inductance > 0 && primary.inductance < Infinity)) {
    throw new MathsError(
      'inductance',
      ['inductance'],
      'The inductance must be above 0 mH: without inductance a coil stores nothing. Ignition coils for points have some 2 to 15 mH.',
    );
  }
}

/** Throws unless the speed of the crank is above 0. */
export function assertSpeed(rpm: number): void {
  if (!(rpm > 0 && rpm < Infinity)) {
    throw new MathsError(
      'rpm',
      ['rpm'],
      'The speed of the crank must be above 0 rpm: an engine that stands gives no sparks.',
    );
  }
}

/** Throws unless the dwell is above 0 and below the pitch of the lobes, 360°/lobes. */
export function assertDwell(dwell: number, lobes: number): void {
  const pitch = 360 / lobes;
  if (!(dwell > 0 && dwell < pitch)) {
    throw new MathsError(
      'dwell-beyond-pitch',
      ['dwellAngle', 'lobes'],
      `The dwell must be above 0 and below ${sayNumber(pitch)} cam degrees, the pitch of ${String(lobes)} ${lobes === 1 ? 'lobe' : 'lobes'}: the points have to open once for every lobe. Give it in degrees of the cam, or count the lobes again.`,
    );
  }
}

/** Ohms in the whole loop. */
function loopResistance(primary: Primary): number {
  return primary.resistance + primary.ballast;
}

/** The current it would reach if the points stayed shut, A. */
export function finalCurrent(primary: Primary): number {
  return primary.volts / loopResistance(primary);
}

/** Time constant L/R of the loop, ms: after so long the current has 63 per cent of its final value. */
export function timeConstant(primary: Primary): number {
  return primary.inductance / loopResistance(primary);
}

/**
 * Time the points are shut, ms, for a dwell of `dwell` cam degrees with the crank at `rpm` and the
 * cam at `speedRatio` turns to one of the crank.
 */
export function chargeTime(dwell: number, speedRatio: number, rpm: number): number {
  const camDegreesPerMillisecond = (360 * rpm * speedRatio) / 60_000;
  return dwell / camDegreesPerMillisecond;
}

/** Current, A, after the points have been shut for `time` ms (0 or more). */
export function currentAfter(primary: Primary, time: number): number {
  return -finalCurrent(primary) * Math.expm1(-time / timeConstant(primary));
}

/** Energy in the coil, mJ, at a current of `current` A. */
export function storedEnergy(primary: Primary, current: number): number {
  return (primary.inductance * current ** 2) / 2;
}

/**
 * Crank speed, rpm, above which the points open before the current has reached `share` (between 0
 * and 1) of its final value.
 */
export function speedAtShare(
  primary: Primary,
  dwell: number,
  speedRatio: number,
  share: number,
): number {
  if (!(share > 0 && share < 1)) {
    throw new MathsError(
      'share',
      ['share'],
      'The share of the final current must be above 0 and below 100 per cent: the current creeps towards its final value and never quite reaches it.',
    );
  }
  const time = -timeConstant(primary) * Math.log1p(-share);
  return chargeTime(dwell, speedRatio, 1) / time;
}

/**
 * The least ballast, ohm, that keeps the final current from passing `limit` A (above 0); 0 when the
 * winding alone does.
 */
export function ballastForCurrent(primary: Omit<Primary, 'ballast'>, limit: number): number {
  if (!(limit > 0)) {
    throw new MathsError(
      'current-limit',
      ['limit'],
      'The current allowed must be above 0 A, since without current there is no spark.',
    );
  }
  return Math.max(0, primary.volts / limit - primary.resistance);
}

/**
 * The highest voltage the primary can swing to when the points break `current` A: all the energy
 * of an `inductance` of so many mH in a condenser of `capacitance` µF (above 0), V. The secondary
 * takes its share, so that the swing stays below this.
 */
export function highestSwing(current: number, inductance: number, capacitance: number): number {
  if (!(capacitance > 0)) {
    throw new MathsError(
      'capacitance',
      ['capacitance'],
      'The condenser must have more than 0 µF: without one the points arc and the energy burns there.',
    );
  }
  return current * Math.sqrt((1000 * inductance) / capacitance);
}

/** Sparks a minute from one set of points. */
export function sparksPerMinute(lobes: number, speedRatio: number, rpm: number): number {
  return lobes * speedRatio * rpm;
}

/**
 * Mean current, A, with the points shut for `time` out of every `period` ms and the current starting
 * from nothing each time: what an ammeter shows of a running coil. What flows after the points open
 * comes from the coil and the condenser, not from the battery.
 */
export function meanCurrent(primary: Primary, time: number, period: number): number {
  const tau = timeConstant(primary);
  const ratio = time / tau;
  // Integral of 1 − e^(−x) from 0 to ratio.
  const shape = ratio + Math.expm1(-ratio);
  return (finalCurrent(primary) * tau * shape) / period;
}

/**
 * Mean heat in the winding itself, W, with the points shut for `time` out of every `period` ms and
 * the current starting from nothing each time. With the engine stopped and the points shut it is
 * `stoppedHeat`.
 */
export function meanHeat(primary: Primary, time: number, period: number): number {
  const tau = timeConstant(primary);
  const ratio = time / tau;
  // Integral of (1 − e^(−x))² from 0 to ratio.
  const shape = ratio + 2 * Math.expm1(-ratio) - Math.expm1(-2 * ratio) / 2;
  return (primary.resistance * finalCurrent(primary) ** 2 * tau * shape) / period;
}

/** Heat in the winding, W, when the ignition is left on with the points shut. */
export function stoppedHeat(primary: Primary): number {
  return primary.resistance * finalCurrent(primary) ** 2;
}
