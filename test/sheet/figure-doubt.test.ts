import { expect, it } from 'vitest';
import { figuresAtHand } from '../../calculators/sheet/against.ts';
import { isDoubted } from '../../calculators/sheet/figure-doubt.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';

const engine = (figures: Partial<Record<FigureKey, number>>): Engine =>
  (Object.keys(figures) as FigureKey[]).reduce(
    (so, key) => setFigure(so, key, figures[key]),
    newEngine('e-1', 'Single'),
  );

// 27 mm of 60 are half a stroke down, some 85° before the top; 2.7 mm are 22°.
it('a figure where no engine fires is doubted wherever it stands by itself', () => {
  const wrong = engine({ stroke: 60, rod: 118, target: 27.03 });
  expect(isDoubted(wrong, 'target')).toBe(true);
  const line = 'Fires before top dead centre: 27.03 mm, doubted: check it in the sheet';
  expect(figuresAtHand(wrong, 'mm')).toContain(line);
  expect(sheetSummary(wrong, 'mm', '')).toContain(line);
  expect(isDoubted(engine({ stroke: 60, rod: 118, target: 2.7 }), 'target')).toBe(false);
});

it('without a rod it is doubted by its depth alone, and past the stroke with one', () => {
  expect(isDoubted(engine({ target: 27.03 }), 'target')).toBe(true);
  expect(isDoubted(engine({ target: 2.7 }), 'target')).toBe(false);
  expect(isDoubted(engine({ stroke: 20, rod: 40, target: 21 }), 'target')).toBe(true);
});

it('others are doubted beside the rest of the sheet, and by common practice', () => {
  expect(isDoubted(engine({ gap: 0.35, lift: 0.3 }), 'gap')).toBe(true);
  expect(isDoubted(engine({ gap: 3.5 }), 'gap')).toBe(true);
  expect(isDoubted(engine({ gap: 0.35, lift: 1 }), 'gap')).toBe(false);
  expect(isDoubted(engine({}), 'gap')).toBe(false);
});
