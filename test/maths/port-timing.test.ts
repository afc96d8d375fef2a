import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { crownBelowPort, skirtCover } from '../../calculators/maths/cylinder/port-fit.ts';
import {
  bottomEdgeForDuration,
  crownPort,
  discPort,
  skirtPort,
  topEdgeForDuration,
  type PistonInBarrel,
} from '../../calculators/maths/cylinder/port-timing.ts';
import { totalTravel } from '../../calculators/maths/crank/slider-crank.ts';
import { barrels, plainBarrels } from './barrels.ts';
import { codeOf } from './code-of.ts';

/** The triangle 3-4-5: throw 3, rod 5. At 90° the rod is 4 high and the piston 3 + 5 − 4 = 4 down. */
const pythagoras: PistonInBarrel = { stroke: 6, rodLength: 5, pinOffset: 0, deckClearance: 0.5 };

const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });

describe('a port uncovered by the crown', () => {
  it('opens at 90° where the triangle says so', () => {
    const { opens, closes, duration } = crownPort(pythagoras, 4.5);
    expect(opens).toBeCloseTo(90, 10);
    expect(closes).toBeCloseTo(270, 10);
    expect(duration).toBeCloseTo(180, 10);
  });

  it('is symmetrical about bottom dead centre without a pin offset', () => {
    fc.assert(
      fc.property(plainBarrels, share, (barrel, at) => {
        const { opens, closes } = crownPort(barrel, barrel.deckClearance + at * barrel.stroke);
        expect(opens + closes).toBeCloseTo(360, 8);
      }),
    );
  });

  it('is not symmetrical about it with a pin offset', () => {
    const barrel = { stroke: 51, rodLength: 104, pinOffset: 1.5, deckClearance: 0 };
    const { opens, closes, duration } = crownPort(barrel, 35);
    expect(Math.abs(opens + closes - 360)).toBeGreaterThan(0.3);
    expect(duration).toBeCloseTo(closes - opens, 12);
    const mirrored = crownPort({ ...barrel, pinOffset: -1.5 }, 35);
    expect(mirrored.opens).toBeCloseTo(360 - closes, 9);
    expect(mirrored.closes).toBeCloseTo(360 - opens, 9);
  });

  it('has a height for a duration, and back', () => {
    fc.assert(
      fc.property(barrels, fc.double({ min: 5, max: 355, noNaN: true }), (barrel, duration) => {
        const edge = topEdgeForDuration(barrel, duration);
        expect(crownPort(barrel, edge).duration).toBeCloseTo(duration, 4);
      }),
    );
  });

  it('says so when it would always be open, or never', () => {
    expect(codeOf(() => crownPort(pythagoras, 0.4))).toBe('port-always-open');
    expect(codeOf(() => crownPort(pythagoras, 6.5))).toBe('port-never-opens');
    expect(codeOf(() => crownPort(pythagoras, NaN))).toBe('not-a-number');
    expect(codeOf(() => crownPort({ ...pythagoras, deckClearance: NaN }, 3))).toBe('not-a-number');
    expect(codeOf(() => topEdgeForDuration(pythagoras, 360))).toBe('duration');
    expect(() => crownPort(pythagoras, 0.4)).toThrow(/from 0\.5 to 6\.5 mm/);
  });
});

describe('an inlet uncovered by the skirt', () => {
  it('opens and closes at 90° where the triangle says so', () => {
    expect(skirtPort(pythagoras, 12.5, 8)).toMatchObject({
      opens: expect.closeTo(-90, 9),
      closes: expect.closeTo(90, 9),
      duration: expect.closeTo(180, 9),
    });
  });

  it('is symmetrical about top dead centre without a pin offset', () => {
    fc.assert(
      fc.property(plainBarrels, share, (barrel, at) => {
        const skirt = barrel.stroke * 1.2;
        const edge = barrel.deckClearance + skirt + at * barrel.stroke;
        const { opens, closes } = skirtPort(barrel, edge, skirt);
        expect(opens).toBeCloseTo(-closes, 8);
      }),
    );
  });

  it('is open while a crown port at the same travel is shut', () => {
    fc.assert(
      fc.property(barrels, share, (barrel, at) => {
        const travel = at * totalTravel(barrel);
        const crown = crownPort(barrel, barrel.deckClearance + travel);
        const skirt = skirtPort(barrel, barrel.deckClearance + 60 + travel, 60);
        expect(crown.duration + skirt.duration).toBeCloseTo(360, 6);
      }),
    );
  });

  it('has a height for a duration, and back', () => {
    fc.assert(
      fc.property(barrels, fc.double({ min: 5, max: 350, noNaN: true }), (barrel, duration) => {
        const edge = bottomEdgeForDuration(barrel, 60, duration);
        expect(skirtPort(barrel, edge, 60).duration).toBeCloseTo(duration, 4);
      }),
    );
  });

  it('says so when it would never open or never close', () => {
    expect(codeOf(() => skirtPort(pythagoras, 8.5, 8))).toBe('inlet-never-opens');
    expect(codeOf(() => skirtPort(pythagoras, 14.5, 8))).toBe('inlet-always-open');
    expect(codeOf(() => skirtPort(pythagoras, 10, 0))).toBe('skirt-length');
    expect(codeOf(() => bottomEdgeForDuration(pythagoras, 8, -1))).toBe('duration');
  });
});

describe('a disc valve', () => {
  it('adds up its degrees', () => {
    expect(discPort(130, 50)).toEqual({ opens: -130, closes: 50, duration: 180 });
  });

  it('says so when a figure cannot be', () => {
    expect(codeOf(() => discPort(0, 50))).toBe('disc-opens');
    expect(codeOf(() => discPort(130, 0))).toBe('disc-closes');
    expect(codeOf(() => discPort(200, 160))).toBe('disc-never-closes');
  });
});

describe('piston and barrel', () => {
  it('tells what the skirt covers at the top and the crown leaves at the bottom', () => {
    expect(skirtCover(pythagoras, 6, 8)).toBeCloseTo(2.5, 12);
    expect(crownBelowPort(pythagoras, 7)).toBeCloseTo(-0.5, 12);
  });

  it('never gives NaN: a figure or a sentence', () => {
    const any = fc.oneof(fc.double(), fc.double({ min: -10, max: 100 }));
    fc.assert(
      fc.property(any, any, any, any, any, (stroke, rodLength, pinOffset, deckClearance, edge) => {
        try {
          const events = crownPort({ stroke, rodLength, pinOffset, deckClearance }, edge);
          expect(Object.values(events).every(Number.isFinite)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(MathsError);
        }
      }),
    );
  });
});
