import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  crankDegreesPerGap,
  dwellAngle,
  opensBefore,
  type BreakerCam,
} from '../../calculators/maths/ignition/breaker-cam.ts';
import {
  runUntilRetard,
  runUntilShut,
  wornPoints,
} from '../../calculators/maths/ignition/heel-wear.ts';
import { thrown } from './thrown.ts';

const cam: BreakerCam = {
  lobes: 1,
  speedRatio: 1,
  lift: 1,
  rise: 50,
  top: 120,
  profile: 'uniform',
};
const wear = { leverRatio: 1.25, rate: 0.0004 };

describe('heel wear', () => {
  it('narrows the gap by the wear times the lever ratio', () => {
    expect(wornPoints(cam, 0.35, wear, 200).gap).toBeCloseTo(0.25, 12);
  });

  it('on a straight flank of 0.02 mm a degree, 0.1 mm of gap is 5° of retard and 10° of dwell', () => {
    const after = wornPoints(cam, 0.35, wear, 200);
    expect(after.retard).toBeCloseTo(5, 10);
    expect(after.dwell - dwellAngle(cam, 0.35)).toBeCloseTo(10, 10);
  });

  it('counts crank degrees, twice as many on a half-speed cam', () => {
    expect(wornPoints({ ...cam, speedRatio: 0.5 }, 0.35, wear, 200).retard).toBeCloseTo(10, 10);
  });

  it('retard never shrinks with running, and the run until a retard is found again', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('harmonic' as const, 'cycloidal' as const, 'uniform' as const),
        fc.double({ min: 1, max: 600, noNaN: true }),
        fc.constantFrom(0.5, 1),
        (profile, run, speedRatio) => {
          const some = { ...cam, profile, speedRatio };
          const { retard } = wornPoints(some, 0.35, wear, run);
          expect(retard).toBeGreaterThanOrEqual(wornPoints(some, 0.35, wear, run / 2).retard);
          expect(runUntilRetard(some, 0.35, wear, retard)).toBeCloseTo(run, 5);
        },
      ),
    );
  });

  it('begins at the local slope', () => {
    const harmonic = { ...cam, profile: 'harmonic' as const };
    const worn = 0.1 * wear.rate * wear.leverRatio;
    expect(wornPoints(harmonic, 0.35, wear, 0.1).retard / worn).toBeCloseTo(
      crankDegreesPerGap(harmonic, 0.35),
      1,
    );
  });

  it('shuts after gap ÷ (rate × lever), and a larger retard cannot be reached', () => {
    expect(runUntilShut(0.35, wear)).toBeCloseTo(700, 9);
    const most = opensBefore(cam, 0.35) - cam.top / 2;
    expect(runUntilRetard(cam, 0.35, wear, most + 1)).toBeCloseTo(700, 9);
    expect(runUntilRetard(cam, 0.35, { ...wear, rate: 0 }, 1)).toBe(Number.POSITIVE_INFINITY);
    expect(runUntilShut(0.35, { ...wear, rate: 0 })).toBe(Number.POSITIVE_INFINITY);
  });

  it.each([
    ['worn-shut', () => wornPoints(cam, 0.35, wear, 700), /gone after 700/],
    ['wear-rate', () => wornPoints(cam, 0.35, { ...wear, rate: -1 }, 1), /less than 0/],
    ['lever-ratio', () => wornPoints(cam, 0.35, { ...wear, leverRatio: 0 }, 1), /above 0/],
    ['run', () => wornPoints(cam, 0.35, wear, -1), /less than 0/],
    ['retard', () => runUntilRetard(cam, 0.35, wear, 0), /above 0/],
    ['never-close', () => wornPoints(cam, 1.2, wear, 1), /never shut/],
  ])('says %s', (code, action, sentence) => {
    const error = thrown(action);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(sentence);
  });
});
