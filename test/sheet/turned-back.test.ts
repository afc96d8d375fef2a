import { describe, expect, it } from 'vitest';
import { fromShown } from '../../calculators/frame/text/units.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { figureKeys, figureSpec, type FigureKey } from '../../calculators/sheet/figures.ts';
import { specOf } from '../../calculators/sheet/box-specs.ts';
import { figureWords } from '../../calculators/sheet/figure-words.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { textInField } from '../../site/fields/field-text.ts';

/**
 * The last digit of the tool with which a figure is measured, mm: a bore gauge, a micrometer, an
 * indicator or a depth gauge reads hundredths, a rule or a plain caliper tenths, and a fuel head a
 * tape. Feelers and pin gauges come in hundredths.
 */
const coarse: Partial<Record<FigureKey, number>> = {
  'slot-radius': 0.1,
  rotor: 0.1,
  'plate-outside': 0.1,
  height: 0.1,
  'height-tolerance': 0.1,
  seat: 0.1,
  head: 1,
  'clip-pitch': 0.1,
  cutaway: 0.1,
  'cutaway-tolerance': 0.1,
  'least-play': 0.1,
  'idle-lift': 0.1,
  'slide-tolerance': 0.1,
};
/** No length of such an engine that is read in hundredths is longer, mm. */
const WIDEST = 200;
const lengths = figureKeys.filter((key) => figureSpec(key).unit === 'mm');

const engine = newEngine('e-1', 'Twin');
const boxOf = (key: FigureKey) => ({ kind: 'figure', key }) as const;

/** What the box of a figure holds, once lengths are shown in inches. */
const inInches = (key: FigureKey, value: number): string =>
  textInField(readNumber(engine, boxOf(key), String(value), { lengths: 'in' }), 'in');

describe('a length typed in millimetres, shown in inches and typed back', () => {
  it.each(lengths)('%s comes back within half of the last digit of its tool', (key) => {
    const { min, max } = specOf(engine, boxOf(key));
    const tool = coarse[key] ?? 0.01;
    const unit = fieldUnit(figureSpec(key), 'in');
    const back = (value: number): number => fromShown(Number(inInches(key, value)), unit);
    const most = Math.min(max, WIDEST);
    // Figures that end in noughts too: what is left out of them was read as well.
    for (const places of [2, 1, 0]) {
      const one = Math.max(tool, 10 ** -places);
      const by = Math.ceil((most - min) / one / 200) * one;
      for (let at = Math.ceil(min / one) * one; at <= most; at += by) {
        const value = Number(at.toFixed(2));
        const off = Math.abs(back(value) - value);
        expect(off, `${String(value)} mm`).toBeLessThanOrEqual(tool / 2);
      }
    }
  });

  it('a bore of 61.5 mm is 2.4213 in, in its box and in words', () => {
    expect(inInches('bore', 61.5)).toBe('2.4213');
    expect(figureWords('bore', 61.5, 'in')).toBe('2.4213 in');
  });
});
