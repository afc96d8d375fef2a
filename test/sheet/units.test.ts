import { describe, expect, it } from 'vitest';
import { readFigure } from '../../calculators/frame/field/fields.ts';
import { textToKeep } from '../../site/fields/field-text.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { figureSpec, type FigureKey } from '../../calculators/sheet/figures.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';

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

describe('a refused figure is told what its box reads', () => {
  const slides = { kind: 'reading', step: 'slides', moment: 'found', index: 0 } as const;
  const gap = { kind: 'reading', step: 'gap', moment: 'found', index: 0 } as const;
  const timing = { kind: 'reading', step: 'timing', moment: 'found', index: 0 } as const;
  const jets = { kind: 'reading', step: 'jets', moment: 'found', index: 0 } as const;
  const refusal = (
    box: typeof slides | typeof gap | typeof timing | typeof jets,
    typed: string,
    lengths: 'mm' | 'in',
  ): string | undefined => {
    const engine = { ...newEngine('e-1', 'Twin'), figures: { stroke: 56, target: 2.3876 } };
    const spec = readNumber(engine, box, '', { lengths }).spec;
    const kept = textToKeep(typed, { spec }, lengths);
    return readNumber(engine, box, kept, { lengths }).problem;
  };

  it.each([
    [slides, '81', 'in', /This box reads a bare figure in inches: for 81 thou type “81 thou”\.$/],
    [gap, '1600', 'in', /This box reads a bare figure in thou\.$/],
    [gap, '16', 'mm', /This box reads a bare figure in millimetres: for 16 thou type “16 thou”\.$/],
    // The unit that makes it as large as the sheet has it: 2.4 thou fire at no top.
    [timing, '2.4', 'in', /This box reads a bare figure in inches: for 2\.4 mm type “2\.4 mm”\.$/],
    [slides, '2.4', 'in', /for 2\.4 mm type “2\.4 mm”\.$/],
    [jets, '110', 'mm', /hundredths of a millimetre, type “1\.1 mm”\. A number may also be a flow/],
    [timing, '19.19', 'in', /Does the note mean degrees\? With “Rod length” in the sheet/],
    [
      gap,
      '14 to 16',
      'in',
      /is two figures, and this field takes one: .* for its middle type “15”\.$/,
    ],
    // A unit that was typed was meant.
    [slides, '81 in', 'in', /check the figure and its unit\.$/],
    [gap, '0.014', 'in', /With its unit, type “0\.014 in”\.$/],
  ] as const)('%o: %s, in %s', (box, typed, lengths, words) => {
    expect(refusal(box, typed, lengths)).toMatch(words);
  });

  it('of a jet, a number in a box of thou may be the one stamped on it', () => {
    const engine = newEngine('e-1', 'Twin');
    const read = (key: 'jet' | 'pilot-jet', text: string) =>
      readNumber(engine, { kind: 'figure', key }, text, { lengths: 'in' }).doubt;
    expect(read('jet', '120\u2060thou')).toMatch(/^Read as 120 thou\. If 120 is stamped/);
    expect(read('pilot-jet', '45\u2060thou')).toMatch(/type “0\.45 mm”/);
    expect(read('jet', '42\u2060thou')).toBeUndefined();
  });

  it('what may be typed in its place is of the size that the sheet has', () => {
    const engine = { ...newEngine('e-1', 'Twin'), figures: { gap: 0.381 } };
    const { problem } = readNumber(engine, gap, 'fifteen', { lengths: 'in' });
    expect(problem).toMatch(/Type a figure such as 15, 0\.381 mm/);
  });

  it('of a range, half its width goes into the tolerance beside it', () => {
    const engine = newEngine('e-1', 'Twin');
    const read = (key: 'gap' | 'stroke', text: string) =>
      readNumber(engine, { kind: 'figure', key }, text, { lengths: 'in' }).problem;
    expect(read('gap', '14-16 thou')).toMatch(
      /type “15 thou”\. Half its width, 1 thou, is for “Gap within\u00A0±”\.$/,
    );
    expect(read('stroke', '2.5–2.6 in')).toMatch(/type “2\.55 in”\.$/);
  });

  it.each(['0.08+0.02', '(0.08+0.02)', '2.31+0.052', '(1+2)/2'])('the sum %s', (typed) => {
    for (const lengths of ['mm', 'in'] as const) {
      expect(refusal(slides, typed, lengths)).toMatch(/is a sum, and the boxes of the sheet/);
      const quoted = /“(.*?)”/.exec(refusal(slides, typed, lengths)!)![1];
      expect(quoted).toBe(typed);
    }
  });
});

it.each(order.filter((id) => steps[id].reading))(
  '%s: its figure and how near it comes are written in the unit of its boxes',
  (id) => {
    const { target, tolerance, unit, ...reading } = steps[id].reading!;
    for (const key of [target, tolerance]) {
      if (key === undefined || figureSpec(key).unit !== unit) continue;
      expect(fieldUnit(figureSpec(key), 'in'), key).toBe(fieldUnit({ unit, ...reading }, 'in'));
    }
  },
);
