import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  basePart,
  crankDegreesPerGap,
  dwellAngle,
  dwellPercent,
  gapForDwell,
  liftAt,
  lobePitch,
  openAngle,
  openingAt,
  opensBefore,
  type BreakerCam,
} from '../../calculators/maths/ignition/breaker-cam.ts';
import { liftProfiles } from '../../calculators/maths/ignition/cam-profile.ts';
import { thrown } from './thrown.ts';

const single: BreakerCam = {
  lobes: 1,
  speedRatio: 1,
  lift: 1,
  rise: 50,
  top: 120,
  profile: 'harmonic',
};

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyCam: fc.Arbitrary<BreakerCam> = fc
  .record({
    lobes: fc.integer({ min: 1, max: 12 }),
    speedRatio: fc.constantFrom(0.5, 1),
    lift: unit(0.2, 3),
    riseShare: unit(0.1, 1),
    topShare: unit(0, 1),
    profile: fc.constantFrom(...liftProfiles),
  })
  .map(({ riseShare, topShare, ...cam }) => {
    const pitch = 360 / cam.lobes;
    const rise = (riseShare * pitch) / 2;
    return { ...cam, rise, top: topShare * (pitch - 2 * rise) };
  });

const gapShare = unit(0.001, 0.999);

describe('the lift curve', () => {
  it('is nothing on the base circle, full on the top and alike on both sides', () => {
    expect(liftAt(single, 180)).toBe(0);
    expect(liftAt(single, 110)).toBe(0);
    expect(liftAt(single, 0)).toBe(1);
    expect(liftAt(single, 60)).toBe(1);
    fc.assert(
      fc.property(anyCam, unit(-720, 720), (cam, angle) => {
        expect(liftAt(cam, -angle)).toBeCloseTo(liftAt(cam, angle), 9);
        expect(liftAt(cam, angle + lobePitch(cam))).toBeCloseTo(liftAt(cam, angle), 9);
      }),
    );
  });
});

describe('gap, opening and dwell', () => {
  it('opens half way up the flank when the gap is half the lift', () => {
    for (const profile of liftProfiles) {
      expect(opensBefore({ ...single, profile }, 0.5)).toBeCloseTo(85, 10);
      expect(dwellAngle({ ...single, profile }, 0.5)).toBeCloseTo(190, 10);
    }
  });

  it('stands exactly the gap apart on the top, and just shut where it is said to open', () => {
    fc.assert(
      fc.property(anyCam, gapShare, (cam, share) => {
        const gap = share * cam.lift;
        expect(openingAt(cam, gap, 0)).toBeCloseTo(gap, 12);
        expect(openingAt(cam, gap, opensBefore(cam, gap))).toBeCloseTo(0, 9);
        expect(openingAt(cam, gap, opensBefore(cam, gap) * 0.999)).toBeGreaterThan(0);
        expect(openingAt(cam, gap, lobePitch(cam) / 2)).toBe(0);
      }),
    );
  });

  it('dwell and open angle make up the lobe pitch', () => {
    fc.assert(
      fc.property(anyCam, gapShare, (cam, share) => {
        const gap = share * cam.lift;
        expect(dwellAngle(cam, gap) + openAngle(cam, gap)).toBeCloseTo(lobePitch(cam), 9);
        // Counted along the curve, by asking at many places whether the points are open.
        const steps = 2000;
        let open = 0;
        for (let step = 0; step < steps; step += 1) {
          if (openingAt(cam, gap, ((step + 0.5) / steps) * lobePitch(cam)) > 0) open += 1;
        }
        const counted = (open / steps) * 100;
        expect(Math.abs(100 - dwellPercent(cam, gap) - counted)).toBeLessThan(0.11);
      }),
      { numRuns: 50 },
    );
  });

  it('a wider gap never gives more dwell or later opening', () => {
    fc.assert(
      fc.property(anyCam, gapShare, gapShare, (cam, a, b) => {
        const narrow = Math.min(a, b) * cam.lift;
        const wide = Math.max(a, b) * cam.lift;
        expect(dwellAngle(cam, wide)).toBeLessThanOrEqual(dwellAngle(cam, narrow) + 1e-9);
        expect(opensBefore(cam, wide)).toBeGreaterThanOrEqual(opensBefore(cam, narrow) - 1e-9);
      }),
    );
  });

  it('timing per gap is the local slope of the opening, in crank degrees', () => {
    fc.assert(
      fc.property(anyCam, unit(0.05, 0.95), (cam, share) => {
        const gap = share * cam.lift;
        const h = 1e-6 * cam.lift;
        const difference =
          (opensBefore(cam, gap + h) - opensBefore(cam, gap - h)) / (2 * h) / cam.speedRatio;
        expect(crankDegreesPerGap(cam, gap) / difference).toBeCloseTo(1, 4);
      }),
    );
  });

  it('on a half-speed shaft the same gap moves the timing twice as far', () => {
    expect(crankDegreesPerGap({ ...single, speedRatio: 0.5 }, 0.35)).toBeCloseTo(
      2 * crankDegreesPerGap(single, 0.35),
      12,
    );
  });

  it('finds the gap for a dwell, there and back', () => {
    fc.assert(
      fc.property(anyCam, unit(0.01, 0.99), (cam, share) => {
        const shortest = basePart(cam);
        const dwell = shortest + share * (lobePitch(cam) - cam.top - shortest);
        expect(dwellAngle(cam, gapForDwell(cam, dwell))).toBeCloseTo(dwell, 6);
      }),
    );
  });
});

describe('figures that make no cam', () => {
  it.each([
    ['never-close', () => dwellAngle(single, 1), /never shut.*below 1 mm/],
    ['never-close', () => dwellAngle(single, 1.4), /1\.4 mm is not less than the lift of 1 mm/],
    ['never-open', () => dwellAngle(single, 0), /never open/],
    ['never-open', () => dwellAngle(single, Number.NaN), /never open/],
    ['lobes', () => dwellAngle({ ...single, lobes: 2.5 }, 0.3), /whole number/],
    ['lobes', () => dwellAngle({ ...single, lobes: 0 }, 0.3), /1 or more/],
    ['speed-ratio', () => dwellAngle({ ...single, speedRatio: 0 }, 0.3), /turns of the cam/],
    ['lift', () => dwellAngle({ ...single, lift: 0 }, 0.3), /never move/],
    ['rise', () => dwellAngle({ ...single, rise: 0 }, 0.3), /above 0 and at most 180/],
    ['rise', () => dwellAngle({ ...single, lobes: 4 }, 0.3), /at most 45 cam degrees/],
    ['top', () => dwellAngle({ ...single, top: -1 }, 0.3), /less than 0/],
    ['lobes-overlap', () => dwellAngle({ ...single, lobes: 2 }, 0.3), /at most 80°/],
    ['dwell-beyond-pitch', () => gapForDwell(single, 360), /360° from one lobe to the next/],
    ['dwell-out-of-reach', () => gapForDwell(single, 140), /between 140°.*and 240°/],
    ['dwell-out-of-reach', () => gapForDwell(single, 240), /between 140°.*and 240°/],
    ['dwell-out-of-reach', () => gapForDwell(single, Number.NEGATIVE_INFINITY), /between 140°/],
  ])('says %s', (code, action, sentence) => {
    const error = thrown(action);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(sentence);
    expect(error.quantities.length).toBeGreaterThan(0);
  });

  it('a lobe that just fills its pitch is allowed', () => {
    expect(dwellAngle({ ...single, lobes: 4, rise: 30, top: 30 }, 0.5)).toBeCloseTo(30, 9);
  });
});
