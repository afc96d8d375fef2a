import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import {
  angleAfter,
  angleBefore,
  bdcAfter,
  degreesPerMillimetre,
  totalTravel,
  travelAt,
  travelBefore,
  velocityAt,
  type SliderCrank,
} from '../../calculators/maths/crank/slider-crank.ts';
import { codeOf } from './code-of.ts';
import { symbolicAcceleration } from '../outside/references/slider-crank-exact.ts';

const plain: SliderCrank = { stroke: 51, rodLength: 104, pinOffset: 0 };

/** Every legal geometry: from a model engine to a ship's, the rod from barely long enough. */
const geometry = fc
  .record({
    stroke: fc.double({ min: 1, max: 3000, noNaN: true }),
    rodPerThrow: fc.oneof(
      fc.double({ min: 1.6, max: 8, noNaN: true }),
      fc.double({ min: 1.0001, max: 1.6, noNaN: true }),
      fc.double({ min: 8, max: 1000, noNaN: true }),
    ),
    offsetPerRoom: fc.oneof(
      fc.constant(0),
      fc.double({ min: -0.1, max: 0.1, noNaN: true }),
      fc.double({ min: -0.9999, max: 0.9999, noNaN: true }),
    ),
  })
  .map(({ stroke, rodPerThrow, offsetPerRoom }): SliderCrank => {
    const rodLength = (stroke / 2) * rodPerThrow;
    return { stroke, rodLength, pinOffset: (rodLength - stroke / 2) * offsetPerRoom };
  });

const share = fc.oneof(
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: 0, max: 15, noNaN: true }).map((power) => 10 ** -power),
  fc.double({ min: 0, max: 15, noNaN: true }).map((power) => 1 - 10 ** -power),
);

describe('travel', () => {
  it('is the plain formula when the pin is not offset', () => {
    fc.assert(
      fc.property(geometry, fc.double({ min: -720, max: 720, noNaN: true }), (any, angle) => {
        const g = { ...any, pinOffset: 0 };
        const r = g.stroke / 2;
        const l = g.rodLength;
        const turn = (angle * Math.PI) / 180;
        const formula = r * (1 - Math.cos(turn)) + l - Math.sqrt(l * l - (r * Math.sin(turn)) ** 2);
        expect(Math.abs(travelAt(g, angle) - formula)).toBeLessThan(1e-13 * (l + r) + 1e-12);
      }),
    );
  });

  it('is zero at the top, all of it at the bottom, and falls all the way between', () => {
    fc.assert(
      fc.property(geometry, share, share, (g, one, two) => {
        const bottom = bdcAfter(g);
        const whole = totalTravel(g);
        expect(travelAt(g, 0)).toBe(0);
        expect(Math.abs(travelAt(g, bottom) - whole)).toBeLessThan(1e-11 * whole);
        const first = Math.min(one, two) * bottom;
        const second = Math.max(one, two) * bottom;
        expect(travelAt(g, second)).toBeGreaterThanOrEqual(travelAt(g, first) - 1e-12 * whole);
        fc.pre(second - first > 1e-3);
        expect(travelAt(g, second)).toBeGreaterThan(travelAt(g, first));
      }),
    );
  });

  it('keeps its digits next to the top', () => {
    for (const pinOffset of [0, 1.5, -6]) {
      const g = { ...plain, pinOffset };
      const curvature = symbolicAcceleration(g, 0);
      for (const angle of [1e-3, 1e-5, 1e-7]) {
        const ratio = travelAt(g, angle) / ((curvature * angle * angle) / 2);
        expect(Math.abs(ratio - 1)).toBeLessThan(1e-3 * angle + 1e-13);
      }
    }
  });

  it('is the same one turn later, and mirrored when the offset is', () => {
    fc.assert(
      fc.property(geometry, fc.double({ min: -360, max: 360, noNaN: true }), (g, angle) => {
        const near = 1e-11 * (g.rodLength + g.stroke);
        expect(Math.abs(travelAt(g, angle) - travelAt(g, angle + 360))).toBeLessThan(near);
        const mirrored = { ...g, pinOffset: -g.pinOffset };
        expect(Math.abs(travelBefore(g, angle) - travelAt(mirrored, angle))).toBeLessThan(near);
      }),
    );
  });
});

describe('the inverse of travel', () => {
  it('gives back every travel to 1e-9 mm for every legal geometry', () => {
    fc.assert(
      fc.property(geometry, share, (g, part) => {
        const travel = part * totalTravel(g);
        const unit = Math.max(1, g.stroke / 100, g.rodLength / 1000);
        expect(Math.abs(travelAt(g, angleAfter(g, travel)) - travel)).toBeLessThan(1e-9 * unit);
        expect(Math.abs(travelBefore(g, angleBefore(g, travel)) - travel)).toBeLessThan(
          1e-9 * unit,
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('gives back every angle to 1e-9 degrees, short of the standstill at the bottom', () => {
    fc.assert(
      fc.property(geometry, share, (g, part) => {
        const up = part * (360 - bdcAfter(g));
        const down = part * bdcAfter(g);
        fc.pre(part < 0.9);
        const rounding = (angle: number) =>
          angle === 0 ? 0 : (4e-16 * (g.rodLength + g.stroke)) / Math.abs(velocityAt(g, angle));
        expect(Math.abs(angleBefore(g, travelBefore(g, up)) - up)).toBeLessThan(
          1e-9 + rounding(-up),
        );
        expect(Math.abs(angleAfter(g, travelAt(g, down)) - down)).toBeLessThan(
          1e-9 + rounding(down),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps its digits for tiny travels', () => {
    for (const pinOffset of [0, 1.5, -6]) {
      const g = { ...plain, pinOffset };
      for (const travel of [1e-3, 1e-6, 1e-9, 1e-12, 1e-15]) {
        expect(travelBefore(g, angleBefore(g, travel)) / travel).toBeCloseTo(1, 13);
      }
    }
  });

  it('reaches both dead centres', () => {
    for (const pinOffset of [0, 1.5, -6]) {
      const g = { ...plain, pinOffset };
      expect(angleAfter(g, 0)).toBe(0);
      expect(angleAfter(g, totalTravel(g))).toBeCloseTo(bdcAfter(g), 4);
      expect(angleBefore(g, totalTravel(g))).toBeCloseTo(360 - bdcAfter(g), 4);
    }
  });
});

describe('velocity', () => {
  it('is the slope of travel', () => {
    fc.assert(
      fc.property(geometry, fc.double({ min: -360, max: 360, noNaN: true }), (g, angle) => {
        fc.pre(g.rodLength > 0.55 * g.stroke);
        fc.pre(Math.abs(g.pinOffset) < 0.9 * (g.rodLength - g.stroke / 2));
        const step = 1e-3;
        const slope = (travelAt(g, angle + step) - travelAt(g, angle - step)) / (2 * step);
        expect(Math.abs(velocityAt(g, angle) - slope)).toBeLessThan(
          1e-7 * g.stroke + 1e-11 * g.rodLength,
        );
      }),
    );
  });

  it('is nothing at both dead centres', () => {
    for (const pinOffset of [0, 1.5, -6]) {
      const g = { ...plain, pinOffset };
      expect(velocityAt(g, 0)).toBe(0);
      expect(velocityAt(g, bdcAfter(g))).toBeCloseTo(0, 14);
    }
  });

  it('give the degrees that a millimetre is worth', () => {
    const before = angleBefore(plain, 2.15);
    const after = angleBefore(plain, 2.25);
    expect(degreesPerMillimetre(plain, -angleBefore(plain, 2.2)) * 0.1).toBeCloseTo(
      after - before,
      3,
    );
    expect(codeOf(() => degreesPerMillimetre(plain, 0))).toBe('at-dead-centre');
  });
});

describe('figures that cannot be', () => {
  it.each([
    ['stroke-not-positive', { stroke: 0 }, 0],
    ['stroke-not-positive', { stroke: -51 }, 0],
    ['not-a-number', { stroke: Number.NaN }, 0],
    ['not-a-number', { rodLength: Number.POSITIVE_INFINITY }, 0],
    ['rod-too-short', { rodLength: 25.5 }, 0],
    ['rod-too-short', { rodLength: 20 }, 0],
    ['offset-too-large', { pinOffset: 78.5 }, 0],
    ['offset-too-large', { pinOffset: -80 }, 0],
    ['travel-negative', {}, -0.01],
    ['travel-beyond-stroke', {}, 51.01],
    ['not-a-number', {}, Number.NaN],
  ])('%s: %o and a travel of %d', (code, change, travel) => {
    expect(codeOf(() => angleBefore({ ...plain, ...change }, travel))).toBe(code);
  });

  it('say the legal range and name the quantity', () => {
    expect.assertions(3);
    try {
      angleBefore(plain, 60);
    } catch (error) {
      expect(error).toBeInstanceOf(MathsError);
      expect((error as MathsError).quantities).toContain('pistonTravel');
      expect((error as MathsError).message).toContain('0 to 51 mm');
    }
  });
});
