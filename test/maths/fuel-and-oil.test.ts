import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  emptyTank,
  mixedRatio,
  oilFor,
  oilToReach,
  partsOf,
  percentOfRatio,
  ratioOfPercent,
} from '../../calculators/maths/fuel/fuel-and-oil.ts';
import { thrown } from './thrown.ts';

const litres = fc.double({ min: 0.5, max: 30, noNaN: true });
const ratio = fc.double({ min: 10, max: 100, noNaN: true });

describe('oil for petrol', () => {
  it('is a part in so many', () => {
    expect(oilFor(5, 25)).toBe(0.2);
    expect(oilFor(0, 25)).toBe(0);
  });

  it('is the same by ratio and by per cent', () => {
    expect(ratioOfPercent(4)).toBe(25);
    expect(percentOfRatio(25)).toBe(4);
  });
});

describe('what is in the tank', () => {
  it('is petrol and oil', () => {
    const { petrol, oil } = partsOf({ volume: 26, ratio: 25 });
    expect(petrol).toBeCloseTo(25, 12);
    expect(oil).toBeCloseTo(1, 12);
  });

  it('keeps its ratio when more of the same is put in', () => {
    fc.assert(
      fc.property(litres, litres, ratio, (fuel, volume, r) => {
        expect(mixedRatio(fuel, oilFor(fuel, r), { volume, ratio: r })).toBeCloseTo(r, 8);
      }),
    );
  });

  it('comes to a ratio between the two', () => {
    fc.assert(
      fc.property(litres, litres, ratio, ratio, (fuel, volume, there, added) => {
        const mixed = mixedRatio(fuel, oilFor(fuel, added), { volume, ratio: there });
        expect(mixed).toBeGreaterThanOrEqual(Math.min(there, added) - 1e-9);
        expect(mixed).toBeLessThanOrEqual(Math.max(there, added) + 1e-9);
      }),
    );
  });

  it('comes to the wanted ratio with the oil to reach it', () => {
    fc.assert(
      fc.property(litres, litres, ratio, ratio, (fuel, volume, there, wanted) => {
        fc.pre(there >= wanted);
        const tank = { volume, ratio: there };
        expect(mixedRatio(fuel, oilToReach(fuel, wanted, tank), tank)).toBeCloseTo(wanted, 8);
      }),
    );
  });

  it('needs the plain amount when the tank is empty', () => {
    expect(oilToReach(5, 25, emptyTank)).toBe(oilFor(5, 25));
  });
});

describe('what cannot be', () => {
  it('a tank already richer in oil than the whole is to be', () => {
    const error = thrown(() => oilToReach(1, 50, { volume: 5.2, ratio: 25 }));
    expect(error.code).toBe('too-much-oil');
    expect(error.message).toMatch(/at least 5 litres/);
    expect(oilToReach(5, 50, { volume: 5.2, ratio: 25 })).toBeCloseTo(0, 12);
  });

  it('nothing to mix, and no oil at all', () => {
    expect(thrown(() => mixedRatio(0, 0)).code).toBe('empty');
    expect(thrown(() => mixedRatio(5, 0)).code).toBe('no-oil');
  });

  it.each<[string, () => unknown]>([
    ['fuel', () => oilFor(-1, 25)],
    ['ratio', () => oilFor(1, 0)],
    ['ratio', () => oilFor(1, NaN)],
    ['percent', () => ratioOfPercent(0)],
    ['already', () => partsOf({ volume: -1, ratio: 25 })],
    ['alreadyRatio', () => partsOf({ volume: 1, ratio: 0 })],
    ['oil', () => mixedRatio(1, -1)],
  ])('%s beyond its limits', (quantity, run) => {
    const error = thrown(run);
    expect(error.code).toBe('out-of-range');
    expect(error.quantities).toEqual([quantity]);
  });
});
