import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';

const problem = (slug: string, key: string, text: string): string | undefined => {
  const texts: Texts = { from: 'dwell', [key]: text };
  const { fields } = evaluate(calculatorBySlug(slug), texts, {
    lengths: 'mm',
    origins: { [key]: 'yours' },
  });
  return fields.find((field) => field.key === key)!.problem;
};

describe('a dwell told the other way', () => {
  // 35 % of 360° is 126°, and 63° for each of two lobes.
  it.each([
    ['breaker-cam', 'dwell'],
    ['coil-charge', 'dwell-angle'],
  ])('%s: per cent in a box of degrees', (slug, key) => {
    for (const typed of ['35%', '35 %', '35,0 %'])
      expect(problem(slug, key, typed)).toContain(
        'On a cam of one lobe type “126 deg”, of two type “63 deg”.',
      );
    // 35.5 % of 360° is 127.8°.
    expect(problem(slug, key, '35.5 %')).toContain('type “127.8 deg”, of two type “63.9 deg”.');
    expect(problem(slug, key, '126 deg') ?? '').not.toContain('part of the time');
  });

  // 126 / 360 = 0.35; 270 / 360 = 0.75, which two lobes have no room for.
  it('wiring: degrees in a box of per cent', () => {
    for (const typed of ['126°', '126 deg', '126 degrees', '126,0°'])
      expect(problem('wiring', 'dwell-percent', typed)).toContain(
        'On a cam of one lobe type “35%”, of two type “70%”.',
      );
    expect(problem('wiring', 'dwell-percent', '270°')).toMatch(
      /On a cam of one lobe type “75%”\.$/,
    );
    expect(problem('wiring', 'dwell-percent', '35 %')).toBeUndefined();
  });
});
