import { describe, expect, it } from 'vitest';
import { judge } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';

const THOU = 0.0254;

const gapOf = (gap: number, tolerance: number, read: number): Engine =>
  setEntry(
    { ...newEngine('e-1', 'Single'), figures: { cylinders: 1, gap, 'gap-tolerance': tolerance } },
    'gap',
    'found',
    0,
    read,
  );

describe('a reading at the very edge passes, whichever lengths are chosen', () => {
  it.each([
    [0.35, 0.03, 0.32],
    [0.4, 0.05, 0.45],
    [0.35, 0.02, 0.33],
    [0.5, 0.1, 0.4],
    [14 * THOU, THOU, 13 * THOU],
    [12 * THOU, 2 * THOU, 10 * THOU],
    [16 * THOU, 0.03, 0.38],
  ])('%f ± %f, read %f', (gap, tolerance, read) => {
    for (const lengths of ['mm', 'in'] as const)
      expect(judge(gapOf(gap, tolerance, read), 'gap', lengths).rows[0]!.result, lengths).toBe(
        'pass',
      );
  });

  it.each([
    [0.35, 0.03, 0.31],
    [0.5, 0.1, 0.38],
    [14 * THOU, THOU, 12.8 * THOU],
  ])('and one beyond it fails in both: %f ± %f, read %f', (gap, tolerance, read) => {
    for (const lengths of ['mm', 'in'] as const)
      expect(judge(gapOf(gap, tolerance, read), 'gap', lengths).rows[0]!.result, lengths).toBe(
        'fail',
      );
  });
});
