import { describe, expect, it } from 'vitest';
import airAndJet from '../../calculators/air-and-jet/calculator.tsx';
import { converter } from '../../calculators/frame/converter.ts';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';

const run = (texts: Texts) =>
  evaluate(airAndJet as unknown as AnyCalculator, texts, { lengths: 'mm', converter });
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
