import {
  fractionAtLift,
  normalisedLift,
  normalisedSlope,
  type LiftProfile,
} from './cam-profile.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/**
 * A breaker cam with equal lobes, equally spaced, each alike on both sides of its middle: closed
 * part, rise, top, and a fall that mirrors the rise.
 *
 * The heel rests on the base circle over the closed part. The set is fastened so that its contacts
 * stand `gap` apart with the heel on the top of a lobe; at any other place they stand
 * `gap − (lift − lift there)` apart, and where that is nothing or less they are shut. They open
 * therefore where the lobe has lifted them by `lift − gap`, and a wider gap opens them earlier.
 */
export interface BreakerCam {
  /** Lobes on the cam, a whole number, 1 or more. */
  readonly lobes: number;
  /** Turns of the cam for one turn of the crank: 1 or 0.5 as a rule, any figure above 0. */
  readonly speedRatio: number;
  /** Full lift, mm, measured at the contacts (not at the heel), above 0. */
  readonly lift: number;
  /** Cam degrees from the foot of the flank to full lift. */
  readonly rise: number;
  /** Cam degrees over which the lobe holds full lift; 0 for a pointed lobe. */
  readonly top: number;
  readonly profile: LiftProfile;
}

/** Cam degrees from the middle of one lobe to the middle of the next. */
export function lobePitch(cam: Pick<BreakerCam, 'lobes'>): number {
  return 360 / cam.lobes;
}

/** Cam degrees over which the heel runs on the base circle between two lobes. */
export function basePart(cam: BreakerCam): number {
  return lobePitch(cam) - 2 * cam.rise - cam.top;
}

/** Throws unless the number of lobes is a whole number, 1 or more. */
function assertLobes(lobes: number): void {
  if (!Number.isInteger(lobes) || lobes < 1) {
    throw new MathsError(
      'lobes',
      ['lobes'],
      `A breaker cam has a whole number of lobes, 1 or more, and ${sayNumber(lobes)} is not one. Count the humps in one turn of the cam.`,
    );
  }
}

/** Throws unless the cam turns a positive number of times for one turn of the crank. */
export function assertSpeedRatio(speedRatio: number): void {
  if (!(speedRatio > 0 && speedRatio < Infinity)) {
    throw new MathsError(
      'speed-ratio',
      ['speedRatio'],
      'The cam must turn with the crank: give the turns of the cam for one turn of the crank, above 0. It is 1 on the crankshaft and 0.5 on a half-speed shaft.',
    );
  }
}

/** Throws a sentence for the user when the figures describe no cam that could be made. */
export function assertCam(cam: BreakerCam): void {
  assertLobes(cam.lobes);
  assertSpeedRatio(cam.speedRatio);
  if (!(cam.lift > 0 && cam.lift < Infinity)) {
    throw new MathsError(
      'lift',
      ['lift'],
      'The lift at the contacts must be above 0 mm: without lift the points never move. Set an indicator on the moving contact and turn the cam from its low part to its top.',
    );
  }
  const pitch = lobePitch(cam);
  if (!(cam.rise > 0 && cam.rise <= pitch / 2)) {
    throw new MathsError(
      'rise',
      ['rise', 'lobes'],
      `The rise must be above 0 and at most ${sayNumber(pitch / 2)} cam degrees, half the ${sayNumber(pitch)}° from one lobe to the next, because the fall takes as much again. Shorten the rise, or count the lobes again.`,
    );
  }
  if (!(cam.top >= 0)) {
    throw new MathsError(
      'top',
      ['top'],
      'The top of the lobe cannot cover less than 0 cam degrees. Give 0 if the lobe comes to a point.',
    );
  }
  if (basePart(cam) < -1e-9) {
    throw new MathsError(
      'lobes-overlap',
      ['rise', 'top', 'lobes'],
      `Rise, top and fall together take ${sayNumber(2 * cam.rise + cam.top)} cam degrees, and ${String(cam.lobes)} ${cam.lobes === 1 ? 'lobe leaves' : 'lobes leave'} only ${sayNumber(pitch)}° for each, so this lobe would run into the next. With this rise the top can be at most ${sayNumber(pitch - 2 * cam.rise)}°; shorten one of them or count the lobes again.`,
    );
  }
}

/** Throws unless the gap lies above 0 and below the full lift, so that the points open and shut. */
export function assertGap(cam: Pick<BreakerCam, 'lift'>, gap: number): void {
  if (!(gap > 0)) {
    throw new MathsError(
      'never-open',
      ['gap'],
      `With no gap at full lift the points never open and there is no spark. The gap must be above 0 and below the lift of ${sayNumber(cam.lift)} mm.`,
    );
  }
  if (!(gap < cam.lift)) {
    throw new MathsError(
      'never-close',
      ['gap', 'lift'],
      `A gap of ${sayNumber(gap)} mm is not less than the lift of ${sayNumber(cam.lift)} mm, so the points never shut and no current flows. Set a gap above 0 and below ${sayNumber(cam.lift)} mm, or measure the lift again at the contacts.`,
    );
  }
}

/** Signed cam degrees, −pitch/2 to +pitch/2, from the middle of the nearest lobe. */
function fromNearestLobe(cam: BreakerCam, camAngle: number): number {
  const pitch = lobePitch(cam);
  return camAngle - pitch * Math.round(camAngle / pitch);
}

/**
 * Lift at the contacts, mm above the base circle, at `camAngle` degrees from the middle of a lobe
 * (any real number).
 */
export function liftAt(cam: BreakerCam, camAngle: number): number {
  const beyondTop = Math.abs(fromNearestLobe(cam, camAngle)) - cam.top / 2;
  if (beyondTop <= 0) return cam.lift;
  if (beyondTop >= cam.rise) return 0;
  return cam.lift * normalisedLift(cam.profile, 1 - beyondTop / cam.rise);
}

/** How far the contacts stand apart, mm, at `camAngle` from the middle of a lobe; 0 when shut. */
export function openingAt(cam: BreakerCam, gap: number, camAngle: number): number {
  return Math.max(0, liftAt(cam, camAngle) - (cam.lift - gap));
}

function openingFraction(cam: BreakerCam, gap: number): number {
  assertCam(cam);
  assertGap(cam, gap);
  return fractionAtLift(cam.profile, (cam.lift - gap) / cam.lift);
}

/**
 * Cam degrees before the middle of the lobe at which the points open, with `gap` mm at full lift.
 * Throws for a gap that is not above 0 and below the lift.
 */
export function opensBefore(cam: BreakerCam, gap: number): number {
  return cam.top / 2 + cam.rise * (1 - openingFraction(cam, gap));
}

/** Cam degrees per lobe over which the points stand open. */
export function openAngle(cam: BreakerCam, gap: number): number {
  return 2 * opensBefore(cam, gap);
}

/** Cam degrees per lobe over which the points are shut: the lobe pitch less the open angle. */
export function dwellAngle(cam: BreakerCam, gap: number): number {
  return lobePitch(cam) - openAngle(cam, gap);
}

/** Dwell as per cent of the lobe pitch. */
export function dwellPercent(cam: BreakerCam, gap: number): number {
  return (100 * dwellAngle(cam, gap)) / lobePitch(cam);
}

/**
 * Crank degrees by which the opening comes earlier for each mm of wider gap. It is the slope at
 * this very gap (a derivative), so a small change of gap is this figure times the change; over a
 * large change the curve bends and `opensBefore` of both gaps tells more.
 */
export function crankDegreesPerGap(cam: BreakerCam, gap: number): number {
  const slope = normalisedSlope(cam.profile, openingFraction(cam, gap));
  return cam.rise / (cam.lift * slope) / cam.speedRatio;
}

/**
 * The gap, mm, that gives `dwell` cam degrees of dwell. It exists for a dwell above the part on
 * the base circle (there the gap is the whole lift) and below the pitch less the top (there the
 * gap is nothing); throws outside that.
 */
export function gapForDwell(cam: BreakerCam, dwell: number): number {
  assertCam(cam);
  const pitch = lobePitch(cam);
  if (!(dwell < pitch)) {
    throw new MathsError(
      'dwell-beyond-pitch',
      ['dwell', 'lobes'],
      `A dwell of ${sayNumber(dwell)}° is not less than the ${sayNumber(pitch)}° from one lobe to the next, so the points would never open. Give the dwell in cam degrees, or count the lobes again.`,
    );
  }
  const shortest = basePart(cam);
  const longest = pitch - cam.top;
  if (!(dwell > shortest && dwell < longest)) {
    throw new MathsError(
      'dwell-out-of-reach',
      ['dwell', 'rise', 'top'],
      `No gap gives this cam a dwell of ${sayNumber(dwell)}°: it can be set between ${sayNumber(shortest)}°, where the gap is the whole lift, and ${sayNumber(longest)}°, where there is no gap left. Choose a dwell between the two, or measure rise and top again.`,
    );
  }
  const beyondTop = (pitch - dwell - cam.top) / 2;
  return cam.lift * (1 - normalisedLift(cam.profile, 1 - beyondTop / cam.rise));
}
