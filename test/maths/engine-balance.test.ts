import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bobWeight,
  cranks,
  fromMiddle,
  lengthOfSum,
  pistonForce,
  shaking,
  sumOf,
  type Throw,
} from '../../calculators/maths/crank/engine-balance.ts';
import { firingOf, topAngles } from '../../calculators/maths/crank/firing-order.ts';
import { presets } from '../../calculators/plate/firing-order/presets.ts';

const pistons = { reciprocatingMass: 165, stroke: 51, rodLength: 104, speed: 6000 };
const single: Throw = { pin: 0, lean: 0, place: 0 };
const angle = fc.integer({ min: -180, max: 180 });
const engine = fc.array(
  fc.record({ pin: angle, lean: angle, place: fc.integer({ min: 0, max: 500 }) }),
  { minLength: 1, maxLength: 8 },
);

describe('direct and reverse cranks', () => {
  it('make together the cosine along the axis, at every turn', () => {
    for (const turned of [0, 17, 90, 200]) {
      for (const [order, times] of [
        ['primary', 1],
        ['secondary', 2],
      ] as const) {
        const { direct, reverse } = cranks([{ pin: 30, lean: 50, place: 0 }], order, [2], turned);
        const { x, y } = sumOf([...direct, ...reverse]);
        const force = 2 * Math.cos((times * turned * Math.PI) / 180);
        expect(x).toBeCloseTo(force * Math.sin((50 * Math.PI) / 180), 12);
        expect(y).toBeCloseTo(force * Math.cos((50 * Math.PI) / 180), 12);
      }
    }
  });

  it('keep their figure as they turn', () => {
    fc.assert(
      fc.property(engine, angle, (throws, turned) => {
        const level = throws.map(() => 1);
        const [before, after] = [0, turned].map((at) => cranks(throws, 'primary', level, at));
        expect(lengthOfSum(after!.direct)).toBeCloseTo(lengthOfSum(before!.direct), 9);
        expect(lengthOfSum(after!.reverse)).toBeCloseTo(lengthOfSum(before!.reverse), 9);
      }),
    );
  });

  it('never make more than was said, and come to it within a turn', () => {
    fc.assert(
      fc.property(engine, (throws) => {
        const level = throws.map(() => 1);
        const force = pistonForce(pistons);
        const said = shaking(throws, pistons, 0).primary;
        const most = Math.max(
          ...Array.from({ length: 360 }, (_, turned) => {
            const { direct, reverse } = cranks(throws, 'primary', level, turned);
            const { x, y } = sumOf([...direct, ...reverse]);
            return force * Math.hypot(x, y);
          }),
        );
        expect(most).toBeLessThanOrEqual(said * (1 + 1e-9) + 1e-6);
        expect(most).toBeGreaterThan(said * Math.cos(Math.PI / 360) - 1e-6);
      }),
      { numRuns: 30 },
    );
  });
});

describe('what shakes', () => {
  it('is the whole force of a single, its share left by a factor, and no couple', () => {
    const force = pistonForce(pistons);
    const bare = shaking([single], pistons, 0);
    expect(bare.primary).toBeCloseTo(force, 9);
    expect(bare.secondary).toBeCloseTo((force * 25.5) / 104, 9);
    expect([bare.primaryCouple, bare.secondaryCouple]).toEqual([0, 0]);
    for (const factor of [0, 0.3, 0.5, 0.7, 1]) {
      const left = Math.max(1 - factor, factor);
      expect(shaking([single], pistons, factor).primaryLeft).toBeCloseTo(force * left, 9);
    }
  });

  it('grows with the square of the speed, and is nil at rest', () => {
    expect(pistonForce({ ...pistons, speed: 3000 }) * 4).toBeCloseTo(pistonForce(pistons), 9);
    expect(pistonForce({ ...pistons, speed: 0 })).toBe(0);
  });

  it('is exactly nil where the polygon closes', () => {
    const three = [0, 240, 120].map((pin, i) => ({ pin, lean: 0, place: 88 * i }));
    const { primary, secondary, primaryCouple } = shaking(three, pistons, 0);
    expect([primary, secondary]).toEqual([0, 0]);
    expect(primaryCouple).toBeGreaterThan(0);
  });

  it('rocks about the middle between the first and the last place', () => {
    const places = [10, 30, 110].map((place) => ({ ...single, place }));
    expect(fromMiddle(places)).toEqual([-50, -30, 50]);
  });
});

it('hangs on each pin what rotates and the share of what goes up and down', () => {
  expect(bobWeight(190, 165, 0)).toBe(190);
  expect(bobWeight(0, 100, 0.6)).toBe(60);
});

describe('the usual cranks fire as their names say', () => {
  const intervals: Readonly<Record<string, readonly number[]>> = {
    'Twin, 180°': [180, 180],
    'Twin, 360°': [0, 360],
    'Triple, 120°': [120, 120, 120],
    'Four, 180°': [0, 180, 0, 180],
    'Four, 90°': [90, 90, 90, 90],
    'Vee twin, 90°': [90, 270],
    'Vee four, 90°': [90, 90, 90, 90],
    'Boxer twin': [0, 360],
  };
  it.each(presets)('$name', ({ name, pins, leans }) => {
    expect(firingOf(topAngles(pins, leans)).intervals).toEqual(intervals[name]);
  });
});
