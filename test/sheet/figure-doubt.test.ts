import { expect, it } from 'vitest';
import { doubtedBefore, figuresAtHand } from '../../calculators/sheet/against.ts';
import { figureDoubt } from '../../calculators/sheet/figure-doubt.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { progressOf, stateTold } from '../../calculators/sheet/progress.ts';
import { setDone, setEntry } from '../../calculators/sheet/set-entry.ts';
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
  expect(figureDoubt(wrong, 'target')).toBeDefined();
  const line = 'Fires before top dead centre: 27.03 mm, doubted: check it in the sheet';
  expect(figuresAtHand(wrong, 'mm')).toContain(line);
  expect(sheetSummary(wrong, 'mm', '')).toContain(line);
  expect(figureDoubt(engine({ stroke: 60, rod: 118, target: 2.7 }), 'target')).toBeUndefined();
});

it('without a rod it is doubted by its depth alone, and past the stroke with one', () => {
  expect(figureDoubt(engine({ target: 27.03 }), 'target')).toBeDefined();
  expect(figureDoubt(engine({ target: 2.7 }), 'target')).toBeUndefined();
  expect(figureDoubt(engine({ stroke: 20, rod: 40, target: 21 }), 'target')).toBeDefined();
});

it('a timing that passes and is doubted is named before the first start', () => {
  const base = engine({ cylinders: 1, stroke: 60, rod: 118, 'timing-tolerance': 1 });
  const timed = (target: number) =>
    setEntry(setFigure(base, 'target', target), 'timing', 'found', 0, target);
  const named = (of: Engine) => doubtedBefore(of, progressOf(of), 'mm');
  // 10 mm of 60 are 43° before the top.
  expect(named(timed(10))).toMatchObject([
    { spot: { step: 'timing', index: 0 }, title: 'Set the timing' },
  ]);
  expect(named(timed(10))[0]!.asks).toMatch(
    /43° before the top, earlier than such engines are set/,
  );
  expect(named(timed(2.7))).toEqual([]);
});

it('a ratio with a digit too many is doubted in its step too, which has no readings', () => {
  const mixed = (ratio: number): Engine =>
    setDone(setFigure(engine({ cylinders: 1 }), 'ratio', ratio), 'fuel', true);
  const told = (of: Engine) => stateTold(of, 'fuel', progressOf(of).fuel.state);
  expect(told(mixed(160))).toBe('Done, but doubted');
  expect(told(mixed(16))).toBe('Done');
  const [first] = doubtedBefore(mixed(160), progressOf(mixed(160)), 'mm');
  expect(first).toMatchObject({ spot: { step: 'fuel' } });
  expect(first!.asks).toMatch(/160 : 1 is far from common practice, which is 16 : 1 to 50 : 1/);
  expect(doubtedBefore(mixed(16), progressOf(mixed(16)), 'mm')).toEqual([]);
});

it('others are doubted beside the rest of the sheet, and by common practice', () => {
  expect(figureDoubt(engine({ gap: 0.35, lift: 0.3 }), 'gap')).toBeDefined();
  expect(figureDoubt(engine({ gap: 3.5 }), 'gap')).toBeDefined();
  expect(figureDoubt(engine({ gap: 0.35, lift: 1 }), 'gap')).toBeUndefined();
  expect(figureDoubt(engine({ 'least-play': 0 }), 'least-play')).toMatch(/1 mm or more/);
  expect(figureDoubt(engine({ 'least-play': 1 }), 'least-play')).toBeUndefined();
  // 500 over 60 is 8.3 strokes; 118 over 60 is 2.0.
  expect(figureDoubt(engine({ stroke: 60, rod: 500 }), 'rod')).toMatch(/is 8\.3 strokes long/);
  expect(figureDoubt(engine({ stroke: 60, rod: 40 }), 'stroke')).toMatch(/is 0\.7 strokes long/);
  expect(figureDoubt(engine({ stroke: 60, rod: 118 }), 'rod')).toBeUndefined();
  expect(figureDoubt(engine({}), 'gap')).toBeUndefined();
});
