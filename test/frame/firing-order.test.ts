import { expect, it } from 'vitest';
import { readOrder } from '../../calculators/plate/order-reader.ts';
import { orderFigure } from '../../calculators/frame/text/order.ts';

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
  expect(readOrder('1+4-2+3', 4)).toMatchObject({
    problem: expect.stringContaining('Leave it empty, and give each its angle instead.'),
  });
  expect(readOrder('1-4-2-3', 4)).toEqual({ order: [1, 4, 2, 3] });
});
