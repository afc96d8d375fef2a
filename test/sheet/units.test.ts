import { describe, expect, it } from 'vitest';
import { readFigure } from '../../calculators/frame/fields.ts';
import { figureSpec, type FigureKey } from '../../calculators/sheet/figures.ts';

/** Worked by hand from NIST SP 811 (2008), Appendix B.8. */
describe('a figure of the sheet in other units', () => {
  it.each<[FigureKey, string, number]>([
    ['gap', '16 thou', 0.4064],
    ['gap', '0.016 in', 0.4064],
    ['stroke', '2 1/8 in', 53.975],
    ['head', '1 ft', 304.8],
    ['head-volume', '0.5 cu in', 8.193532],
    ['head-volume', '0.25 imp fl oz', 7.103265625],
    ['leak-drop', '1 psi', 6.89475729316836],
    ['leak-drop', '0.07 bar', 7],
    ['leak-drop', '50 mmHg', 6.66611937075],
    ['leak-drop', '2 inHg', 6.7727772806],
    ['resistance', '0.004 kohm', 4],
    ['resistance', '4200 mohm', 4.2],
    ['inductance', '0.006 H', 6],
    ['inductance', '6000 µH', 6],
    ['volts', '12000 mV', 12],
    ['rise', '50°30′', 50.5],
  ])('%s of %s', (key, text, wanted) => {
    const field = readFigure(key, figureSpec(key), text, undefined, undefined, { lengths: 'mm' });
    expect(field.problem).toBeUndefined();
    expect(Math.abs(field.value! / wanted - 1)).toBeLessThan(1e-9);
  });
});
