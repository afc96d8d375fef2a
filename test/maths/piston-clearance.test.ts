import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assertItsStandard,
  boreWear,
  nextOversize,
} from '../../calculators/maths/cylinder/bore-wear.ts';
import { grown } from '../../calculators/maths/cylinder/expansion.ts';
import {
  fillsAt,
  hotRingGap,
  pistonClearance,
  type PistonInBore,
} from '../../calculators/maths/cylinder/piston-clearance.ts';
import { thrown } from './thrown.ts';

const at = (bore: number, piston: number, heat: Partial<Record<'b' | 'p', number>> = {}) =>
  ({
    bore: { size: bore, expansion: 11.4, temperature: heat.b ?? 20 },
    piston: { size: piston, expansion: 20, temperature: heat.p ?? 20 },
    measuredAt: 20,
  }) satisfies PistonInBore;

describe('clearance', () => {
  it('is the same hot as cold where nothing is warmer than the bench', () => {
    const { cold, hot } = pistonClearance(at(52, 51.9));
    expect(hot).toBeCloseTo(cold, 12);
  });

  it('shrinks with the piston’s heat, grows with the bore’s, and may be less than nothing', () => {
    const hot = (heat: { b?: number; p?: number }) => pistonClearance(at(52, 51.94, heat)).hot;
    expect(hot({ p: 150 })).toBeLessThan(hot({ p: 120 }));
    expect(hot({ b: 150, p: 150 })).toBeGreaterThan(hot({ b: 120, p: 150 }));
    expect(hot({ p: 300 })).toBeLessThan(0);
  });

  it('is nil at the temperature at which the piston fills the bore', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 250, noNaN: true }),
        (room, b) => {
          const parts = at(60, 60 - room, { b });
          const p = fillsAt(parts);
          const hot = pistonClearance({
            ...parts,
            piston: { ...parts.piston, temperature: p },
          }).hot;
          expect(hot).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  it('never fills a bore with a piston that does not grow', () => {
    const parts = at(52, 51.9);
    const still = { ...parts, piston: { ...parts.piston, expansion: 0 } };
    expect(thrown(() => fillsAt(still)).code).toBe('no-growth');
  });

  it('has no temperature to fill it where the piston does not go in, or below absolute zero', () => {
    expect(thrown(() => fillsAt(at(61.55, 63.5))).code).toBe('no-room');
    expect(thrown(() => fillsAt(at(52, 52))).code).toBe('no-room');
    // By hand: iron 60 K colder is 0.036 mm smaller. Of 0.01 mm of room, 0.026 mm are then lacking: 25 K
    // of 20 ppm/K, and 500 K of 1 ppm/K, which from 20 °C is colder than anything.
    const cold = at(52, 51.99, { b: -40 });
    expect(fillsAt(cold)).toBeGreaterThan(-10);
    expect(fillsAt(cold)).toBeLessThan(0);
    const slow = { ...cold, piston: { ...cold.piston, expansion: 1 } };
    expect(thrown(() => fillsAt(slow)).code).toBe('too-cold');
  });
});

describe('a ring', () => {
  const bore = { size: 52, expansion: 11.4, temperature: 110 };
  const ring = { size: 0.2, expansion: 11.4, temperature: 110 };
  it('as hot as its bore and of its metal keeps its gap, but for its own growth', () => {
    expect(hotRingGap(bore, ring, 20)).toBeCloseTo(grown(0.2, 11.4, 90), 12);
  });

  it('hotter than its bore closes by the round of it', () => {
    const closes = 0.2 - hotRingGap(bore, { ...ring, temperature: 210 }, 20);
    expect(closes).toBeCloseTo(Math.PI * 52 * 11.4e-6 * 100, 3);
  });
});

describe('the readings of a bore', () => {
  it('give the taper of each direction by itself, the ovality of each height by itself', () => {
    const wear = boreWear({ along: [50.1, 50], across: [50.1, 50.3] });
    expect(wear.taper).toBeCloseTo(0.2, 12);
    expect(wear.ovality).toBeCloseTo(0.3, 12);
    expect(wear.ovals.map((oval) => Number(oval.toFixed(9)))).toEqual([0, 0.3]);
    expect([wear.least, wear.widest]).toEqual([50, 50.3]);
  });

  it('count ovality whichever direction is the wider', () => {
    expect(boreWear({ along: [50.2], across: [50] }).ovality).toBeCloseTo(0.2, 12);
    expect(boreWear({ along: [50], across: [50] }).taper).toBe(0);
  });

  it.each([
    [[], []],
    [[50], [50, 51]],
    [[50], [NaN]],
  ])('are refused where one is missing: %j and %j', (along, across) => {
    const error = thrown(() => boreWear({ along, across }));
    expect([error.code, error.quantities]).toEqual(['readings', ['along', 'across']]);
  });
});

describe('the next oversize', () => {
  it('takes the wear away, and no smaller one does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 51, max: 54, noNaN: true }),
        fc.constantFrom(0.25, 0.5),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (widest, step, cleanUp) => {
          const { over, bore } = nextOversize(widest, 52, step, cleanUp);
          expect(bore).toBeCloseTo(52 + over, 12);
          expect(bore + 1e-6).toBeGreaterThanOrEqual(Math.max(52, widest + cleanUp) - 1e-6);
          if (over > 0) expect(bore - step).toBeLessThan(widest + cleanUp);
          expect(Math.abs(over / step - Math.round(over / step))).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('is none while the standard bore holds, and the first step where it just fits', () => {
    for (const other of [45, 60, 2.047 * 25.4]) {
      expect(() => assertItsStandard(69.95, other)).toThrow(
        /Give the standard bore of this barrel/,
      );
    }
    for (const own of [69.9, 69, 68]) expect(() => assertItsStandard(69.95, own)).not.toThrow();
    expect(nextOversize(51.9, 52, 0.25, 0.05).over).toBe(0);
    expect(nextOversize(52.1, 52, 0.1, 0).over).toBeCloseTo(0.1, 12);
  });
});
