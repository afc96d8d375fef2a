import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { wordForNothing } from '../../calculators/frame/show-result.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { Problems, problemLines, ReasonsForNone } from '../../site/fields/Problems.tsx';

function shown(slug: string, texts: Texts) {
  const evaluation = evaluate(calculatorBySlug(slug), texts, { lengths: 'mm' });
  return {
    evaluation,
    alert: renderToString(<Problems evaluation={evaluation} idPrefix="" />),
    plain: renderToString(<ReasonsForNone evaluation={evaluation} />),
  };
}

describe('a result of which there is none', () => {
  it.each([
    ['port-timing', { inlet: 'disc' }, 'inlet-clears', 'Only an inlet opened by the skirt'],
    ['port-timing', { inlet: 'reed' }, 'inlet-duration', 'reed'],
    ['piston-position', { travel: '0' }, 'degrees-per-tenth', 'the piston stands still'],
  ] as const)('of %s is told why, and nobody is alarmed', (slug, texts, name, why) => {
    const { evaluation, alert, plain } = shown(slug, texts);
    expect(wordForNothing(evaluation.results[name])).toBe('none');
    expect(plain).toContain(why);
    expect(alert).not.toContain(why);
    expect(problemLines(evaluation).join(' ')).toContain(why);
  });

  it('is “no answer”, and a fault, where the figures allow none', () => {
    const { evaluation, alert, plain } = shown('port-timing', { 'inlet-edge': '40' });
    expect(wordForNothing(evaluation.results['inlet-duration'])).toBe('no answer');
    expect(alert).toContain('inlet');
    expect(plain).not.toContain('from more than');
    const refused = shown('piston-position', { travel: '80' });
    expect(wordForNothing(refused.evaluation.results['angle'])).toBe('no answer');
    expect(refused.plain).toBe('');
  });
});
