import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import {
  readFigure,
  type FieldSpec,
  type FigureField,
} from '../../calculators/frame/field/fields.ts';
import { readSum } from '../../calculators/frame/field/sum-reader.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { calculatorBySlug, calculators } from '../../site/all-calculators.ts';
import { textToKeep } from '../../site/fields/field-text.ts';

/** The field of a calculator after something was typed into it. */
function typed(slug: string, key: string, text: string, lengths: LengthDisplay = 'mm') {
  const calculator = calculatorBySlug(slug);
  const fieldOf = (texts: Record<string, string>) =>
    evaluate(calculator, texts, { lengths }).fields.find(
      (field): field is FigureField => field.key === key && field.kind === 'figure',
    )!;
  return fieldOf({ [key]: textToKeep(text, fieldOf({}), lengths) });
}

describe('a bare figure that would pass in another unit', () => {
  it.each([
    ['piston-position', 'travel', '0.110', 'mm', 'in'],
    ['breaker-cam', 'gap', '0.015', 'mm', 'in'],
    ['breaker-cam', 'gap', '0.4', 'in', 'mm'],
    ['squish-velocity', 'squish', '1.4', 'in', 'mm'],
    ['compression', 'gasket', '0.04', 'mm', 'in'],
  ] as const)('%s %s %s, in a box of lengths in %s, is taken and doubted', (...row) => {
    const [slug, key, text, lengths, meant] = row;
    const field = typed(slug, key, text, lengths);
    expect(field.problem).toBeUndefined();
    expect(field.value).toBeDefined();
    expect(field.doubt).toMatch(/far from what is usual here, about /);
    expect(field.doubt).toContain(`If it is ${text} ${meant}, type “${text} ${meant}”.`);
    expect(typed(slug, key, `${text} ${meant}`, lengths).doubt).toBeUndefined();
    // Said with its unit, it is meant.
    const read = lengths === 'mm' ? 'mm' : 'thou';
    expect(typed(slug, key, `${text} ${read}`, lengths).doubt).toBeUndefined();
  });

  it('is not doubted where it is of the usual size, or where no other unit brings it there', () => {
    for (const text of ['2.2', '1.2', '4', '0.5', '0.001', '12']) {
      expect(typed('piston-position', 'travel', text).doubt, text).toBeUndefined();
    }
    for (const text of ['0.3', '0.45', '0.1']) {
      expect(typed('breaker-cam', 'gap', text).doubt, text).toBeUndefined();
    }
    expect(typed('breaker-cam', 'gap', '14', 'in').doubt).toBeUndefined();
  });

  it('is not doubted any more where lengths are shown in other units than it was typed in', () => {
    const { fields } = evaluate(
      calculatorBySlug('piston-position'),
      { travel: '0.110' },
      { lengths: 'in' },
    );
    expect(fields.some((field) => field.kind === 'figure' && field.doubt)).toBe(false);
  });

  it('is doubted among several readings too, and not in a link', () => {
    expect(typed('breaker-cam', 'gap', '0.015; 0.016').doubt).toMatch(/0\.015 in/);
    const state = evaluate(
      calculatorBySlug('breaker-cam'),
      { gap: '0.015mm' },
      { lengths: 'mm', origins: { gap: 'link' } },
    );
    expect(state.fields.some((field) => field.kind === 'figure' && field.doubt)).toBe(false);
  });

  it.each([
    ['gap', '0.015', 0.015],
    ['gap', '0.38/0.40', 0.95],
    ['gap', '3/32', 0.09375],
    ['running', '3,000', 3],
  ])('a link’s %s of %s is asked nothing, and means what it always meant', (key, text, value) => {
    const { fields } = evaluate(
      calculatorBySlug('breaker-cam'),
      { [key]: text },
      { lengths: 'mm', sums: readSum, origins: { [key]: 'link' } },
    );
    const field = fields.find((one) => one.key === key) as FigureField;
    expect(field.value).toBeCloseTo(value, 9);
    expect([field.problem, field.doubt]).toEqual([undefined, undefined]);
  });

  const box = { label: 'Box', help: '', unit: 'mm', min: 0, max: 20, why: '', step: 0.1 } as const;
  const doubtOfBox = (text: string, more: Partial<FieldSpec> = {}) =>
    readFigure('box', { ...box, ...more }, text, 10, undefined, { lengths: 'mm' }).doubt;

  // 10 is usual: 1.2 is 8.3 times less, 1.3 7.7 times; 0.1 in are 2.54 mm, 3.9 times less, and 1.2 in 30.5.
  it('is one eight times away, and near to the usual one in a unit that the box would take', () => {
    expect(doubtOfBox('1.2', { max: 40 })).toMatch(/If it is 1\.2 in/);
    expect(doubtOfBox('1.3', { max: 40 })).toBeUndefined();
    expect(doubtOfBox('0.1')).toBeUndefined();
    expect(doubtOfBox('1.2')).toBeUndefined();
    // A ± is small whatever its unit.
    expect(doubtOfBox('1.2', { max: 40, isError: true })).toBeUndefined();
  });

  // 100 is ten times 10 and 10.2 times 9.8; 1 is a tenth. In no other unit would they be near.
  it('is a slip of the point where engines are alike in it', () => {
    const of = (text: string, more: Partial<FieldSpec> = {}) =>
      doubtOfBox(text, { max: 200, alike: true, ...more });
    expect(of('98')).toBe(
      'Read as 98 mm, far from what is usual here, about 10 mm. If the point stands in the wrong place, type “9.8 mm”. If it is right, type “98 mm”.',
    );
    expect(of('98', { alike: false })).toBeUndefined();
    expect(of('61')).toMatch(/type “6\.1 mm”/);
    expect(of('59')).toBeUndefined();
    expect(of('98 mm')).toBeUndefined();
    // A hundred times less is no slip of one place, and an inch is nearer than a tenth.
    expect(of('0.1')).toBeUndefined();
    expect(of('1')).toMatch(/If it is 1 in, type “1 in”/);
  });

  it.each([
    ['piston-position', 'travel', '18', '1.8 mm'],
    ['plate-setting', 'fired-1', '19.5', '1.95 mm'],
    ['plate-setting', 'target', '22', '2.2 mm'],
    ['squish-velocity', 'squish', '14', '1.4 mm'],
    ['compression', 'head-volume', '150', '15 cc'],
    ['breaker-cam', 'gap', '3.5', '0.35 mm'],
  ])('%s: %s of %s may be %s', (slug, key, text, meant) => {
    expect(typed(slug, key, text).doubt).toContain(`type “${meant}”. If it is right, type “`);
  });

  it('is never one that a calculator opens with', () => {
    for (const calculator of calculators) {
      const { fields } = evaluate(calculator, {}, { lengths: 'mm' });
      for (const field of fields) {
        if (field.kind !== 'figure' || field.text === '') continue;
        const { doubt } = typed(calculator.slug, field.key, field.text);
        expect(doubt, `${calculator.slug} ${field.key}`).toBeUndefined();
      }
    }
  });

  it('out of range is told the unit in which it would be taken', () => {
    expect(typed('breaker-cam', 'gap', '14').problem).toMatch(
      /This box reads a bare figure in millimetres: for 14 thou type “14 thou”\.$/,
    );
    expect(typed('piston-position', 'stroke', '2.047').problem).toMatch(/for 2\.047 in type/);
  });

  it.each([
    ['air-and-jet', 'jet', '110', '1.1'],
    ['needle-and-clip', 'main-jet', '95', '0.95'],
    ['jet-set', 'size', '180', '1.8'],
  ] as const)('%s %s: %s may be stamped on the jet', (slug, key, text, bore) => {
    const { problem } = typed(slug, key, text);
    expect(problem).toContain(`If ${text} is stamped on it and is its bore in hundredths`);
    expect(problem).toContain(`type “${bore} mm”`);
    expect(problem).not.toContain('thou');
    expect(typed(slug, key, `${bore} mm`).value).toBeCloseTo(Number(bore), 9);
    // Of a size that no jet has, nothing is guessed.
    expect(typed(slug, key, '9000').problem).not.toContain('stamped');
    expect(typed(slug, key, '110.5').problem).not.toContain('stamped');
  });

  it('in thou too, where the number in hundredths comes nearer to what is usual', () => {
    const field = typed('air-and-jet', 'jet', '120', 'in');
    expect(field.problem).toBeUndefined();
    expect(field.doubt).toMatch(/^Read as 120 thou\. If 120 is stamped on it .* type “1\.2 mm”/);
    expect(field.doubt).toMatch(/If it is right, type “120 thou”\.$/);
    expect(typed('air-and-jet', 'jet', '120 thou', 'in').doubt).toBeUndefined();
    // 42 thou is a jet, and 0.42 mm is none of this size.
    expect(typed('air-and-jet', 'jet', '42', 'in').doubt).toBeUndefined();
  });

  it('is doubted in the boxes of the sheet, by what the sheet is set to', () => {
    const engine = { ...newEngine('e-1', 'T'), figures: { 'plug-gap': 0.508 } };
    const box = { kind: 'reading', step: 'plug', moment: 'found', index: 0 } as const;
    const read = (text: string) => readNumber(engine, box, text, { lengths: 'in' });
    expect(read('0.6\u2060thou').doubt).toMatch(/about 20 thou\. If it is 0\.6 mm, type “0\.6 mm”/);
    expect(read('22\u2060thou').doubt).toBeUndefined();
  });
});

describe('a figure of the weather, refused as it is', () => {
  it.each([
    ['air-and-jet', 'temperature', '70', /for 70 °F type “70 °F”/],
    ['piston-clearance', 'measured-at', '68', /for 68 °F type “68 °F”/],
    ['air-and-jet', 'pressure', '29.5', /for 29\.5 inHg type “29\.5 inHg”/],
    ['air-and-jet', 'pressure', '1013', /for 1013 mbar type “1013 mbar”/],
  ] as const)(
    '%s %s of %s is told the unit in which it would be taken',
    (slug, key, text, said) => {
      expect(typed(slug, key, text).problem).toMatch(said);
    },
  );

  it('and a mass that is far from the usual in grams is asked about', () => {
    expect(typed('firing-order', 'reciprocating', '8.5').doubt).toMatch(/type “8\.5 oz”/);
    expect(typed('firing-order', 'reciprocating', '150').doubt).toBeUndefined();
  });
});

describe('a bare fraction', () => {
  it.each([
    ['piston-position', 'travel', '7/64', 'mm', 'mm'],
    ['breaker-cam', 'gap', '1/64', 'in', 'thou'],
    ['squish-velocity', 'squish', '3/64', 'in', 'thou'],
    ['piston-position', 'travel', '½', 'mm', 'mm'],
  ] as const)('%s %s %s is asked about, in lengths in %s', (slug, key, text, lengths, unit) => {
    const { problem } = typed(slug, key, text, lengths);
    const orMm = unit === 'mm' ? ` or “${text} mm”` : '';
    expect(problem).toContain(`With its unit, type “${text} in”${orMm}.`);
    expect(typed(slug, key, `${text} in`, lengths).problem ?? '').not.toMatch(/fraction/);
  });

  it('is told the range of its box, where it is out of that in inches', () => {
    const said = typed('breaker-cam', 'gap', '1 1/64', 'in').problem;
    expect(said).toMatch(/here is in thou\. In inches it is out of the range of this box, from/);
    expect(typed('piston-position', 'stroke', '3/32').problem).toMatch(/out of the range of this/);
  });

  it('is taken in a box of inches, and a reading shared out in any', () => {
    expect(typed('piston-position', 'stroke', '2 1/4', 'in').value).toBeCloseTo(57.15, 9);
    expect(typed('piston-position', 'stroke', '104/2').value).toBe(52);
    expect(typed('wiring', 'length', '1/2').problem).toBeUndefined();
  });
});
