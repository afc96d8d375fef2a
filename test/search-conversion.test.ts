import { describe, expect, it } from 'vitest';
import { conversionOf } from '../site/search/conversion.ts';

// An inch is 25.4 mm exactly (NIST Special Publication 811, 2008, Appendix B.8).
describe('a figure in what is searched for', () => {
  it.each([
    ['0.015 in in mm', '0.015 in = 0.381 mm = 15 thou'],
    ['what is 15 thou', '15 thou = 0.381 mm = 0.015 in'],
    ['0,4 mm', '0,4 mm = 0.01575 in = 15.75 thou'],
    ['gap of 1/64 in?', '1/64 in = 0.3969 mm = 15.63 thou'],
    ['1 1/8 in', '1 1/8 in = 28.57 mm = 1125 thou'],
    ['0.094 in before top', '0.094 in = 2.388 mm = 94 thou'],
    // 6.894 757 kPa to the pound-force per square inch, ibidem.
    ['120 psi', '120 psi = 827.4 kPa = 8.274 bar'],
    ['20 °C', '20 °C = 68 °F'],
  ])('%s: %s', (question, told) => {
    expect(conversionOf(question)).toBe(told);
  });

  it.each(['no spark', 'four 90', '2 stroke', 'runs on 2 of 3', '', '6 V'])(
    'is none in %j',
    (question) => {
      expect(conversionOf(question)).toBeUndefined();
    },
  );
});
