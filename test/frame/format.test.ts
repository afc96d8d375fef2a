import { describe, expect, it } from 'vitest';
import { showFigure, shownText } from '../../calculators/frame/format.ts';

describe('a result as people read it', () => {
  it.each([
    [21.5147, 0.05, '21.51 ± 0.05°'],
    [21.5147, 0.3, '21.5 ± 0.3°'],
    [12022.4, 698, '12000 ± 700°'],
    [2344.2, 68, '2340 ± 70°'],
    [36.04, 2.8, '36.0 ± 2.8°'],
    [-1234.5, 40, '−1230 ± 40°'],
    [12, 40, '10 ± 40°'],
  ])('%d with a ± of %d is %s', (value, spread, text) => {
    expect(shownText(showFigure(value, 'deg', 2, 'mm', spread))).toBe(text);
  });

  it('has the decimals of its own where nothing measured limits them', () => {
    expect(shownText(showFigure(21.5147, 'deg', 1, 'mm'))).toBe('21.5°');
  });

  it('bears a plus where the sign matters', () => {
    expect(shownText(showFigure(0.33, 'deg', 2, 'mm', 0.1, { signed: true }))).toBe(
      '+0.33 ± 0.10°',
    );
  });

  it.each([
    [0.3547, '0.4°'],
    [0.1796, '0.18°'],
    [0.0281, '0.028°'],
    [0, '0.000°'],
  ])('where it is itself a ±, %d has the digits of one: %s', (value, text) => {
    expect(shownText(showFigure(value, 'deg', 3, 'mm', undefined, { bare: true }))).toBe(text);
  });
});
