import { expect, it } from 'vitest';
import { originsIn, toQuery } from '../../calculators/frame/address.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { leadLines } from '../../calculators/frame/summary.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';

const run = (slug: string, texts: Record<string, string>) =>
  evaluate(calculatorBySlug(slug), texts, { lengths: 'mm' });

it('crown and head that meet are told beside the figure, and only then', () => {
  const compression = calculatorBySlug('compression');
  const squish = (deck: string) =>
    leadLines(compression, run('compression', { deck }), 'mm').find((line) =>
      line.startsWith('Squish'),
    );
  expect(squish('-3')).toMatch(/−\d.* hits/);
  expect(squish('0.5')).not.toContain('hits');
});

it('a clip in the lowest groove is promised no lower one', () => {
  const needle = calculatorBySlug('needle-and-clip');
  const said = (clip: string) =>
    remarksOf(
      needle,
      evaluate(needle, { clip, clips: '5' }, { lengths: 'mm', demonstration: true }),
    ).join(' ');
  expect(said('5')).toContain('The clip is in the lowest groove');
  expect(said('5')).not.toContain('One groove lower');
  expect(said('4')).toContain('One groove lower');
});

it('a limit that nobody gave is nobody’s in a link too', () => {
  const own = { as: 'travel', cylinders: '2', target: '2.2', 'fired-1': '2.2', 'fired-2': '2.3' };
  const whose = (texts: Record<string, string>) =>
    originsIn(toQuery(run('plate-setting', texts)))['tolerance'];
  expect(whose(own)).toBe('example');
  expect(whose({ ...own, tolerance: '1' })).toBe('link');
});
