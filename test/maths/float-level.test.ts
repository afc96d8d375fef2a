import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  displacedMass,
  fuelLevel,
  heightForLevel,
  levelAtJet,
  needlePush,
  risePer100Head,
  springRise,
  submergedDepth,
  tangBend,
  tangRatio,
  type FloatLever,
  type FuelFeed,
  type Gauging,
} from '../../calculators/maths/carburettor/float-level.ts';
import { thrown } from './thrown.ts';

const lever: FloatLever = {
  pivotToNeedle: 8,
  pivotToFloat: 32,
  floatMass: 9,
  floatArea: 1000,
  floatDepth: 20,
};
const feed: FuelFeed = { seat: 2, head: 300, density: 740 };
const gauging: Gauging = { height: 24, edge: 'far', springDrop: 0 };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Floats that are light enough to shut the valve whatever the feed. */
const levers = fc.record({
  pivotToNeedle: between(4, 15),
  pivotToFloat: between(20, 50),
  floatMass: between(1, 4),
  floatArea: between(600, 2000),
  floatDepth: between(25, 40),
});
const feeds = fc.record({
  seat: between(0.5, 3),
  head: between(10, 600),
  density: between(690, 900),
});
const gaugings = fc.record({
  height: between(5, 60),
  edge: fc.constantFrom('far' as const, 'near' as const),
  springDrop: between(0, 2),
});

describe('the level', () => {
  it('stands where moments about the pivot balance', () => {
    expect(fuelLevel(lever, feed, gauging)).toBeCloseTo(
      24 - (9e6 / 740 + 300 * Math.PI * 0.25) / 1000,
      12,
    );
  });

  it('rises with more head, a larger seat and a heavier float', () => {
    fc.assert(
      fc.property(levers, feeds, gaugings, between(1.001, 1.5), (l, f, g, more) => {
        const level = fuelLevel(l, f, g);
        expect(fuelLevel(l, { ...f, head: f.head * more }, g)).toBeLessThan(level);
        expect(fuelLevel(l, { ...f, seat: f.seat * more }, g)).toBeLessThan(level);
        const solid = { ...g, springDrop: 0 };
        expect(fuelLevel({ ...l, floatMass: l.floatMass * more }, f, solid)).toBeLessThan(
          fuelLevel(l, f, solid),
        );
      }),
    );
  });

  it('falls, against the float and the gasket face, with denser fuel', () => {
    fc.assert(
      fc.property(levers, feeds, gaugings, between(1.001, 1.2), (l, f, g, more) => {
        const denser = { ...f, density: f.density * more };
        expect(submergedDepth(l, denser)).toBeLessThan(submergedDepth(l, f));
        const solid = { ...g, springDrop: 0 };
        expect(fuelLevel(l, denser, solid)).toBeGreaterThan(fuelLevel(l, f, solid));
      }),
    );
  });

  it('follows the gauge one to one, and falls as the reading grows', () => {
    fc.assert(
      fc.property(levers, feeds, gaugings, between(0.1, 5), (l, f, g, more) => {
        expect(fuelLevel(l, f, { ...g, height: g.height + more }) - fuelLevel(l, f, g)).toBeCloseTo(
          more,
          9,
        );
      }),
    );
  });

  it('moves by risePer100Head for 100 mm more head', () => {
    fc.assert(
      fc.property(levers, feeds, gaugings, between(-20, 20), (l, f, g, tilt) => {
        const standing = { tilt };
        const higher = fuelLevel(l, { ...f, head: f.head + 100 }, g, standing);
        expect(fuelLevel(l, f, g, standing) - higher).toBeCloseTo(
          risePer100Head(l, f, g.springDrop, standing),
          9,
        );
      }),
    );
  });

  it('is the float’s own draught when the seat or the head is nought (Archimedes)', () => {
    fc.assert(
      fc.property(levers, feeds, (l, f) => {
        const draught = (l.floatMass * 1e6) / (f.density * l.floatArea);
        expect(submergedDepth(l, { ...f, seat: 0 })).toBeCloseTo(draught, 10);
        expect(submergedDepth(l, { ...f, head: 0 })).toBeCloseTo(draught, 10);
      }),
    );
  });

  it('depends for a weightless float on head, seat and lever alone, whatever the fuel', () => {
    fc.assert(
      fc.property(levers, feeds, (l, f) => {
        const seat = (Math.PI / 4) * f.seat ** 2;
        const expected = (f.head * seat * l.pivotToNeedle) / (l.floatArea * l.pivotToFloat);
        expect(submergedDepth({ ...l, floatMass: 0 }, f)).toBeCloseTo(expected, 10);
      }),
    );
  });

  it('counts from the near edge by the depth of the float less', () => {
    const near = fuelLevel(lever, feed, { ...gauging, height: 4, edge: 'near' });
    expect(near).toBeCloseTo(fuelLevel(lever, feed, gauging), 12);
  });

  it('may stand above the face', () => {
    expect(fuelLevel(lever, feed, { ...gauging, height: 5 })).toBeLessThan(0);
  });
});

describe('the height for a level', () => {
  it('gives that level back', () => {
    fc.assert(
      fc.property(levers, feeds, gaugings, between(-5, 30), (l, f, g, level) => {
        const height = heightForLevel(l, f, g, level);
        expect(fuelLevel(l, f, { ...g, height })).toBeCloseTo(level, 9);
      }),
    );
  });

  it('says when no gauge reaches', () => {
    const error = thrown(() => heightForLevel(lever, feed, gauging, 400));
    // A float without weight and a feed without push stand just on the fuel: level and height are one.
    const light = { ...lever, floatMass: 0 };
    const none = { ...feed, head: 0 };
    const plain = { edge: 'far', springDrop: 0 } as const;
    expect(heightForLevel(light, none, plain, 100)).toBe(100);
    expect(heightForLevel(light, none, plain, -50)).toBe(-50);
    expect(error.code).toBe('height-out-of-reach');
    expect(error.quantities).toEqual(['level']);
  });
});

describe('the tang', () => {
  it('is bent by the ratio of the arms', () => {
    expect(tangRatio(lever)).toBe(0.25);
    expect(tangBend(lever, 24, 25)).toBe(0.25);
    expect(tangBend(lever, 25, 24)).toBe(-0.25);
  });
});

describe('the needle’s spring', () => {
  it('lifts the float as far as its weight let it drop, when both moments are the same', () => {
    const push = needlePush(feed);
    const balanced = { ...lever, floatMass: (push * 8) / 32 };
    expect(springRise(balanced, feed, 0.8)).toBeCloseTo(0.8, 12);
  });

  it('does nothing when solid or without a push', () => {
    expect(springRise(lever, feed, 0)).toBe(0);
    expect(springRise(lever, { ...feed, head: 0 }, 1)).toBe(0);
  });

  it('cannot be pressed by a float without weight', () => {
    const error = thrown(() => springRise({ ...lever, floatMass: 0 }, feed, 1));
    expect(error.quantities).toEqual(['springDrop', 'floatMass']);
    expect(error.code).toBe('spring-without-weight');
  });
});

describe('a tilted carburettor', () => {
  it('shows the level at the jet by the tangent', () => {
    expect(levelAtJet(10, 20, { tilt: 45 })).toBeCloseTo(30, 12);
    expect(levelAtJet(10, -20, { tilt: 45 })).toBeCloseTo(-10, 12);
    expect(levelAtJet(10, 20, { tilt: 0 })).toBe(10);
  });

  it('needs a little more buoyancy, alike either way', () => {
    expect(displacedMass(lever, feed, { tilt: 20 })).toBeGreaterThan(displacedMass(lever, feed));
    expect(displacedMass(lever, feed, { tilt: 20 })).toBe(
      displacedMass(lever, feed, { tilt: -20 }),
    );
  });
});

describe('what cannot be', () => {
  it('a float that cannot shut the valve', () => {
    const error = thrown(() => submergedDepth({ ...lever, floatMass: 20 }, feed));
    expect(error.quantities).toEqual(['floatMass', 'floatArea', 'floatDepth', 'head', 'seat']);
    expect(error.code).toBe('float-sinks');
    expect(error.message).toMatch(/14\.8 g/);
    expect(error.quantities).toContain('floatMass');
  });

  it('shuts it still when it is just wholly under', () => {
    const just = { ...lever, floatMass: 14.8 };
    expect(submergedDepth(just, { ...feed, head: 0 })).toBeCloseTo(20, 12);
  });

  it.each<[string, Partial<FloatLever>, Partial<FuelFeed>]>([
    ['pivotToNeedle', { pivotToNeedle: 0 }, {}],
    ['pivotToFloat', { pivotToFloat: NaN }, {}],
    ['floatMass', { floatMass: -1 }, {}],
    ['floatArea', { floatArea: 0 }, {}],
    ['floatDepth', { floatDepth: 0 }, {}],
    ['seat', {}, { seat: -1 }],
    ['head', {}, { head: Infinity }],
    ['density', {}, { density: 0 }],
  ])('%s beyond its limits', (quantity, l, f) => {
    const error = thrown(() => fuelLevel({ ...lever, ...l }, { ...feed, ...f }, gauging));
    expect(error.code).toBe('out-of-range');
    expect(error.quantities).toEqual([quantity]);
    expect(error.message).toMatch(/must be/);
  });

  it.each([
    ['height', () => fuelLevel(lever, feed, { ...gauging, height: NaN })],
    ['springDrop', () => fuelLevel(lever, feed, { ...gauging, springDrop: -1 })],
    ['tilt', () => fuelLevel(lever, feed, gauging, { tilt: -90 })],
    ['tilt', () => levelAtJet(1, 1, { tilt: 90 })],
  ])('%s beyond its limits', (quantity, run) => {
    expect(thrown(run).quantities).toEqual([quantity]);
  });
});
