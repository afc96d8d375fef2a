import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { FigureField } from '../../calculators/frame/field/fields.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { bringsUnit, isLongWithUnit } from '../../site/fields/field-text.ts';
import { FigureInput } from '../../site/fields/FigureInput.tsx';

describe('the unit beside a box', () => {
  it('gives way to one that stands in it', () => {
    for (const text of ['2.283 in', '4 13/32 in', '8 thou', '24°30′', '7/64"', '16; 17 thou']) {
      expect(bringsUnit(text), text).toBe(true);
    }
    for (const text of ['', '2.2', '2,31+0,04', '2.31; 2.35', '1e3', '1/4', '−0.5']) {
      expect(bringsUnit(text), text).toBe(false);
    }
    expect(isLongWithUnit('4 13/32 in')).toBe(true);
    expect(isLongWithUnit('2.283 in')).toBe(true);
    expect(isLongWithUnit('18 thou')).toBe(true);
    expect(isLongWithUnit('2.2 mm')).toBe(false);
    expect(isLongWithUnit('2.31; 2.35; 2.28')).toBe(false);
  });

  it('is not said twice, nor another beside it, in any box', () => {
    const calculator = calculatorBySlug('piston-position');
    const { fields } = evaluate(
      calculator,
      { stroke: '2.283in', travel: '8thou' },
      { lengths: 'mm' },
    );
    const boxOf = (name: string): string => {
      const field = fields.find(({ key }) => key === name) as FigureField;
      const handlers = {
        lengths: 'mm',
        idPrefix: '',
        onText: () => {},
        onCommit: () => {},
      } as const;
      return renderToString(h(FigureInput, { field, ...handlers }));
    };
    expect(boxOf('stroke')).toContain('value="2.283 in"');
    expect(boxOf('stroke')).not.toContain('field-unit');
    expect(boxOf('travel')).not.toContain('field-unit');
    expect(boxOf('rod')).toContain('<span class="field-unit">mm</span>');
  });
});
