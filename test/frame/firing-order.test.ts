import { expect, it } from 'vitest';
import { orderFigure, orderProblem } from '../../calculators/frame/firing-order.ts';

it.each([
  [132, '1-3-2'],
  [1, '1'],
  [104203, '1+4-2+3'],
  [10423, '1+4-2-3'],
  [1020304, '1+2+3+4'],
])('the figure %i of an order is shown as %s', (figure, shown) => {
  expect(orderFigure(figure)).toBe(shown);
});

it('an order that takes one cylinder after the other says what to do about two at once', () => {
  expect(orderProblem('1+4-2+3', 4)).toContain('Leave it empty, and give each its angle instead.');
  expect(orderProblem('1-4-2-3', 4)).toBeUndefined();
});
