import { describe, expect, it } from 'vitest';
import plateLayout from '../../calculators/plate/plate-layout/calculator.tsx';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { drawn } from './support/draw.tsx';
import { overlaps, strikes } from './support/faults.ts';
import { sheetsOf } from './support/marks.ts';

const calculator: AnyCalculator = plateLayout;

describe('the names of uneven sets on the plate', () => {
  it.each([
    ['even', [90, 90, 90]],
    ['0/90/100/200', [90, 10, 100]],
    ['0/10/20/30', [10, 10, 10]],
    ['0/180/190/350', [180, 10, 160]],
    ['0/100/145/235', [100, 45, 90]],
  ])('%s: all there, on no line of the plate, its stock or the bars', (_, spacings) => {
    for (const start of [0, 45, 90, 130]) {
      const texts: Record<string, string> = { sets: '4', start: String(start) };
      spacings.forEach((angle, i) => (texts[`spacing-${String(i + 2)}`] = String(angle)));
      // One hole, so that sets ten degrees apart have room for theirs.
      const evaluation = evaluate(calculator, { ...texts, holes: '1' }, { lengths: 'mm' });
      expect(evaluation.computed).toBe(true);
      const [sheet] = sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation }));
      const names = sheet!.texts.filter(({ words }) => words.startsWith('set '));
      expect(names.map(({ words }) => words)).toEqual(['set 1', 'set 2', 'set 3', 'set 4']);
      expect(overlaps(sheet!)).toEqual([]);
      const bare = { ...sheet!, texts: names.map((name) => ({ ...name, haloed: false })) };
      const crossed = strikes(bare).filter((fault) => !fault.includes('drawn-centre'));
      expect(crossed, `from ${String(start)}°`).toEqual([]);
    }
  });
});

describe('the names on the plate of the example', () => {
  it.each([
    ['as it opens', {}],
    ['with two sets', { sets: '2' }],
    ['with four sets', { sets: '4' }],
    ['with six sets', { sets: '6' }],
    [
      'with four holes near the rim',
      { sets: '4', outside: '120', holes: '1', 'radius-1': '50', slots: '0' },
    ],
  ])('%s: all there, on no line but a centre line', (_, texts) => {
    const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
    const [sheet] = sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation }));
    const bare = { ...sheet!, texts: sheet!.texts.map((name) => ({ ...name, haloed: false })) };
    expect(strikes(bare).filter((fault) => !fault.includes('drawn-centre'))).toEqual([]);
  });

  it('no hole’s name runs on from that of a set', () => {
    const near: string[] = [];
    for (const sets of ['2', '3', '4', '5', '6'])
      for (const radius of ['40', '45', '50', '54']) {
        const texts = { sets, outside: '120', holes: '1', 'radius-1': radius, slots: '0' };
        const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
        const [sheet] = sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation }));
        const bySet = sheet!.texts.filter(({ words }) => words.startsWith('set '));
        const byHole = sheet!.texts.filter(({ words }) => /^\d-\d$/.test(words));
        expect(byHole.length).toBeGreaterThan(0);
        for (const { words, area } of bySet)
          for (const hole of byHole) {
            const level = area.top < hole.area.bottom && hole.area.top < area.bottom;
            const apart = Math.max(hole.area.left - area.right, area.left - hole.area.right);
            if (level && apart < 8) near.push(`${sets} at ${radius}: ${words} ${hole.words}`);
          }
      }
    expect(near).toEqual([]);
  });
});
