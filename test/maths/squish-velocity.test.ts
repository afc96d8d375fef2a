import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  meanSquish,
  peakSquish,
  squishAreaShare,
  squishVelocityAt,
  type SquishHead,
} from '../../calculators/maths/cylinder/squish-velocity.ts';
import { barrels } from './barrels.ts';
import { codeOf } from './code-of.ts';

const g = { stroke: 51, rodLength: 104, pinOffset: 0 };
const head: SquishHead = { bore: 52, bowlDiameter: 36, squish: 1.2, clearanceVolume: 15 };

describe('squish velocity', () => {
  it('is nil at the top and inwards before it', () => {
    expect(squishVelocityAt(g, head, 6000, 0)).toBeCloseTo(0, 10);
    expect(squishVelocityAt(g, head, 6000, 10)).toBeGreaterThan(0);
    expect(squishVelocityAt(g, head, 6000, -10)).toBeLessThan(0);
  });

  it('has its peak where no angle beside it is faster', () => {
    fc.assert(
      fc.property(
        barrels,
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 90, noNaN: true }),
        (any, squish, angle) => {
          const this_ = { ...head, squish, clearanceVolume: 20 };
          const peak = peakSquish(any, this_, 5000);
          expect(squishVelocityAt(any, this_, 5000, angle)).toBeLessThanOrEqual(
            peak.velocity * (1 + 1e-9),
          );
        },
      ),
    );
  });

  it('grows with the speed in proportion, and with a smaller gap', () => {
    const peak = peakSquish(g, head, 6000).velocity;
    expect(peakSquish(g, head, 12_000).velocity).toBeCloseTo(2 * peak, 8);
    expect(peakSquish(g, { ...head, squish: 0.8 }, 6000).velocity).toBeGreaterThan(peak);
    expect(meanSquish(g, head, 6000, 90)).toBeLessThan(peak);
  });

  it('knows how much of the bore the band covers', () => {
    expect(squishAreaShare({ ...head, bore: 50, bowlDiameter: 25 })).toBe(0.75);
  });

  it('says what is wrong', () => {
    expect(codeOf(() => peakSquish(g, { ...head, bowlDiameter: 52 }, 6000))).toBe('bowl-diameter');
    expect(codeOf(() => peakSquish(g, { ...head, squish: 0 }, 6000))).toBe('squish-clearance');
    expect(codeOf(() => peakSquish(g, { ...head, clearanceVolume: 2 }, 6000))).toBe('no-bowl');
    expect(codeOf(() => peakSquish(g, head, 0))).toBe('rpm');
    expect(codeOf(() => meanSquish(g, head, 6000, 0))).toBe('exhaust-closes');
  });
});
