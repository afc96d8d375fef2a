import { describe, expect, it } from 'vitest';
import airAndJet from '../../calculators/carburettors/air-and-jet/calculator.tsx';
import slideBalance from '../../calculators/carburettors/slide-balance/calculator.tsx';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';

const run = (texts: Texts) =>
  evaluate(airAndJet as unknown as AnyCalculator, texts, { lengths: 'mm' });
const share = ({ results, spreads }: ReturnType<typeof run>): number =>
  spreads['density']! / (results['density'] as number);

describe('air and jet: how exact it is', () => {
  it('counts the weather where no barometer was read', () => {
    expect(share(run({}))).toBeGreaterThan(0.015);
    expect(share(run({}))).toBeLessThan(0.03);
  });

  it('does not where one was, whatever the height', () => {
    expect(share(run({ pressure: '91' }))).toBeLessThan(0.006);
    expect(share(run({ pressure: '91', 'altitude-error': '3000' }))).toBeLessThan(0.006);
  });
});

describe('slide balance by vacuum', () => {
  it('brings two slides to the less open of them, as it does by drill', () => {
    const turns = (texts: Texts): unknown =>
      evaluate(slideBalance as unknown as AnyCalculator, texts, { lengths: 'mm' }).results['turn'];
    // 32 is more vacuum than 30, and so the less open: the other is closed to it.
    const [first, second] = turns({
      slides: '2',
      method: 'vacuum',
      'vacuum-1': '30',
      'vacuum-2': '32',
    }) as number[];
    expect(first).toBeLessThan(0);
    expect(second).toBe(0);
    const [wide, narrow] = turns({
      slides: '2',
      method: 'drill',
      'opening-1': '2',
      'opening-2': '1.5',
    }) as number[];
    expect(wide).toBeLessThan(0);
    expect(narrow).toBe(0);
  });
});
