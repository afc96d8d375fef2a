import { assertGap, dwellAngle, opensBefore, type BreakerCam } from './breaker-cam.ts';
import { normalisedLift } from './cam-profile.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/**
 * Wear of the heel that rides on the breaker cam. Every tenth of a millimetre off the heel lets
 * the moving contact come back by that tenth times the lever ratio, all the way round, so the gap
 * narrows by as much: the points open later and stay shut longer. Contacts that burn away work
 * the other way; that is not counted here.
 */
export interface HeelWear {
  /** Movement at the contacts for 1 mm of movement at the heel, above 0. */
  readonly leverRatio: number;
  /** Wear of the heel, mm for one unit of running (an hour, a kilometre), 0 or more. */
  readonly rate: number;
}

/** Throws unless the lever ratio is above 0. */
export function assertLeverRatio(leverRatio: number): void {
  if (!(leverRatio > 0 && leverRatio < Infinity)) {
    throw new MathsError(
      'lever-ratio',
      ['leverRatio'],
      'The lever ratio must be above 0: it is the distance from pivot to contacts divided by the distance from pivot to heel. Give 1 if you have not measured it.',
    );
  }
}

function assertWear(wear: HeelWear): void {
  assertLeverRatio(wear.leverRatio);
  if (!(wear.rate >= 0)) {
    throw new MathsError(
      'wear-rate',
      ['rate'],
      'Wear of the heel cannot be less than 0. Give the millimetres lost in a known time of running.',
    );
  }
}

/** What the points do after some running. */
export interface WornPoints {
  /** Gap left at full lift, mm. */
  readonly gap: number;
  /** Crank degrees by which the opening comes later than when set. */
  readonly retard: number;
  /** Dwell, cam degrees. */
  readonly dwell: number;
}

/**
 * Gap, retard and dwell after `run` units of running (same unit as the rate), from a gap of `gap`
 * mm when set. Throws when the gap has closed altogether by then.
 */
export function wornPoints(cam: BreakerCam, gap: number, wear: HeelWear, run: number): WornPoints {
  assertWear(wear);
  if (!(run >= 0)) {
    throw new MathsError(
      'run',
      ['run'],
      'The running since the gap was set cannot be less than 0.',
    );
  }
  assertGap(cam, gap);
  const left = gap - wear.rate * wear.leverRatio * run;
  if (left <= 0) {
    throw new MathsError(
      'worn-shut',
      ['run', 'rate'],
      `By then the heel has worn so far that the points no longer open: the gap is gone after ${sayNumber(runUntilShut(gap, wear))} of the same units of running. Reset the gap before that, or check the wear rate.`,
    );
  }
  return {
    gap: left,
    retard: (opensBefore(cam, gap) - opensBefore(cam, left)) / cam.speedRatio,
    dwell: dwellAngle(cam, left),
  };
}

/** Units of running after which a gap of `gap` mm has closed altogether; Infinity without wear. */
export function runUntilShut(gap: number, wear: HeelWear): number {
  assertWear(wear);
  return gap / (wear.rate * wear.leverRatio);
}

/**
 * Units of running after which the timing has gone `retard` crank degrees late. Where the points
 * would close altogether before that, it is the running until they do. Infinity without wear.
 */
export function runUntilRetard(
  cam: BreakerCam,
  gap: number,
  wear: HeelWear,
  retard: number,
): number {
  assertWear(wear);
  if (!(retard > 0)) {
    throw new MathsError(
      'retard',
      ['retard'],
      'The retard allowed must be above 0 crank degrees, or the points would have to be reset before they had run at all.',
    );
  }
  const beyondTop = opensBefore(cam, gap) - retard * cam.speedRatio - cam.top / 2;
  if (beyondTop <= 0) return runUntilShut(gap, wear);
  const left = cam.lift * (1 - normalisedLift(cam.profile, 1 - beyondTop / cam.rise));
  return (gap - left) / (wear.rate * wear.leverRatio);
}
