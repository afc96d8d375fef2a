import { describe, expect, it } from 'vitest';
import { foreignIn } from '../../calculators/frame/text/foreign.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { sheetFigures } from '../../calculators/sheet/figures.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import { calculators } from '../../site/all-calculators.ts';

// 1 psi is 6.894757 kPa, 1 lb is 0.45359237 kg, °F is 1.8 °C + 32: NIST SP 811 (2008), B.8.
describe('a pressure, mass or temperature in a text has the other unit beside it', () => {
  it.each([
    ['from 40 kPa down', 'from 40 kPa (5.8 psi) down'],
    ['1 or 7 kPa.', '1 or 7 kPa (0.15 or 1 psi).'],
    ['about 1.2 kg.', 'about 1.2 kg (2.6 lb).'],
    ['at about 20 °C, dry', 'at about 20 °C (68 °F), dry'],
    ['90 to 150 °C', '90 to 150 °C (194 to 302 °F)'],
    ['at −10 °C', 'at −10 °C (14 °F)'],
    // A difference has no zero.
    ['for each 10 °C', 'for each 10 °C (18 °F)'],
    ['10 to 40 °C above its bore', '10 to 40 °C (18 to 72 °F) above its bore'],
    ['Every 10 °C of it', 'Every 10 °C (18 °F) of it'],
    ['10 °C more', '10 °C (18 °F) more'],
    ['known within 10 °C', 'known within 10 °C (18 °F)'],
    ['is out by 10 °C', 'is out by 10 °C (18 °F)'],
  ])('%s', (text, told) => {
    expect(foreignIn(text)).toBe(told);
    expect(proseIn(text, 'in')).toBe(told);
    expect(proseIn(text, 'mm')).toBe(text);
  });

  it.each([
    'less than 7 kPa (1 psi) in that time',
    '40 kPa, about 6 psi',
    '40 kPa (about 6 psi; common practice)',
    '40 kPa, about 12 inHg',
    'barometer 2 kPa (20 hPa) lower',
    '20 kg/m³, 5 kg·m, K40 kPa',
  ])('and nothing else has: %s', (text) => {
    expect(proseIn(text, 'in')).toBe(text);
  });
});

/** Every text of a definition. */
const textsOf = (part: unknown): string[] =>
  typeof part === 'string'
    ? [part]
    : typeof part === 'object' && part !== null
      ? Object.values(part).flatMap(textsOf)
      : [];

it('none is left alone in the definitions of sheet and calculators, as the reader of inches reads them', () => {
  const defined = calculators.map(({ inputs, results, limits }) => ({ inputs, results, limits }));
  const texts = textsOf([steps, sheetFigures, defined]).filter((text) =>
    /\d (?:kPa|°C)(?!\p{L})/u.test(text),
  );
  expect(texts.length).toBeGreaterThan(10);
  for (const text of texts) {
    expect(proseIn(text, 'in')).not.toMatch(
      /\d (?:kPa|°C)(?!\p{L})(?! \(|,? \(?(?:about )?\d+ (?:psi|inHg))/u,
    );
  }
  // What a seal stands is never rounded up.
  expect(steps.leak.caution).toContain('Never more than 50 kPa (7 psi)');
});
