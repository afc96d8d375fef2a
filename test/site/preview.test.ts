import { describe, expect, it } from 'vitest';
import { calculators } from '../../site/all-calculators.ts';
import { evenly, figureLines } from '../../site/previews/preview.ts';

describe('the words of a link preview', () => {
  it('stand in even lines, and none of them alone', () => {
    expect(evenly('Clearances, and what heat does to them', 30)).toEqual([
      'Clearances, and what',
      'heat does to them',
    ]);
    expect(evenly('Fuel and oil', 17)).toEqual(['Fuel and oil']);
    expect(evenly('Extraordinarily', 4)).toEqual(['Extraordinarily']);
  });

  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
    'keep each figure of %s with its ± and its unit on one line',
    (_, calculator) => {
      const lines = figureLines(calculator);
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) {
        expect(line).not.toMatch(/±$|^±|^\S{1,4}$/);
        expect(line.length).toBeLessThanOrEqual(36);
      }
    },
  );
});
