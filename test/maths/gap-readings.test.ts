import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crankDegreesPerGap, opensBefore } from '../../calculators/maths/ignition/breaker-cam.ts';
import { angleAtGap, fitGapReadings } from '../../calculators/maths/ignition/gap-readings.ts';
import { fitLine } from '../../calculators/maths/numeric/line-fit.ts';
import { thrown } from './thrown.ts';

describe('trials of gap against opening angle', () => {
  const two = [
    { gap: 0.3, angle: 18 },
    { gap: 0.4, angle: 23 },
  ];

  it('two trials give a line that cannot be judged', () => {
    const fit = fitGapReadings(two);
    expect(fit.degreesPerMillimetre).toBeCloseTo(50, 10);
    expect(fit.liftPerDegree).toBeCloseTo(0.02, 12);
    expect(fit.slopeRange).toBeUndefined();
    expect(angleAtGap(fit, 0.35)).toBeCloseTo(20.5, 10);
    expect([fit.from, fit.to]).toEqual([0.3, 0.4]);
  });

  it('three trials are judged by their scatter, with one degree of freedom', () => {
    const fit = fitGapReadings([...two, { gap: 0.35, angle: 21.1 }]);
    expect(fit.line.residual).toBeCloseTo(Math.sqrt(0.24), 10);
    expect(fit.slopeRange).toBeCloseTo((12.7062 * Math.sqrt(0.24)) / Math.sqrt(0.005), 2);
  });

  it('trials exactly on a line leave no doubt of it', () => {
    const fit = fitGapReadings([...two, { gap: 0.35, angle: 20.5 }]);
    expect(fit.slopeRange).toBeCloseTo(0, 9);
  });

  it('finds the slope of a cam from trials close together', () => {
    const cam = {
      lobes: 1,
      speedRatio: 1,
      lift: 1,
      rise: 50,
      top: 120,
      profile: 'harmonic' as const,
    };
    const trials = [0.345, 0.35, 0.355].map((gap) => ({ gap, angle: opensBefore(cam, gap) - 60 }));
    expect(fitGapReadings(trials).degreesPerMillimetre).toBeCloseTo(
      crankDegreesPerGap(cam, 0.35),
      1,
    );
  });

  it('least squares cannot be bettered by tilting or lifting the line', () => {
    const points = fc.array(
      fc.record({
        x: fc.double({ min: -5, max: 5, noNaN: true }),
        y: fc.double({ min: -5, max: 5, noNaN: true }),
      }),
      { minLength: 3, maxLength: 8 },
    );
    const small = fc.double({ min: -0.1, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(points, small, small, (some, tilt, lift) => {
        const xs = some.map(({ x }) => x);
        fc.pre(Math.max(...xs) - Math.min(...xs) > 0.01);
        const fit = fitLine(some);
        const misses = (slope: number, intercept: number) =>
          some.reduce((sum, { x, y }) => sum + (y - intercept - slope * x) ** 2, 0);
        expect(misses(fit.slope, fit.intercept)).toBeLessThanOrEqual(
          misses(fit.slope + tilt, fit.intercept + lift) + 1e-6,
        );
      }),
    );
  });

  it.each([
    ['too-few-readings', () => fitGapReadings([two[0]!]), /Two trials/],
    ['same-gap', () => fitGapReadings([two[0]!, { gap: 0.3, angle: 19 }]), /one gap/],
    ['wider-opens-later', () => fitGapReadings([two[0]!, { gap: 0.4, angle: 17 }]), /no cam does/],
    ['never-open', () => fitGapReadings([two[0]!, { gap: 0, angle: 17 }]), /above 0/],
    ['too-few-points', () => fitLine([{ x: 1, y: 1 }]), /at least two/],
    ['same-x', () => fitLine([1, 2].map((y) => ({ x: 1, y }))), /one setting/],
  ])('says %s', (code, action, sentence) => {
    const error = thrown(action);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(sentence);
  });
});
