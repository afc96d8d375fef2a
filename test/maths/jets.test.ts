import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  jetAreaRatio,
  jetOfArea,
  mixtureRatio,
  sizesAbout,
} from '../../calculators/maths/carburettor/jets.ts';
import { thrown } from './thrown.ts';

const relative = fc.double({ min: 0.5, max: 1.5, noNaN: true });

describe('a jet for other air', () => {
  it('keeps the mixture', () => {
    fc.assert(
      fc.property(relative, (density) => {
        expect(mixtureRatio(density, jetAreaRatio(density))).toBeCloseTo(1, 12);
      }),
    );
  });

  it('comes back to the first jet on the way back', () => {
    fc.assert(
      fc.property(relative, (density) => {
        const there = jetOfArea(1, jetAreaRatio(density));
        expect(jetOfArea(there, jetAreaRatio(1 / density))).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is smaller in thin air, in which the same jet runs rich', () => {
    expect(jetAreaRatio(0.81)).toBeCloseTo(0.9, 12);
    expect(mixtureRatio(0.81)).toBeCloseTo(1 / 0.9, 12);
    expect(jetOfArea(1, 0.81)).toBeCloseTo(0.9, 12);
  });

  it('refuses densities that no two places have', () => {
    expect(thrown(() => jetAreaRatio(0)).quantities).toEqual(['relativeDensity']);
    expect(thrown(() => mixtureRatio(NaN)).quantities).toEqual(['relativeDensity']);
  });
});

describe('sizes to either side', () => {
  it('finds the next up and the next down in any order', () => {
    expect(sizesAbout(0.97, [1.05, 0.9, 1, 0.95])).toEqual({ richer: 1, weaker: 0.95 });
  });

  it('takes the size itself on both sides', () => {
    expect(sizesAbout(0.1 + 0.2, [0.3, 0.4])).toEqual({ richer: 0.3, weaker: 0.3 });
  });

  it('leaves a side open where there is none', () => {
    expect(sizesAbout(0.5, [1])).toEqual({ richer: 1, weaker: undefined });
    expect(sizesAbout(1.5, [1])).toEqual({ richer: undefined, weaker: 1 });
  });

  it('refuses an empty list and a jet without a hole', () => {
    // Beside a size of 1000, half a millionth is what rounding leaves, and no other size.
    const nearly = 1000 - 5e-7;
    expect(sizesAbout(1000, [nearly, 1010])).toEqual({ richer: nearly, weaker: nearly });
    expect(thrown(() => sizesAbout(1, [])).code).toBe('no-sizes');
    expect(thrown(() => sizesAbout(1, [1, 0])).code).toBe('size-not-positive');
    expect(thrown(() => sizesAbout(1, [NaN])).code).toBe('size-not-positive');
  });
});
