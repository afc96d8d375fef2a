import { describe, expect, it } from 'vitest';
import { metric, proseIn } from '../../calculators/frame/text/prose.ts';

// 25.4 mm to the inch, 0.3048 m to the foot: NIST SP 811 (2008), B.8.
it('is turned more exactly where figures are worked out of it', () => {
  expect(proseIn('stroke 51 mm, rod 104 mm', 'in', 4)).toBe('stroke 2.008 in, rod 4.094 in');
});

describe('a text of a definition follows the reader’s lengths', () => {
  it.each([
    ['0.05 to 0.075 mm on a 50 mm bore', '2 to 3 thou on a 2 in bore'],
    ['0.8 to 1.2 mm', '31 to 47 thou'],
    ['1 or 2 mm', '39 or 79 thou'],
    ['3 mm or 1.25 mm', '0.12 in or 49.2 thou'],
    ['plugs of 14\u00A0mm, not 14 mm', 'plugs of 14\u00A0mm, not 0.55 in'],
    ['2.2 ± 0.1 mm', '87 ± 3.9 thou'],
    ['a sheet of 210 by 297 mm', 'a sheet of 8.27 by 11.7 in'],
    ['2 to 4 mm are common', '0.079 to 0.16 in are common'],
    ['a disc of 36 mm has about 1018 mm².', 'a disc of 1.4 in has about 1.578 in².'],
    ['−0.5 mm or 12.5 mm', '−20 thou or 0.492 in'],
    ['at 900 m, in 16 cc', 'at 2950 ft, in 16 cc'],
    ['M6, 40 m/s, 3 mm/s, 5 mmHg, 7000 rpm', 'M6, 40 m/s, 3 mm/s, 5 mmHg, 7000 rpm'],
    [`plugs of ${metric(14)}`, `plugs of ${metric(14)}`],
  ])('%s', (text, turned) => {
    expect(metric('14')).toBe('14\u00A0mm');
    expect(proseIn(text, 'in')).toBe(turned);
    expect(proseIn(text, 'mm')).toBe(text);
  });
});
