/**
 * Every unit that a reader may type, read by the field itself, against mathjs: an independent library
 * with a table of its own. Where mathjs has no such unit, or has it rounded, the published figure
 * stands: NIST Special Publication 811 (2008), Appendix B.8, or the Weights and Measures Act 1985.
 */
import { evaluate, type Unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { parse } from '../../calculators/frame/field/parse.ts';
import { typedUnits, unitTyped } from '../../calculators/frame/field/typed-units.ts';
import { units, type Quantity, type UnitName } from '../../calculators/frame/text/units.ts';

/** What one of each spelling is in mathjs' words, by home unit. */
const inMathjs: Partial<Record<UnitName, Readonly<Record<string, string>>>> = {
  mm: {
    mm: 'mm',
    MM: 'mm',
    Mm: 'mm',
    cm: 'cm',
    m: 'm',
    metre: 'm',
    metres: 'm',
    km: 'km',
    um: 'um',
    µm: 'um',
    μm: 'um',
    micron: 'um',
    microns: 'um',
    in: 'inch',
    inch: 'inch',
    inches: 'inch',
    '"': 'inch',
    '″': 'inch',
    '”': 'inch',
    thou: 'mil',
    mil: 'mil',
    Thou: 'mil',
    ft: 'foot',
    foot: 'foot',
    feet: 'foot',
    "'": 'foot',
    '’': 'foot',
    '′': 'foot',
  },
  deg: { deg: 'deg', degree: 'deg', degrees: 'deg', '°': 'deg', rad: 'rad' },
  mm2: {
    mm2: 'mm^2',
    'mm²': 'mm^2',
    cm2: 'cm^2',
    'cm²': 'cm^2',
    in2: 'sqin',
    'in²': 'sqin',
    'sq in': 'sqin',
  },
  cc: {
    cc: 'cc',
    CC: 'cc',
    'c.c.': 'cc',
    ml: 'ml',
    cm3: 'cm^3',
    'cm³': 'cm^3',
    l: 'l',
    L: 'l',
    litre: 'l',
    litres: 'l',
    liter: 'l',
    liters: 'l',
    cuin: 'cuin',
    'cu in': 'cuin',
    'cu. in.': 'cuin',
    'in³': 'cuin',
    in3: 'cuin',
    'US gal': '231 cuin',
    usgal: '231 cuin',
    'US gallon': '231 cuin',
    'us gallons': '231 cuin',
    'US pt': '231/8 cuin',
    'US pint': '231/8 cuin',
    'US pints': '231/8 cuin',
    'US fl oz': '231/128 cuin',
    'US fl. oz.': '231/128 cuin',
    // Weights and Measures Act 1985, Schedule 1: 4.546 09 litres, 8 pints or 160 fluid ounces.
    'imp gal': '4.54609 l',
    impgal: '4.54609 l',
    'imp gallon': '4.54609 l',
    'imp gallons': '4.54609 l',
    'UK gal': '4.54609 l',
    'imp pt': '4.54609/8 l',
    'imp pint': '4.54609/8 l',
    'imp pints': '4.54609/8 l',
    'uk pt': '4.54609/8 l',
    'imp fl oz': '4.54609/160 l',
    'UK fl oz': '4.54609/160 l',
  },
  g: {
    g: 'g',
    gram: 'g',
    grams: 'g',
    gf: 'g',
    mg: 'mg',
    kg: 'kg',
    KG: 'kg',
    oz: 'oz',
    lb: 'lbm',
    lbs: 'lbm',
  },
  'kg/m3': {
    'kg/m3': 'kg/m^3',
    'kg/m³': 'kg/m^3',
    'g/cc': 'g/cc',
    'g/cm3': 'g/cm^3',
    'g/cm³': 'g/cm^3',
    'g/ml': 'g/ml',
    'kg/l': 'kg/l',
  },
  kPa: {
    kPa: 'kPa',
    KPA: 'kPa',
    Pa: 'Pa',
    hPa: 'hPa',
    hpa: 'hPa',
    MPa: 'MPa',
    mbar: 'mbar',
    bar: 'bar',
    Bar: 'bar',
    // Worked from the pound and the inch: mathjs has psi rounded, as far as 6 in 10¹¹.
    psi: '0.45359237*9.80665 N/(0.0254 m)^2',
    PSI: '0.45359237*9.80665 N/(0.0254 m)^2',
    'lb/in2': '0.45359237*9.80665 N/(0.0254 m)^2',
    'lb/in²': '0.45359237*9.80665 N/(0.0254 m)^2',
    'lbf/in2': '0.45359237*9.80665 N/(0.0254 m)^2',
    // NIST SP 811, B.8: mathjs has 1 mmHg = 0.133322 kPa, where the table has 0.133 322 4.
    mmHg: '13.5951*9.80665 Pa',
    'mm Hg': '13.5951*9.80665 Pa',
    cmHg: '13.5951*9.80665*10 Pa',
    inHg: '13.5951*9.80665*25.4 Pa',
    'in. Hg': '13.5951*9.80665*25.4 Pa',
    atm: 'atm',
    'kgf/cm2': '9.80665 N/cm^2',
    'kgf/cm²': '9.80665 N/cm^2',
    'kg/cm2': '9.80665 N/cm^2',
    'kg/cm²': '9.80665 N/cm^2',
  },
  ms: {
    ms: 'ms',
    μs: 'us',
    µs: 'us',
    us: 'us',
    s: 's',
    min: 'minute',
    h: 'hour',
    hour: 'hour',
    hours: 'hour',
  },
  A: { A: 'A', a: 'A', mA: 'mA', ma: 'mA', amp: 'A', amps: 'A' },
  Ah: { Ah: 'A hour', AH: 'A hour', mAh: 'mA hour' },
  V: { V: 'V', v: 'V', mV: 'mV', kV: 'kV', volt: 'V', volts: 'V' },
  ohm: {
    ohm: 'ohm',
    ohms: 'ohm',
    Ω: 'ohm',
    '\u2126': 'ohm',
    mohm: '0.001 ohm',
    mΩ: '0.001 ohm',
    kohm: '1000 ohm',
    Kohm: '1000 ohm',
    kΩ: '1000 ohm',
    Mohm: '1e6 ohm',
    MOHM: '1e6 ohm',
    MΩ: '1e6 ohm',
  },
  Mohm: {
    Mohm: '1e6 ohm',
    'M\u2126': '1e6 ohm',
    megohm: '1e6 ohm',
    Megohms: '1e6 ohm',
    kohm: '1000 ohm',
    ohm: 'ohm',
  },
  mH: { mH: 'mH', mh: 'mH', H: 'H', h: 'H', uH: 'uH', μH: 'uH', µH: 'uH' },
  // mfd is how old books write a microfarad.
  uF: { uF: 'uF', μF: 'uF', µF: 'uF', uf: 'uF', mfd: 'uF', MFD: 'uF', nF: 'nF', pF: 'pF' },
  mJ: { mJ: 'mJ', mj: 'mJ', J: 'J' },
  W: { W: 'W', kW: 'kW' },
  'm/s': { 'm/s': 'm/s', 'km/h': 'km/h' },
};

const token: Partial<Record<UnitName, string>> = {
  mm2: 'mm^2',
  Ah: 'A hour',
  Mohm: 'megaohm',
  'kg/m3': 'kg/m^3',
};

const rows = Object.entries(inMathjs).flatMap(([home, spellings]) =>
  Object.entries(spellings).map(([spelled, meant]) => [spelled, home as UnitName, meant] as const),
);

const read = (text: string, home: UnitName): number => {
  const parsed = parse(text, home);
  if (parsed.kind !== 'value') throw new Error(parsed.sentence);
  return parsed.value;
};

describe('a unit as typed', () => {
  it.each(rows)('7.3 %s in a field of %s', (spelled, home, meant) => {
    const wanted = (evaluate(`7.3 * (${meant})`) as Unit).toNumber(token[home] ?? home);
    expect(Math.abs(read(`7.3 ${spelled}`, home) / wanted - 1)).toBeLessThan(1e-12);
  });

  it.each([
    ['64.4 °F', 18],
    ['64.4 degF', 18],
    ['64.4f', 18],
    ['64.4F', 18],
    ['18 degC', 18],
    ['18 °c', 18],
    ['18C', 18],
    ['291.15 K', 18],
    ['-40 °F', -40],
  ])('%s is %d °C', (text, wanted) => {
    expect(read(text, 'degC')).toBeCloseTo(wanted, 12);
  });

  it.each<[string, UnitName, number]>([
    ['3000 rev/min', 'rpm', 3000],
    ['3000 r/min', 'rpm', 3000],
    ['3000 1/min', 'rpm', 3000],
    ['3000 RPM', 'rpm', 3000],
    ['25:1', 'ratio', 25],
    ['25 : 1', 'ratio', 25],
    ['25 to 1', 'ratio', 25],
    ['70 %', '%', 70],
    ['70 per cent', '%', 70],
    ['70 percent', '%', 70],
    ['1.2 ‰', '‰', 1.2],
    ['1.2 permille', '‰', 1.2],
    ['0.12 %', '‰', 1.2],
    ['11.4 ppm/K', 'ppm/K', 11.4],
    ['11.4 ppm/C', 'ppm/K', 11.4],
    ['6 ppm/F', 'ppm/K', 10.8],
    ['6 ppm/°F', 'ppm/K', 10.8],
    ['11.4 ppm/°C', 'ppm/K', 11.4],
    ['11.4 ·10⁻⁶/K', 'ppm/K', 11.4],
  ])('%s is its own', (text, home, wanted) => {
    expect(read(text, home)).toBe(wanted);
  });

  it('is proved here for every spelling there is', () => {
    const elsewhere: readonly Quantity[] = ['temperature', 'speed', 'share', 'ratio', 'expansion'];
    for (const [quantity, spellings] of Object.entries(typedUnits)) {
      if (elsewhere.includes(quantity as Quantity)) continue;
      const proved = Object.entries(inMathjs)
        .filter(([home]) => units[home as UnitName].quantity === quantity)
        .flatMap(([, rows]) => Object.keys(rows).map((name) => name.replaceAll(/[\s.]/gu, '')))
        .map((name) => name.toLowerCase());
      for (const name of Object.keys(spellings)) expect(proved).toContain(name.toLowerCase());
    }
  });

  it('is, of every unit the site shows, the one it is written with', () => {
    for (const [home, { quantity, token: written, factor }] of Object.entries(units)) {
      if (factor === undefined || written === '') continue;
      expect(unitTyped(written, quantity), home).toEqual({ kind: 'unit', unit: factor });
    }
  });
});

describe('what is left to doubt is refused, and the sentence says what to type', () => {
  it.each<[string, UnitName, RegExp]>([
    ['8 MH', 'mH', /leading M means a million.*meant mH/],
    ['8 Mh', 'mH', /meant mH/],
    ['40 MJ', 'mJ', /meant mJ/],
    ['3 MA', 'A', /meant mA/],
    ['3 MV', 'V', /meant mV/],
    ['5 Ms', 'ms', /meant ms/],
    ['5 ML', 'cc', /meant ml/],
    ['5 mpa', 'kPa', /leading m means a thousandth.*meant MPa/],
    ['2 pt', 'cc', /imperial or US.*a fifth.*imp pt or US pt/],
    ['2 pints', 'litre', /imp pt or US pt/],
    ['1 gal', 'litre', /imp gal or US gal/],
    ['1 Gallon', 'litre', /imp gal or US gal/],
    ['2 gallons', 'litre', /imp gal or US gal/],
    ['1 pint', 'litre', /imp pt or US pt/],
    ['3 fl oz', 'ml', /4 per cent.*imp fl oz or US fl oz/],
    ['3 oz', 'ml', /imp fl oz or US fl oz/],
  ])('%s in %s', (text, home, sentence) => {
    const parsed = parse(text, home);
    expect(parsed.kind === 'bad' && parsed.sentence).toMatch(sentence);
  });

  it('and what it says may be typed', () => {
    for (const text of ['2 imp pt', '2 US pt', '1 imp gal', '3 US fl oz', '3 imp fl oz']) {
      expect(parse(text, 'ml').kind).toBe('value');
    }
  });
});

describe('fractions and minutes', () => {
  it.each<[string, UnitName, number]>([
    ['3/32 in', 'mm', 2.38125],
    ['1/2', 'mm', 0.5],
    ['1 1/4"', 'mm', 31.75],
    ['1-1/4 in', 'mm', 31.75],
    ['−1 1/4 in', 'mm', -31.75],
    ['1½ in', 'mm', 38.1],
    ['¾ in', 'mm', 19.05],
    ['5⁄64 in', 'mm', 1.984375],
    ["24°30'", 'deg', 24.5],
    ['24° 30′', 'deg', 24.5],
    ['-1°15′', 'deg', -1.25],
    ['24 deg 30 min', 'deg', 24.5],
    ['24°7,5′', 'deg', 24.125],
  ])('%s is %d', (text, home, wanted) => {
    expect(read(text, home)).toBe(wanted);
  });

  it.each([
    ['24°60′', 'deg', /59 minutes/],
    ['30′', 'deg', /cannot be read/],
    ['24°30′', 'mm', /cannot be read|not a unit/],
    ['3/0 in', 'mm', /divides by zero/],
    ['0/0', 'mm', /divides by zero/],
  ] as const)('%s in %s is refused', (text, home, sentence) => {
    const parsed = parse(text, home);
    expect(parsed.kind === 'bad' && parsed.sentence).toMatch(sentence);
  });
});

describe('no dust', () => {
  it.each<[string, UnitName, number]>([
    ['18 thou', 'mm', 0.4572],
    ['87 thou', 'mm', 2.2098],
    ['0.018 in', 'mm', 0.4572],
    ['1.1 cm', 'mm', 11],
    ['1000 ft', 'm', 304.8],
    ['30 psi', 'kPa', 206.842718795051],
  ])('%s', (text, home, wanted) => {
    expect(read(text, home)).toBe(wanted);
  });
});
