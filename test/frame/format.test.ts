import { describe, expect, it } from 'vitest';
import {
  displayUnit,
  type LengthDisplay,
  type UnitName,
} from '../../calculators/frame/text/units.ts';
import {
  decimalsApart,
  edgeIn,
  fixed,
  inputDigits,
  showFigure,
  showFixed,
  showIn,
  showInput,
  shownText,
  shownUnit,
  unbroken,
  withUnit,
} from '../../calculators/frame/text/format.ts';
import { showResult, wordsOf } from '../../calculators/frame/show-result.ts';

it('a sentence on a page parts no length from its unit', () => {
  expect(unbroken('Hole 1-2 at X 3.30 mm, drill 130 thou')).toBe(
    'Hole 1-2 at X 3.30\u00A0mm, drill 130\u00A0thou',
  );
});

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

it.each([
  [1.502, 1.5, 1, '1.502'],
  [1.46, 1.5, 1, '1.46'],
  [1.6, 1.5, 1, '1.6'],
  [18.04, 18, 1, '18.04'],
  [100.4, 100, 0, '100.4'],
  [1.5, 1.5, 1, '1.5'],
  [5.000001, 5, 1, '5.0000'],
])(
  '%d, which is beyond %d, does not read as it from %d decimals on: %s',
  (value, limit, least, text) => {
    expect(fixed(value, decimalsApart(value, limit, least))).toBe(text);
  },
);

describe('a size out of a standard', () => {
  const standard = { standard: true };

  it.each([
    [0.75, 'wire', '0.75 mm²'],
    [1, 'wire', '1 mm²'],
    [2.5, 'wire', '2.5 mm²'],
    [7.5, 'A', '7.5 A'],
    [20, 'A', '20 A'],
    [3.2, 'mm', '3.2 mm'],
  ] as const)(
    '%d %s is %s whatever its decimals, its readings and the lengths',
    (size, unit, text) => {
      for (const lengths of ['mm', 'in'] as const) {
        expect(shownText(showFigure(size, unit, 0, lengths, undefined, standard))).toBe(text);
        expect(shownText(showFigure(size, unit, 1, lengths, 0.4, standard))).toBe(text);
      }
    },
  );

  it('of a wire is in mm² in every field too', () => {
    expect(displayUnit('wire', 'in')).toBe('wire');
    expect(showInput(2.5, 'wire', 'in')).toBe('2.5 mm²');
  });
});

describe('a figure with its unit', () => {
  it('has a space before it where one belongs, and none where there is no unit', () => {
    expect(withUnit('2.2', 'mm')).toBe('2.2 mm');
    expect([withUnit('21', 'deg'), withUnit('70', '%'), withUnit('3', 'count')]).toEqual([
      '21°',
      '70%',
      '3',
    ]);
  });

  it('has fixed decimals, a true minus, and no minus before nought', () => {
    expect([fixed(2, 2), fixed(-2.25, 1), fixed(-0.001, 2), fixed(7.5, -2)]).toEqual([
      '2.00',
      '−2.3',
      '0.00',
      '8',
    ]);
    expect(fixed(1 / 3, 40)).toBe('0.333333333333');
  });
});

describe('an input as it was measured', () => {
  // Five digits at the most, so that a stroke of 52.375 mm is not called 52.4 mm.
  it.each<[number, UnitName, string]>([
    [51, 'mm', '51 mm'],
    [2.2, 'mm', '2.2 mm'],
    [52.375, 'mm', '52.375 mm'],
    [0.123456, 'mm', '0.12346 mm'],
    [-21.5, 'deg', '−21.5°'],
    [123456, 'rpm', '123460 rpm'],
    [0.0000001, 'mm', '0.0000001 mm'],
  ])('%d %s is %s', (value, unit, text) => {
    expect(showInput(value, unit, 'mm')).toBe(text);
    expect(showIn(value, unit)).toBe(text);
  });

  it('is in thou where it is small and lengths are in inches', () => {
    const shown = (value: number) => showInput(value, 'mm', 'in');
    expect([shown(0.35), shown(2.53), shown(2.54), shown(52.375), shown(0)]).toEqual([
      '13.8 thou',
      '99.6 thou',
      '0.1 in',
      '2.062 in',
      '0 in',
    ]);
    expect(inputDigits(-25.4, 'in')).toBe('-1');
  });
});

describe('the unit of figures that stand together', () => {
  it.each<[readonly number[], UnitName, LengthDisplay, UnitName]>([
    [[0.4], 'mm', 'mm', 'mm'],
    [[0.4], 'mm', 'in', 'thou'],
    [[0.4, -3], 'mm', 'in', 'in'],
    [[-0.4, 0.1], 'mm', 'in', 'thou'],
    [[0], 'mm', 'in', 'in'],
    [[0.4], 'mm2', 'in', 'in2'],
    [[0.4], 'm', 'in', 'ft'],
    [[0.4], 'deg', 'in', 'deg'],
  ])('%j %s with lengths in %s is in %s', (together, home, lengths, unit) => {
    expect(shownUnit(together, home, lengths)).toBe(unit);
  });
});

describe('a result in the reader’s lengths', () => {
  const shown = (
    ...[value, unit, decimals, spread, manner]: [
      number,
      UnitName,
      number,
      number?,
      Parameters<typeof showFigure>[5]?,
    ]
  ) => shownText(showFigure(value, unit, decimals, 'in', spread, manner));

  it('carries no less after the change, and no more than can be measured', () => {
    expect(shown(2.2, 'mm', 2)).toBe('86.6 thou');
    expect(shown(51, 'mm', 2)).toBe('2.0079 in');
    expect(shown(51, 'mm', 5)).toBe('2.0079 in');
    expect(shown(51, 'mm', 0)).toBe('2.01 in');
    expect(shown(900, 'm', 0)).toBe('2953 ft');
    expect(shown(100, 'cc', 1)).toBe('100.0 cc');
    expect(shown(6.894757293168361, 'kPa', 1)).toBe('1.00 psi');
    expect(shown(645.16, 'mm2', 0)).toBe('1.000 in²');
    expect(shown(0.03, 'mm/deg', 3)).toBe('1.18 thou per degree');
  });

  it('shares its unit with its ± and its column', () => {
    expect(shown(2.5, 'mm', 2, 0.02)).toBe('98.4 ± 0.8 thou');
    expect(shown(2.5, 'mm', 2, 3)).toBe('0.10 ± 0.12 in');
    expect(shown(2.5, 'mm', 2, undefined, { among: [1, 30] })).toBe('0.0984 in');
    expect(shown(2.5, 'mm', 2, undefined, { among: [1] })).toBe('98.4 thou');
  });

  it('is never more exact than its own decimals, and its ± never less than they show', () => {
    const mm = (value: number, spread: number) =>
      shownText(showFigure(value, 'mm', 1, 'mm', spread));
    expect(mm(2.234, 0.004)).toBe('2.2 ± 0.1 mm');
    expect(mm(2.234, 0.3)).toBe('2.2 ± 0.3 mm');
    expect(mm(2.234, 0)).toBe('2.2 mm');
    expect(mm(250, 70)).toBe('250 ± 70 mm');
    expect(mm(255, 70)).toBe('260 ± 70 mm');
  });

  it('bears a plus where it is signed and above nought, with a ± or without', () => {
    const signed = (value: number, spread?: number) =>
      showFigure(value, 'deg', 1, 'mm', spread, { signed: true }).figure;
    expect([signed(2), signed(0), signed(-2), signed(2, 0.5)]).toEqual([
      '+2.0',
      '0.0',
      '−2.0',
      '+2.0',
    ]);
    expect(showFigure(2, 'deg', 1, 'mm', 0.5).figure).toBe('2.0');
  });

  it('is a sentence’s figure with the decimals it asks for', () => {
    expect(showFixed(2.2, 'mm', 1, 'mm')).toBe('2.2 mm');
    expect(showFixed(2.2, 'mm', 1, 'in')).toBe('87 thou');
  });
});

describe('a result by its own definition', () => {
  const spec = {
    label: '0.1 mm is worth',
    help: 'In degrees.',
    unit: 'deg',
    decimals: 2,
    inInches: { label: '5 thou is worth', help: 'Of crank.', times: 1.27 },
  } as const;

  it('is another where its name holds a length', () => {
    expect(wordsOf(spec, 'mm')).toEqual({ label: '0.1 mm is worth', help: 'In degrees.' });
    expect(wordsOf(spec, 'in')).toMatchObject({ label: '5 thou is worth', help: 'Of crank.' });
    const { inInches: _, ...plain } = spec;
    expect(wordsOf(plain, 'in').label).toBe('3.9 thou is worth');
    expect(shownText(showResult(2, spec, undefined, 'mm'))).toBe('2.00°');
    expect(shownText(showResult(2, spec, undefined, 'in'))).toBe('2.54°');
    expect(shownText(showResult(2, spec, 0.1, 'in'))).toBe('2.54 ± 0.13°');
    expect(shownText(showResult(2, plain, 0.1, 'in'))).toBe('2.00 ± 0.10°');
  });

  it('has the unit of its column, of rows and of rows of rows', () => {
    const gap = { label: 'Gap', help: '', unit: 'mm', decimals: 2 } as const;
    const unit = (column?: Parameters<typeof showResult>[4]) =>
      showResult(0.4, gap, undefined, 'in', column).unit;
    expect([unit(), unit([0.4, 1]), unit([0.4, 40]), unit([[0.4], [40]]), unit(40)]).toEqual([
      'thou',
      'thou',
      'in',
      'in',
      'thou',
    ]);
  });
});

/** mm, cc and m in an inch, a cubic inch and a foot: NIST SP 811 (2008), B.8. */
const toOne = (home: 'mm' | 'kPa' | 'm'): number =>
  ({ mm: 25.4, kPa: 6.894757293168361, m: 0.3048 })[home];

describe('a figure that is turned into another unit', () => {
  it.each([
    // The figure's own last digit decides, or its field's step where that is finer.
    [2.31, 'thou', undefined, '90.9'],
    [2.31, 'thou', 0.05, '90.9'],
    [1, 'thou', 0.01, '39.4'],
    [51, 'in', 0.1, '2.008'],
    [51, 'in', undefined, '2.01'],
    [50, 'in', 0.1, '1.969'],
    [0.4572, 'thou', 0.05, '18'],
    [1 / 3, 'thou', 0.05, '13.123'],
    [900, 'ft', 50, '2953'],
    [-0.37, 'thou', 0.01, '-14.6'],
    [0.001, 'thou', 0.001, '0.03937'],
    [0, 'in', 0.1, '0'],
  ] as const)('%d mm or m in %s, by steps of %s, is %s', (value, shown, step, text) => {
    expect(inputDigits(value, shown, step)).toBe(text);
  });

  it('keeps all its digits in its own', () => {
    expect([inputDigits(2.31, 'mm', 0.5), inputDigits(1e-7, 'mm')]).toEqual(['2.31', '0.0000001']);
  });

  it('of a pressure typed in another unit are as fine as a tenth of its step', () => {
    const psi = 6.894757293168361;
    expect(inputDigits(psi, 'kPa', 0.5)).toBe('6.9');
    expect(inputDigits(10 * psi, 'kPa', 10)).toBe('69');
    expect(inputDigits(6.8948, 'kPa', 0.5)).toBe('6.8948');
    expect(inputDigits(psi, 'psi', 0.5)).toBe('1');
  });
});

describe('the end of a range', () => {
  it('may be typed: it is rounded into the range, to the digits of an input', () => {
    for (const home of ['mm', 'kPa', 'm'] as const) {
      const shown = displayUnit(home, 'in');
      for (const edge of [0.01, 0.1, 1, 7, 10, 57, 200, 1234.5, -20, -0.37]) {
        const exact = edge / toOne(home);
        const low = edgeIn(edge, shown, 1);
        const high = edgeIn(edge, shown, -1);
        expect(low).toBeGreaterThanOrEqual(exact);
        expect(high).toBeLessThanOrEqual(exact);
        const own = 10 ** -(String(edge).split('.')[1]?.length ?? 0) / toOne(home);
        expect(low - high).toBeLessThan(Math.max(own, 2e-4 * Math.abs(exact)) * (1 + 1e-9));
        expect(Number(low.toPrecision(5))).toBe(low);
      }
    }
    expect([edgeIn(5, 'mm', 1), edgeIn(5, 'mm', -1), edgeIn(25.4, 'in', 1)]).toEqual([5, 5, 1]);
  });
});
