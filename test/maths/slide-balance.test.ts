import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  balanceSlides,
  freePlayAfter,
  leastWorkOpening,
  openingsFromVacuum,
} from '../../calculators/maths/carburettor/slide-balance.ts';
import { thrown } from './thrown.ts';

const openings = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), {
  minLength: 2,
  maxLength: 8,
});

describe('balancing slides', () => {
  it('leaves the middle one of three alone', () => {
    const { target, turns, work, spread } = balanceSlides([3, 2, 2.5], 1);
    expect(target).toBe(2.5);
    expect(turns).toEqual([-0.5, 0.5, 0]);
    expect(work).toBe(1);
    expect(spread).toBe(1);
  });

  it('takes, of an even number, the one that more slides have already', () => {
    expect(leastWorkOpening([1, 2, 2, 2])).toBe(2);
    expect(leastWorkOpening([1, 2, 3, 3])).toBe(3);
    expect(leastWorkOpening([1, 1, 2, 3])).toBe(1);
    expect(leastWorkOpening([1, 2, 3, 4])).toBe(2);
  });

  it('brings all to the target, whatever they were', () => {
    fc.assert(
      fc.property(openings, fc.double({ min: 0.3, max: 2, noNaN: true }), (found, thread) => {
        const { target, turns } = balanceSlides(found, thread);
        found.forEach((opening, i) => {
          expect(opening + turns[i]! * thread).toBeCloseTo(target, 9);
        });
        expect(turns.some((turn) => turn === 0)).toBe(true);
      }),
    );
  });

  it('brings all to a wanted opening', () => {
    expect(balanceSlides([1, 2], 0.5, 2).turns).toEqual([2, 0]);
  });

  it('never asks for less work with a wanted opening than with its own', () => {
    fc.assert(
      fc.property(openings, fc.double({ min: 0, max: 10, noNaN: true }), (found, wanted) => {
        expect(balanceSlides(found, 1, wanted).work).toBeGreaterThanOrEqual(
          balanceSlides(found, 1).work - 1e-9,
        );
      }),
    );
  });

  it('has nothing to do to a single slide, unless an opening is wanted of it', () => {
    expect(balanceSlides([2.5], 1)).toEqual({ target: 2.5, turns: [0], work: 0, spread: 0 });
    expect(balanceSlides([2.5], 0.5, 3).turns).toEqual([1]);
  });

  it('refuses no slide, nine slides, a negative opening and a thread without pitch', () => {
    expect(thrown(() => balanceSlides([], 1)).code).toBe('slides');
    expect(thrown(() => balanceSlides(Array<number>(9).fill(1), 1)).code).toBe('slides');
    expect(thrown(() => balanceSlides([1, -1], 1)).quantities).toEqual(['opening-2']);
    expect(thrown(() => balanceSlides([1, NaN], 1)).quantities).toEqual(['opening-2']);
    expect(thrown(() => balanceSlides([1, 2], 0)).quantities).toEqual(['thread']);
  });
});

describe('gauges of vacuum', () => {
  it('more vacuum is less open', () => {
    expect(openingsFromVacuum([20, 24, 18], 4, 0.8)).toEqual([0, -0.8, 0.4]);
  });

  it('refuses a gauge that does not move', () => {
    expect(thrown(() => openingsFromVacuum([1, 2], 0, 1)).quantities).toEqual(['perTurn']);
  });
});

describe('free play of the cables', () => {
  it('is taken up by what lifts the slide, and given back alike', () => {
    const { after, giveBack, left } = freePlayAfter([2, 2, 2], [1.5, 0, -0.5], 1);
    expect(after).toEqual([0.5, 2, 2.5]);
    expect(giveBack).toBe(0.5);
    expect(left).toEqual([1, 2.5, 3]);
  });

  it('asks for nothing back where every cable has enough', () => {
    expect(freePlayAfter([2, 2], [0.5, 0], 1).giveBack).toBe(0);
  });
});
