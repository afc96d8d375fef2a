import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { sentenceIn } from '../../calculators/frame/text/sentence.ts';
import breakerCam from '../../calculators/points/breaker-cam/calculator.tsx';
import pistonPosition from '../../calculators/position/piston-position/calculator.tsx';

// 25.4 mm to the inch, 0.0254 mm to the thou: NIST SP 811 (2008), B.8.
describe('a sentence of the maths follows the reader’s lengths', () => {
  it('each figure by itself, and areas not at all', () => {
    expect(sentenceIn('From 12.70 mm to −0.254 mm, 3 mm².', 'in')).toBe(
      'From 0.5000 in to −10.00 thou, 3 mm².',
    );
    // A sheet of A4.
    expect(sentenceIn('A sheet of 210 × 297 mm.', 'in')).toBe('A sheet of 8.27 × 11.69 in.');
    expect(sentenceIn('From 12.70 mm.', 'mm')).toBe('From 12.70 mm.');
  });

  it('a figure typed in thou as it was typed', () => {
    expect(sentenceIn('A gap of 0.3556 mm, the lift of 0.41 mm.', 'in')).toBe(
      'A gap of 14 thou, the lift of 16.1 thou.',
    );
  });

  it('on the page, beside the field and in place of the result', () => {
    const short = evaluate(pistonPosition, { rod: '20' }, { lengths: 'in' });
    expect(short.problems[0]?.sentence).toMatch(/ in\b/);
    const wide = evaluate(breakerCam, { gap: '1.2' }, { lengths: 'in' });
    for (const { sentence } of [...short.problems, ...wide.problems]) {
      expect(sentence).not.toMatch(/\d mm\b/);
    }
  });
});
