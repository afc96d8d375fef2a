import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fractionAtLift,
  liftProfiles,
  normalisedLift,
  normalisedSlope,
} from '../../calculators/maths/ignition/cam-profile.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';

const fraction = fc.double({ min: 0, max: 1, noNaN: true });

describe.each(liftProfiles)('a %s flank', (profile) => {
  it('runs from nothing to full lift and is half way up in the middle', () => {
    expect(normalisedLift(profile, 0)).toBe(0);
    expect(normalisedLift(profile, 1)).toBeCloseTo(1, 14);
    expect(normalisedLift(profile, 0.5)).toBeCloseTo(0.5, 14);
  });

  it('never falls on the way up', () => {
    fc.assert(
      fc.property(fraction, fraction, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(normalisedLift(profile, high)).toBeGreaterThanOrEqual(
          normalisedLift(profile, low) - 1e-15,
        );
      }),
    );
  });

  it('is the same turned about its middle', () => {
    fc.assert(
      fc.property(fraction, (u) => {
        expect(normalisedLift(profile, 1 - u)).toBeCloseTo(1 - normalisedLift(profile, u), 12);
      }),
    );
  });

  it('has the slope of its own curve', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (u) => {
        const h = 1e-5;
        const difference =
          (normalisedLift(profile, u + h) - normalisedLift(profile, u - h)) / (2 * h);
        expect(normalisedSlope(profile, u)).toBeCloseTo(difference, 6);
      }),
    );
  });

  it('is found again from its lift', () => {
    fc.assert(
      fc.property(fraction, (share) => {
        expect(normalisedLift(profile, fractionAtLift(profile, share))).toBeCloseTo(share, 12);
      }),
    );
  });

  it.each([-0.01, 1.01, Number.NaN])('refuses %d', (value) => {
    expect(() => normalisedLift(profile, value)).toThrow(MathsError);
    expect(() => normalisedSlope(profile, value)).toThrow(MathsError);
    expect(() => fractionAtLift(profile, value)).toThrow(MathsError);
  });
});
