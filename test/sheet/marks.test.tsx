import { expect, it } from 'vitest';
import { marks } from '../../site/sheet/StepCard.tsx';

it('one symbol stands for one state of a step only', () => {
  const symbols = Object.values(marks);
  expect(new Set(symbols).size).toBe(symbols.length);
});
