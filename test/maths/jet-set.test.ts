import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaAgainst,
  mean,
  neighbouringSets,
  spreadOf,
  type JetSet,
} from '../../calculators/maths/carburettor/jet-set.ts';
import { areaByFlow, areaOfBore, boreOfArea } from '../../calculators/maths/carburettor/orifice.ts';
import { holdsTo, range } from './limits.ts';

/** The first of the sets: that of the least spread of area. */
const bestSet = (areas: readonly number[], wanted: number, near?: number): JetSet =>
  neighbouringSets(areas, wanted, near)[0]!;

const areas = fc.array(fc.integer({ min: 50, max: 200 }), { minLength: 1, maxLength: 9 });

/** The least spread of all sets of `wanted`, by trying each. */
function leastOf(of: readonly number[], wanted: number): number {
  let least = Infinity;
  for (let bits = 0; bits < 1 << of.length; bits += 1) {
    const those = of.filter((_, i) => bits & (1 << i));
    if (those.length === wanted) least = Math.min(least, spreadOf(those));
  }
  return least;
}

describe('the best set', () => {
  it('spreads as little as the best of all sets, of any bag', () => {
    fc.assert(
      fc.property(areas, fc.nat(), (bag, any) => {
        const wanted = 1 + (any % bag.length);
        const { chosen, spread } = bestSet(bag, wanted);
        expect(spread).toBeCloseTo(leastOf(bag, wanted), 9);
        expect(chosen).toHaveLength(wanted);
        expect(spreadOf(chosen.map((place) => bag[place]!))).toBeCloseTo(spread, 9);
        expect(chosen).toEqual([...new Set(chosen)].sort((a, b) => a - b));
      }),
      { numRuns: 300 },
    );
  });

  it('of jets alike takes those that come first', () => {
    expect(bestSet([1, 1, 1, 1], 2).chosen).toEqual([0, 1]);
    expect(bestSet([2, 1, 2, 1, 1], 2).chosen).toEqual([0, 2]);
    expect(bestSet([3, 1, 1, 1], 3).chosen).toEqual([1, 2, 3]);
  });

  it('of sets alike in spread is the one nearest to the size wanted, every one tried', () => {
    fc.assert(
      fc.property(areas, fc.nat(), fc.integer({ min: 50, max: 200 }), (bag, any, near) => {
        const wanted = 1 + (any % bag.length);
        const { chosen, spread } = bestSet(bag, wanted, near);
        const off = (those: readonly number[]): number => Math.abs(mean(those) - near);
        let nearest = Infinity;
        for (let bits = 0; bits < 1 << bag.length; bits += 1) {
          const those = bag.filter((_, i) => bits & (1 << i));
          if (those.length !== wanted || Math.abs(spreadOf(those) - spread) > 1e-8) continue;
          nearest = Math.min(nearest, off(those));
        }
        expect(off(chosen.map((place) => bag[place]!))).toBeCloseTo(nearest, 6);
        expect(spread).toBeCloseTo(leastOf(bag, wanted), 9);
      }),
      { numRuns: 300 },
    );
  });

  it('of one jet alone is the nearest, and of pairs alike the nearer pair', () => {
    expect(bestSet([1.07, 1.09, 1.12], 1, 1.092).chosen).toEqual([1]);
    expect(bestSet([1.07, 1.07, 1.2, 1.1, 1.1], 2, 1.11).chosen).toEqual([3, 4]);
    expect(bestSet([1.07, 1.07, 1.2, 1.1, 1.1], 2, 1.08).chosen).toEqual([0, 1]);
  });

  it('of all of them is all of them, and one alone spreads nothing', () => {
    expect(bestSet([3, 1, 2], 3)).toEqual({ chosen: [0, 1, 2], spread: 100 });
    expect(bestSet([3, 1, 2], 1)).toEqual({ chosen: [0], spread: 0 });
  });

  it('comes first of those that lie next to each other', () => {
    const sets = neighbouringSets([1, 5, 1.3, 4, 1.1], 2);
    expect(sets.map(({ chosen }) => chosen)).toEqual([
      [0, 4],
      [2, 4],
      [1, 3],
      [2, 3],
    ]);
  });

  it('goes by the mean, not by the difference alone', () => {
    expect(mean([1, 2, 6])).toBe(3);
    expect(spreadOf([1, 1.2])).toBeCloseTo(100 * (0.2 / 1.1), 12);
    expect(bestSet([1, 1.1, 2, 2.1], 2).chosen).toEqual([2, 3]);
  });
});

describe('an area against another', () => {
  it('is in per cent, + for larger', () => {
    expect(areaAgainst(1.1, 1)).toBeCloseTo(10, 12);
    expect(areaAgainst(0.9, 1)).toBeCloseTo(-10, 12);
  });
});

describe('flow of a hole', () => {
  const bench = { head: 300, coefficient: 0.7 };

  it('goes with the area and the root of the height', () => {
    const once = areaByFlow(100, 60, bench);
    expect(areaByFlow(200, 60, bench)).toBeCloseTo(2 * once, 12);
    expect(areaByFlow(100, 120, bench)).toBeCloseTo(once / 2, 12);
    expect(areaByFlow(100, 60, { ...bench, head: 1200 })).toBeCloseTo(once / 2, 12);
  });

  it('has a bore for each area', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5, noNaN: true }), (bore) => {
        expect(boreOfArea(areaOfBore(bore))).toBeCloseTo(bore, 9);
      }),
    );
  });
});

const bench = { head: 300, coefficient: 0.7 };

holdsTo([
  {
    code: 'too-few',
    of: ['wanted', 'jets'],
    run: (wanted) => bestSet([1, 2, 3], wanted),
    takes: [1, 3],
    refuses: [0, 4, 1.5, NaN],
    says: /as many jets as carburettors or more: .* cannot be chosen out of 3/,
  },
  {
    code: 'not-positive',
    of: ['areas'],
    run: (area) => bestSet([1, area], 1),
    takes: [0.001],
    refuses: [0, -1, NaN, Infinity],
    says: /its area is above 0/,
  },
  {
    of: ['head'],
    run: (head) => areaByFlow(100, 60, { ...bench, head }),
    takes: [0.001, 1e9],
    refuses: [0, -1, NaN, Infinity],
    says: range('The height of liquid over the jet', 'more than 0 mm'),
  },
  {
    of: ['coefficient'],
    run: (coefficient) => areaByFlow(100, 60, { ...bench, coefficient }),
    takes: [0.001, 1],
    refuses: [0, -1, 1.01, NaN],
    says: range('The coefficient of discharge', 'more than 0 and at most 1'),
  },
  {
    of: ['volume'],
    run: (volume) => areaByFlow(volume, 60, bench),
    takes: [0.001, 1e9],
    refuses: [0, -1, NaN, Infinity],
    says: range('The measured volume', 'more than 0 cc'),
  },
  {
    of: ['time'],
    run: (time) => areaByFlow(100, time, bench),
    takes: [0.001, 1e9],
    refuses: [0, -1, NaN, Infinity],
    says: range('The measured time', 'more than 0 s'),
  },
]);
