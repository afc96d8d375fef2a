import { expect, it } from 'vitest';
import { fromQuery } from '../../calculators/frame/address.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { calculators } from '../../site/all-calculators.ts';
import { drawn } from '../pictures/support/draw.tsx';

const crank = calculators.find(({ slug }) => slug === 'firing-order')!;

it.each([
  ['cylinders=2&pin-1=0deg&pin-2=0deg', '1+2'],
  ['cylinders=4&pin-1=0deg&pin-2=180deg&pin-3=180deg&pin-4=0deg', '1+4-2+3'],
  ['cylinders=3&pin-1=0deg&pin-2=240deg&pin-3=120deg', '1-2-3'],
])('the order of %s stands as %s wherever it is told', (query, order) => {
  const texts = fromQuery(query);
  const evaluation = evaluate(crank, texts, { lengths: 'mm' });
  const told = [
    ...remarksOf(crank, evaluation),
    drawn(crank, { texts, lengths: 'mm', evaluation }),
  ].join(' ');
  const orders = [...told.matchAll(/(?:[Oo]rder) (\d(?:[-+]\d)+)/g)].map(([, found]) => found);
  expect(orders.length).toBeGreaterThan(1);
  expect(new Set(orders)).toEqual(new Set([order]));
});
