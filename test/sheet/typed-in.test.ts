import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { isTypedInInches } from '../../calculators/sheet/typed-in.ts';

const of = (figures: Partial<Record<FigureKey, number>>): Engine =>
  Object.entries(figures).reduce(
    (so, [key, value]) => setFigure(so, key as FigureKey, value),
    newEngine('e-1', 'Twin'),
  );
const INCH = 25.4;

describe('whether lengths were typed in inches', () => {
  it('is seen by those that come out even in inches alone', () => {
    const twin = { bore: 2.244 * INCH, stroke: 2.362 * INCH, rod: 4.528 * INCH };
    expect(isTypedInInches(of(twin))).toBe(true);
    expect(isTypedInInches(setEntry(of({}), 'squish', 'found', 0, 0.041 * INCH))).toBe(true);
    // One figure from a metric drawing among them changes nothing.
    expect(isTypedInInches(of({ ...twin, gap: 0.35 }))).toBe(true);
  });

  it('is not said of millimetres, of what is even in both, and of nothing', () => {
    expect(isTypedInInches(demoSheet())).toBe(false);
    expect(isTypedInInches(of({ bore: 54, stroke: 50.8 }))).toBe(false);
    expect(isTypedInInches(of({ stroke: 50.8 }))).toBe(false);
    expect(isTypedInInches(of({ cylinders: 2, ratio: 25 }))).toBe(false);
    expect(isTypedInInches(of({}))).toBe(false);
  });
});
