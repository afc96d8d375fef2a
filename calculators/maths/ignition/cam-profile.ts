import { MathsError } from '../numeric/errors.ts';

/**
 * How the flank of a lobe lifts its follower, after the names of cam practice: `harmonic` (simple
 * harmonic motion), `cycloidal`, or `uniform` (uniform velocity, straight from corner to corner).
 *
 * Formulas: H. A. Rothbart (ed.), *Cam Design Handbook*, McGraw-Hill, 2004, chapter 2 (basic
 * curves); the same three are in R. L. Norton, *Cam Design and Manufacturing Handbook*.
 */
export const liftProfiles = ['harmonic', 'cycloidal', 'uniform'] as const;

export type LiftProfile = (typeof liftProfiles)[number];

function assertFraction(value: number, quantity: string): void {
  if (!(value >= 0 && value <= 1)) {
    throw new MathsError(
      'fraction-out-of-range',
      [quantity],
      'A position on the flank runs from 0 at the foot of the rise to 1 at full lift. Give a figure between 0 and 1.',
    );
  }
}

/** Share of full lift (0–1) at `fraction` (0–1) of the rise. Throws outside 0–1. */
export function normalisedLift(profile: LiftProfile, fraction: number): number {
  assertFraction(fraction, 'fraction');
  switch (profile) {
    case 'harmonic':
      return (1 - Math.cos(Math.PI * fraction)) / 2;
    case 'cycloidal':
      return fraction - Math.sin(2 * Math.PI * fraction) / (2 * Math.PI);
    case 'uniform':
      return fraction;
  }
}

/**
 * Slope of `normalisedLift`: share of full lift per whole rise, at `fraction` (0–1) of the rise.
 * For uniform velocity it is 1 throughout, the corners at 0 and 1 included.
 */
export function normalisedSlope(profile: LiftProfile, fraction: number): number {
  assertFraction(fraction, 'fraction');
  switch (profile) {
    case 'harmonic':
      return (Math.PI / 2) * Math.sin(Math.PI * fraction);
    case 'cycloidal':
      return 1 - Math.cos(2 * Math.PI * fraction);
    case 'uniform':
      return 1;
  }
}

/**
 * Fraction of the rise (0–1) at which the follower has `share` (0–1) of full lift: the inverse of
 * `normalisedLift`. The cycloidal curve has no closed inverse; it is bisected down to the spacing
 * of the numbers themselves.
 */
export function fractionAtLift(profile: LiftProfile, share: number): number {
  assertFraction(share, 'share');
  switch (profile) {
    case 'harmonic':
      return Math.acos(1 - 2 * share) / Math.PI;
    case 'cycloidal': {
      let low = 0;
      let high = 1;
      for (let halving = 0; halving < 60; halving += 1) {
        const middle = (low + high) / 2;
        if (normalisedLift('cycloidal', middle) < share) low = middle;
        else high = middle;
      }
      return (low + high) / 2;
    }
    case 'uniform':
      return share;
  }
}
