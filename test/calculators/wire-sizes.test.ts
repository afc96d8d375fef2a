import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import wiring from '../../calculators/points/wiring/calculator.tsx';
import { otherSizes } from '../../calculators/points/wiring/other-sizes.ts';

const byHand = { lengths: 'in', origins: { area: 'yours' } } as const;
const fieldOf = (area: string, asked: object) =>
  evaluate(wiring, { area }, asked as never).fields.find(({ key }) => key === 'area')!;

describe('a size of wire that is no cross-section', () => {
  it.each([
    // 14 × 0.3² × 0.7854 = 0.9896; 28 × the same; 14 × (0.012 × 25.4)² × 0.7854 = 1.0215.
    ['14/0.30', '14 strands of 0.3 mm: type “0.99 mm²”'],
    ['28/.3', '28 strands of 0.3 mm: type “1.98 mm²”'],
    ['14/0,30 mm', '14 strands of 0.3 mm: type “0.99 mm²”'],
    ['14/0.05', '14 strands of 0.05 mm: type “0.0275 mm²”'],
    ['14/.012', '14 strands of 0.012 in: type “1.02 mm²”'],
    // Tables of the American gauge: 16 has 1.31 mm², 10 has 5.26, 0 has 53.5, 0000 has 107.
    ['16 AWG', 'type “1.31 mm²”'],
    ['awg 10', 'type “5.26 mm²”'],
    ['0 awg', 'type “53.5 mm²”'],
    ['0000awg', 'type “107 mm²”'],
  ])('%s is told what it comes to', (typed, said) => {
    expect(otherSizes(typed)).toContain(said);
  });

  it.each(['16 swg', 'SWG 16', '16 gauge', '16 ga'])('%s is asked about', (typed) => {
    expect(otherSizes(typed)).toContain('may be American or British');
  });

  it.each(['1.5', '1.5 mm2', '2/3', '14*0.3*0.3*0.785', '(0.7+0.8)/2', '41 awg', '14/0.0', ''])(
    '%s is none',
    (typed) => {
      expect(otherSizes(typed)).toBeUndefined();
    },
  );

  it('is asked about in the box, and a link keeps its meaning', () => {
    const typed = fieldOf('14/0.30', byHand);
    expect(typed.problem).toContain('type “0.99 mm²”');
    expect(typed.unread || typed.heldOver).toBe(true);
    expect(
      fieldOf('14/0.30', { ...byHand, origins: { area: 'link' } }).problem ?? '',
    ).not.toContain('strands');
  });
});
