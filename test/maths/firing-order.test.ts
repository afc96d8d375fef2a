import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import {
  evenTops,
  firingMoved,
  firingOf,
  lobeDirections,
  setDirections,
  sharing,
  SPARE_NEAR_BOTTOM,
  TOGETHER,
  topAngles,
  unevenness,
  withinTurn,
} from '../../calculators/maths/crank/firing-order.ts';
import { thrown } from './thrown.ts';

const level = (pins: readonly number[]): number[] => pins.map(() => 0);
const angle = fc.double({ min: -360, max: 360, noNaN: true });
const crank = fc.array(fc.record({ pin: angle, lean: angle }), { minLength: 1, maxLength: 8 });
const topsOf = (cylinders: readonly { pin: number; lean: number }[]): readonly number[] =>
  topAngles(
    cylinders.map(({ pin }) => pin),
    cylinders.map(({ lean }) => lean),
  );

describe('the tops', () => {
  it('come later by the lean and earlier by the pin', () => {
    expect(topAngles([0, 30], [0, 0])).toEqual([0, 330]);
    expect(topAngles([0, 0], [0, 30])).toEqual([0, 30]);
    expect(topAngles([10, 40], [5, 50])).toEqual([0, 15]);
  });

  it('begin at 0 and stay within a turn, whatever the angles', () => {
    fc.assert(
      fc.property(crank, (cylinders) => {
        const tops = topsOf(cylinders);
        expect(tops[0]).toBe(0);
        for (const top of tops) expect(top >= 0 && top < 360).toBe(true);
      }),
    );
  });

  it('are the same however the whole engine is leaned or the pins are counted', () => {
    fc.assert(
      fc.property(crank, fc.integer({ min: -3, max: 3 }), (cylinders, quarter) => {
        const by = 90 * quarter;
        const half = cylinders.map(({ pin, lean }) => ({ pin: pin / 4, lean: lean / 4 }));
        const leaned = half.map(({ pin, lean }) => ({ pin, lean: lean + by }));
        const before = topsOf(half);
        topsOf(leaned).forEach((top, i) => {
          const off = Math.abs(top - before[i]!);
          expect(Math.min(off, 360 - off)).toBeLessThan(1e-6);
        });
      }),
    );
  });

  it('take the dust of a sum of angles for the whole turn that it is', () => {
    expect(withinTurn(-1e-12)).toBe(0);
    expect(withinTurn(360 - 1e-12)).toBe(0);
    expect(withinTurn(-1)).toBe(359);
    expect(Object.is(withinTurn(-360), 0)).toBe(true);
  });

  it('need a lean for each pin', () => {
    const error = thrown(() => topAngles([0, 120], [0]));
    expect([error.code, error.quantities]).toEqual(['lean-missing', ['lean']]);
  });
});

describe('the firing', () => {
  it('goes by the tops, and by the numbers of those that fire together', () => {
    expect(firingOf([0, 240, 120])).toEqual({ order: [1, 3, 2], intervals: [120, 120, 120] });
    expect(firingOf([0, 180, 180, 0])).toEqual({
      order: [1, 4, 2, 3],
      intervals: [0, 180, 0, 180],
    });
    expect(firingOf([0])).toEqual({ order: [1], intervals: [360] });
  });

  it('names each cylinder once, 1 first, and fills one turn', () => {
    fc.assert(
      fc.property(crank, (cylinders) => {
        const { order, intervals } = firingOf(topsOf(cylinders));
        expect(order[0]).toBe(1);
        expect([...order].sort((a, b) => a - b)).toEqual(cylinders.map((_, i) => i + 1));
        expect(intervals.reduce((sum, one) => sum + one, 0)).toBeCloseTo(360, 6);
        expect(Math.min(...intervals)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('keeps its order while a reading moves, also across the top of cylinder 1', () => {
    const twinned = firingOf([0, 180, 0.05, 180]);
    expect(twinned).toEqual({ order: [1, 3, 2, 4], intervals: [0.05, 179.95, 0, 180] });
    const moved = firingMoved(twinned, [0, 180, 359.5, 179]);
    expect(moved.order).toEqual([1, 3, 2, 4]);
    moved.intervals.forEach((interval, k) =>
      expect(interval).toBeCloseTo([-0.5, 180.5, -1, 181][k]!, 9),
    );
  });

  it('tells a change of the longest interval less the shortest by its sign', () => {
    expect(unevenness([120, 120, 120], [119, 120, 121])).toBe(2);
    expect(unevenness([121, 120, 119], [119, 120, 121])).toBe(-2);
    expect(unevenness([0, 360], [0.5, 359.5])).toBe(0);
  });

  it('is even where all that do not fire together are as far apart', () => {
    expect(unevenness([120, 120, 120])).toBe(0);
    expect(unevenness([0, 180, 0, 180])).toBe(0);
    expect(unevenness([0, 360])).toBe(0);
    expect(unevenness([90, 270])).toBe(180);
  });
});

it('puts a lobe as far back as its set stands on', () => {
  const tops = topAngles([0, 240, 120], level([0, 0, 0]));
  expect(lobeDirections(tops)).toEqual([0, 240, 120]);
});

describe('sets of points', () => {
  it('stand one to a cylinder, where each fires by itself', () => {
    expect(setDirections([0, 120, 240])).toEqual([0, 120, 240]);
    expect(setDirections([0, 270, 90, 180])).toEqual([0, 270, 90, 180]);
  });

  it('stand one to those that fire together: two for a flat crank of four', () => {
    expect(setDirections([0, 180, 180, 0])).toEqual([0, 180]);
    expect(setDirections([0, 0])).toEqual([0]);
  });

  it('count what misses by less than a tenth of a degree as together, past the whole turn too', () => {
    expect(setDirections([0, 359.95])).toEqual([0]);
    expect(setDirections([0, 0.05])).toEqual([0]);
    expect(setDirections([200, 200 + TOGETHER])).toEqual([200, 200 + TOGETHER]);
    expect(setDirections([0, 359.8])).toEqual([0, 359.8]);
    // The first of three that are a little apart from each other stands for the next alone.
    expect(setDirections([10, 10.3, 10.05, 200])).toEqual([10, 10.3, 200]);
  });
});

describe('a coil with two leads', () => {
  const tops = [0, 0.5, 180, 180 - SPARE_NEAR_BOTTOM, 90];
  it('is shared by tops that count as one, or half a turn apart', () => {
    expect(sharing(tops, 1, 1)).toEqual({ together: [2], opposite: [3, 4] });
    expect(sharing(tops, 1, 0.4).together).toEqual([]);
    expect(sharing(tops, 5, 1)).toEqual({ together: [], opposite: [] });
    expect(sharing([0, 359.5], 2, 1).together).toEqual([1]);
    // Tops a quarter turn either side of cylinder 1 are half a turn from each other, not one with each other.
    expect(sharing([0, 90, 270], 2, 1)).toEqual({ together: [], opposite: [3] });
    expect(sharing([0, 100, 101], 2, 1).together).toEqual([3]);
  });

  it('is shared both ways or not at all', () => {
    fc.assert(
      fc.property(crank, (cylinders) => {
        const all = topsOf(cylinders);
        all.forEach((_, i) => {
          for (const other of sharing(all, i + 1, 2).together) {
            expect(sharing(all, other, 2).together).toContain(i + 1);
          }
          for (const other of sharing(all, i + 1, 2).opposite) {
            expect(sharing(all, other, 2).opposite).toContain(i + 1);
          }
        });
      }),
    );
  });
});

describe('an even firing order', () => {
  it.each([
    [[1], [0]],
    [
      [1, 2],
      [0, 180],
    ],
    [
      [1, 3, 2],
      [0, 240, 120],
    ],
    [
      [3, 2, 1],
      [0, 240, 120],
    ],
    [
      [1, 3, 2, 4],
      [0, 180, 90, 270],
    ],
  ])('%j has its tops at %j', (order, tops) => {
    expect(evenTops(order)).toEqual(tops);
  });

  it('comes back from its tops, begun at cylinder 1', () => {
    expect(firingOf(evenTops([2, 4, 1, 3])).order).toEqual([1, 3, 2, 4]);
  });
});
