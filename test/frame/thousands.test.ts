import { describe, expect, it } from 'vitest';
import {
  readFigure,
  listParts,
  readList,
  type FieldSpec,
} from '../../calculators/frame/field/fields.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { readSum } from '../../calculators/frame/field/sum-reader.ts';
import {
  asDecimals,
  asThousands,
  mayBeThousands,
} from '../../calculators/frame/field/thousands.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { calculatorBySlug, calculators } from '../../site/all-calculators.ts';
import { readAs } from '../../site/fields/field-text.ts';

const reading = { lengths: 'mm', sums: readSum } as const;
const inputOf = (slug: string, key: string): FieldSpec =>
  calculatorBySlug(slug).inputs[key] as unknown as FieldSpec;
const typed = (slug: string, key: string, text: string) =>
  readFigure(key, inputOf(slug, key), text, undefined, undefined, reading);

describe('a mark with three digits behind it', () => {
  it('may part thousands', () => {
    expect(asThousands('1,000')).toBe('1000');
    expect(asThousands('12.500 m')).toBe('12500 m');
    expect(asThousands('1,234.5')).toBe('1234.5');
    expect(asThousands('1.234.567,8')).toBe('1234567.8');
    expect(asThousands('12 500')).toBe('12500');
    expect(asThousands('1,000+2,500')).toBe('1000+2500');
    for (const text of ['0,350', '1,02', '1.2345', '1234,567', '1 1/4', '2.5', '']) {
      expect(asThousands(text), text).toBeUndefined();
      expect(mayBeThousands(text), text).toBe(false);
    }
    expect(['1,000', '12.500', '1.234 m'].map(asDecimals)).toEqual(['1.0', '12.5', '1.2340 m']);
  });

  it('is never asked about in a ±', () => {
    const { errorFields } = evaluate(
      calculatorBySlug('air-and-jet'),
      { altitude: '900', 'altitude-error': '1,000' },
      reading,
    );
    const error = errorFields.find(({ key }) => key === 'altitude-error')!;
    expect([error.value, error.problem]).toEqual([1, undefined]);
  });

  it.each([
    ['air-and-jet', 'right-altitude', '1,000', '1000', '1.0'],
    ['air-and-jet', 'right-altitude', '1.000', '1000', '1.0'],
    ['air-and-jet', 'altitude', '2,500 ft', '2500 ft', '2.5 ft'],
    ['breaker-cam', 'running', '3,000', '3000', '3.0'],
    ['float-level', 'head', '1,200', '1200', '1.2'],
    ['float-level', 'head', '1,200+30', '1200+30', '1.2+30'],
  ])('of %s %s is asked about where both are in range: %s', (slug, key, text, more, less) => {
    const { problem, value } = typed(slug, key, text);
    expect(value).toBeUndefined();
    expect(problem).toContain(`Type “${more}” or “${less}”.`);
    expect(typed(slug, key, more).problem).toBeUndefined();
    expect(typed(slug, key, less).problem).toBeUndefined();
  });

  it('is told how to type it where it is in range as thousands alone', () => {
    expect(typed('coil-charge', 'rpm', '5,500').problem).toMatch(
      /If the mark parts thousands, type “5500”\.$/,
    );
    expect(typed('coil-charge', 'rpm', '12 500').problem).toMatch(/type “12500”\.$/);
    expect(typed('air-and-jet', 'altitude', '1,234.5').problem).toMatch(/type “1234\.5”\.$/);
    const speeds = calculatorBySlug('coil-charge').inputs['speeds'] as unknown as FieldSpec;
    const list = (text: string) => readList('speeds', speeds, text, [], undefined, reading);
    expect(list('1,000 3,000').problem).toMatch(/type “1000”\.$/);
  });

  it('is a decimal one where it can be nothing else', () => {
    expect(typed('piston-clearance', 'bore', '51,935')).toMatchObject({ value: 51.935 });
    expect(typed('breaker-cam', 'gap', '0,350')).toMatchObject({ value: 0.35 });
    expect(typed('piston-position', 'travel', '2,2')).toMatchObject({ value: 2.2 });
    expect(typed('air-and-jet', 'altitude', '1,02')).toMatchObject({ value: 1.02 });
  });

  it('is never silently taken in any field of any calculator', () => {
    for (const { slug, inputs } of calculators) {
      for (const [key, input] of Object.entries(inputs)) {
        if (input.kind === 'choice' || input.kind === 'list') continue;
        for (const text of ['1,000', '2.500', '12,500']) {
          const { problem, value } = typed(slug, key, text);
          const more = Number(text.replace(/[.,]/, ''));
          const reaches = more >= input.min && more <= input.max;
          if (!reaches) continue;
          expect(value === undefined || problem !== undefined, `${slug} ${key} ${text}`).toBe(true);
          expect(problem, `${slug} ${key} ${text}`).toContain(String(more));
        }
      }
    }
  });

  it('is asked about in the boxes of the sheet', () => {
    const { problem } = readNumber(
      newEngine('e-1', 'T'),
      { kind: 'figure', key: 'head' },
      '1,200',
      {
        lengths: 'mm',
      },
    );
    expect(problem).toContain('Type “1200” or “1.2”.');
    // What stands is written by the sheet and was typed as 1.2340.
    const engine = { ...newEngine('e-1', 'T'), figures: { head: 1.234 } };
    const stands = readNumber(engine, { kind: 'figure', key: 'head' }, '1.234', { lengths: 'mm' });
    expect(stands).toMatchObject({ value: 1.234 });
    expect(stands.problem).toBeUndefined();
  });

  it('in a link means what it always meant, and the page says so', () => {
    const calculator = calculatorBySlug('air-and-jet');
    const state = evaluate(
      calculator,
      { 'right-altitude': '1.000m' },
      { lengths: 'mm', origins: { 'right-altitude': 'link' } },
    );
    expect(state.values['right-altitude']).toBe(1);
    const field = state.fields.find(({ key }) => key === 'right-altitude')!;
    expect(field.kind === 'figure' && readAs(field, 'mm')).toMatch(
      /^= 1\.?0? m: the mark is read as the decimal one/,
    );
  });
});

describe('commas between figures', () => {
  const jets = calculatorBySlug('air-and-jet').inputs['sizes'] as unknown as FieldSpec;
  const list = (text: string) => readList('sizes', jets, text, [], undefined, reading).value;

  it.each([
    ['1.00, 1.02, 1.05', [1, 1.02, 1.05]],
    ['1,00, 1,02, 1,05', [1, 1.02, 1.05]],
    ['1,02; 1,05', [1.02, 1.05]],
    ['1.00,1.02,1.05', [1, 1.02, 1.05]],
    ['1,02 1,05', [1.02, 1.05]],
    ['1.00, 1.02,', [1, 1.02]],
    ['1.00 mm, 1.02 mm', [1, 1.02]],
  ])('%s', (text, figures) => expect(list(text)).toEqual(figures));

  it.each([
    ['1 1/8; 1 1/16', ['1 1/8', '1 1/16']],
    ['1 1/8 1 3/8', ['1 1/8', '1 3/8']],
    ['1; 1/2 in', ['1', '1/2 in']],
    ['1/2 in 3/4 in', ['1/2 in', '3/4 in']],
  ])('leave a fraction with the whole number before it: %s', (text, parts) => {
    expect(listParts(text)).toEqual(parts);
  });

  it('part several readings too', () => {
    const field = typed('breaker-cam', 'gap', '0.42, 0.40');
    expect(field.readings).toEqual([0.42, 0.4]);
    expect(typed('breaker-cam', 'gap', '0,42, 0,40').readings).toEqual([0.42, 0.4]);
  });
});

describe('feet and inches', () => {
  it.each([
    ['4 ft 6 in', 1.3716],
    ['4ft6in', 1.3716],
    ['4′ 6″', 1.3716],
    ['4 ft 6 1/2 in', 1.3843],
    ['5.25 ft', 1.6002],
    ['5.25′', 1.6002],
    ["5.25'", 1.6002],
  ])('%s', (text, metres) => expect(typed('wiring', 'length', text).value).toBeCloseTo(metres, 9));

  it('with more than 11 inches to the foot are refused', () => {
    expect(typed('wiring', 'length', '4 ft 14 in').problem).toMatch(/more than 11 inches/);
  });
});

it('a share typed for a ratio is told the ratio', () => {
  expect(typed('fuel-and-oil', 'ratio', '4%').problem).toMatch(
    /“4%” is a share .* is 25 : 1, so type “25”, or choose per cent/,
  );
});
