import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { fromQuery, originsIn } from '../../calculators/frame/address.ts';
import { measuresApart } from '../../site/browser/measures.ts';
import { held } from '../../site/browser/one-line.ts';
import { Problems } from '../../site/fields/Problems.tsx';
import { calculatorBySlug } from '../../site/all-calculators.ts';

const whole = (text: string): string[] => measuresApart(text).filter((_, i) => i % 2 === 1);

it('a firing order is one', () => {
  expect(whole('It fires unevenly in the order 1-2: 5°, 355°.')).toEqual(['1-2']);
  expect(whole('Say 1-3-2, 1,3,2 or 132.')).toEqual(['1-3-2']);
  expect(whole('On 2026-02-07, of a 4-stroke, 10-12 mm of it')).toEqual([]);
});

it('so is a name with its number', () => {
  expect(whole('Free play of cable 1, opening of slide 2, coil 2: 4.85 V')).toEqual([
    'cable 1',
    'slide 2',
    'coil 2',
    '4.85 V',
  ]);
  expect(whole('Along the crank, height 3; bore of jet 4, as carburettor 1')).toEqual([
    'height 3',
    'jet 4',
    'carburettor 1',
  ]);
  expect(whole('a jet 1.1 mm wide')).toEqual(['1.1 mm']);
  expect(whole('Rise read twice as well: 2420 ± 50 km.')).toEqual(['2420 ± 50 km']);
});

it('so is a sign with the word that it stands for', () => {
  expect(whole('Left after the plate, + early')).toEqual(['+ early']);
  expect(whole('Move in the slot, + advances, − retards')).toEqual(['+ advances', '− retards']);
  expect(whole('by the table: + is against the way it turns')).toEqual([]);
});

it('a figure keeps to its unit in what is to be put right, a link to its field', () => {
  const query = 'travel=99999mm';
  const evaluation = evaluate(calculatorBySlug('piston-position'), fromQuery(query), {
    lengths: 'mm',
    origins: originsIn(query),
  });
  const html = renderToString(<Problems evaluation={evaluation} idPrefix="" />);
  expect(html).toMatch(/<a [^>]*>.*<one-line>0 mm<\/one-line> to <one-line>200 mm<\/one-line>/);
});

it('so it does in a sentence made of several parts', () => {
  const html = renderToString(<p>{['Close it by 0.04 mm. ', <b key="b">At once.</b>]}</p>);
  expect(html).toContain('<one-line>0.04 mm</one-line>');
  expect(held('nothing measured')).toBe('nothing measured');
});
