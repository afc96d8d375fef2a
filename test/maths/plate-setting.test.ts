import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arcForTiming,
  errorsAfterMove,
  plateDegrees,
  positionAt,
  setMoves,
  settlePlate,
  timingAt,
  withinTolerance,
} from '../../calculators/maths/plate/plate-setting.ts';
import { thrown } from './thrown.ts';

const angle = fc.double({ min: 0, max: 60, noNaN: true });
const cylinders = fc.array(angle, { minLength: 1, maxLength: 8 });

describe('one plate for several cylinders', () => {
  it('splits the difference between earliest and latest', () => {
    const setting = settlePlate([26, 23, 22], 22);
    expect(setting.move).toBe(-2);
    expect(setting.errors).toEqual([2, -1, -2]);
    expect(setting.errorsBefore).toEqual([4, 1, 0]);
    expect(setting.spread).toBe(4);
    expect(setting.worst).toBe(2);
  });

  it('advances when all are late', () => {
    expect(settlePlate([18, 19], 22).move).toBe(3.5);
  });

  it('spreads as far apart as they were found, wherever the mark wanted is', () => {
    const setting = settlePlate([25, 21], 20);
    expect(setting.spread).toBe(4);
    expect(setting.worst).toBe(2);
    expect(setting.move).toBe(-3);
    expect(setting.errors).toEqual([2, -2]);
  });

  it('leaves one cylinder nothing', () => {
    const setting = settlePlate([20], 22);
    expect(setting.move).toBe(2);
    expect(setting.errors).toEqual([0]);
  });

  it('turning the plate moves all errors equally', () => {
    fc.assert(
      fc.property(
        cylinders,
        angle,
        fc.double({ min: -20, max: 20, noNaN: true }),
        (found, target, move) => {
          const before = errorsAfterMove(found, target, 0);
          errorsAfterMove(found, target, move).forEach((error, index) => {
            expect(error - before[index]!).toBeCloseTo(move, 9);
          });
        },
      ),
    );
  });

  it('no other turn makes the worst error smaller', () => {
    fc.assert(
      fc.property(
        cylinders,
        angle,
        fc.double({ min: -60, max: 60, noNaN: true }),
        (found, target, move) => {
          const best = settlePlate(found, target);
          const other = errorsAfterMove(found, target, move).map(Math.abs);
          expect(Math.max(...other)).toBeGreaterThanOrEqual(best.worst - 1e-9);
          expect(Math.max(...best.errors.map(Math.abs))).toBeCloseTo(best.worst, 9);
        },
      ),
    );
  });

  it('each set moves so that nothing is left of its error', () => {
    const setting = settlePlate([26, 23, 22], 22);
    const moves = setMoves(setting, 30, 1);
    moves.forEach((millimetres, index) => {
      const advance = (millimetres / 30) * (180 / Math.PI);
      expect(setting.errors[index]! + advance).toBeCloseTo(0, 12);
    });
    expect(setMoves(settlePlate([20], 22), 30, 1)).toEqual([0]);
  });

  it('on a half-speed shaft the plate turns, and the sets move, half as far', () => {
    expect(plateDegrees(4, 0.5)).toBe(2);
    expect(arcForTiming(4, 30, 0.5)).toBeCloseTo(arcForTiming(4, 30, 1) / 2, 12);
  });

  it('one degree at 57.3 mm is one millimetre', () => {
    expect(arcForTiming(1, 180 / Math.PI, 1)).toBeCloseTo(1, 12);
  });

  it('a piston position before the top is a timing and the other way round, after it too', () => {
    const engine = { stroke: 50, rodLength: 105, pinOffset: 1 };
    expect(timingAt(engine, 0)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (before) => {
        const timing = timingAt(engine, before);
        expect(timing * before).toBeGreaterThanOrEqual(0);
        expect(positionAt(engine, timing)).toBeCloseTo(before, 8);
      }),
    );
    // With the pin offset the same travel lies further from the top on one side.
    expect(timingAt(engine, -2)).not.toBeCloseTo(-timingAt(engine, 2), 3);
  });

  it('judges against a tolerance, the limit itself included', () => {
    expect(withinTolerance([1, -1], 1)).toBe(true);
    expect(withinTolerance([1, -1.01], 1)).toBe(false);
  });

  it.each([
    ['cylinders', () => settlePlate([], 22), /1 to 8/],
    [
      'cylinders',
      () =>
        settlePlate(
          Array.from({ length: 9 }, () => 20),
          22,
        ),
      /9 were given/,
    ],
    ['found-out-of-range', () => settlePlate([20, 181], 22), /Cylinder 2/],
    ['found-out-of-range', () => settlePlate([Number.NaN], 22), /Cylinder 1/],
    ['target-out-of-range', () => settlePlate([20], -91), /−90/],
    ['radius', () => setMoves(settlePlate([20], 22), 0, 1), /above 0 mm/],
    ['tolerance', () => withinTolerance([0], 0), /above 0/],
  ])('says %s', (code, action, sentence) => {
    const error = thrown(action);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(sentence);
  });
});
