import { describe, expect, it } from 'vitest';
import { withInches } from '../../site/articles/with-inches.ts';

/** What is read by who has chosen inches. */
const read = (html: string): string =>
  withInches(html)
    .replaceAll(/<span class="with-inches" data-inches="([^"]*)">([^<]*)<\/span>/g, '$2 ($1)')
    .replaceAll('\u00A0', ' ');

// 25.4 mm to the inch: NIST SP 811 (2008), B.8.
describe('a length in the text of an article carries its inches', () => {
  it.each([
    ['<p>at 2.54\u00A0mm below</p>', '<p>at 2.54 mm (0.1 in) below</p>'],
    ['<p>from 12.7 to 25.4\u00A0mm.</p>', '<p>from 12.7 to 25.4 mm (0.5 to 1 in).</p>'],
    ['<p>2.54 ± 0.127\u00A0mm</p>', '<p>2.54 ± 0.127 mm (0.1 ± 0.005 in)</p>'],
    // 1 psi is 6.894757 kPa, and 20 °C are 68 °F.
    ['<p>50\u00A0kPa at 20 °C</p>', '<p>50 kPa (7.3 psi) at 20 °C (68 °F)</p>'],
    ['<a href="/x/?a=1 mm">5.08 mm</a>', '<a href="/x/?a=1 mm">5.08 mm (0.2 in)</a>'],
  ])('%s', (html, expected) => {
    expect(read(html)).toBe(expected);
  });

  it.each([
    '<p>7 kPa (1 psi) and 40 kPa (about 6 psi)</p>',
    '<p>a thread of M14 × 1.25 mm, 3 mm/s, 40 mmHg</p>',
    '<svg><text>2.54 mm</text></svg>',
    '<math><mn>2.54</mn> 2.54 mm</math>',
    '<figure><p>2.54 mm</p></figure>',
  ])('and nothing else does: %s', (html) => {
    expect(withInches(html)).toBe(html);
  });

  it('what stands behind a drawing is text again', () => {
    expect(read('<svg><g/><text>1 mm</text></svg><p>254 mm</p>')).toContain('254 mm (10 in)');
  });
});
