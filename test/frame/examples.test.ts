import { expect, it } from 'vitest';
import { exampleWords } from '../../calculators/frame/field/examples.ts';

const spec = { unit: 'mm', min: 0.1, max: 10, step: 0.1 } as const;

it('a field’s example is what is usual there, and never what it would refuse', () => {
  // 5 mm is 0.19685 in, 196.85 thou.
  expect(exampleWords(spec, 'mm', 5)).toBe('5, 5 mm, 0.2 in or 200 thou');
  for (const usual of [0.05, 20])
    expect(exampleWords(spec, 'mm', usual)).toBe('1, 1 mm, 0.0394 in or 39.4 thou');
});
