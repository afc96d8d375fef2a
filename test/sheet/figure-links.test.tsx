import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { figureKeys, sheetFigures } from '../../calculators/sheet/figures.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { TextProblem } from '../../site/sheet/TextProblem.tsx';

it('a hint that names a figure of the sheet leads to its box', () => {
  const vee = { ...newEngine('e-1', 'Vee'), figures: { cylinders: 2 } };
  const box = { kind: 'reading', step: 'top', moment: 'found', index: 1 } as const;
  const { problem } = readNumber(vee, box, '200', { lengths: 'mm', sums: undefined });
  const html = renderToString(<TextProblem id="p" problem={problem} />);
  expect(html).toContain('<a href="#figure-set-2">“Set 2, from set 1”</a>');
  expect(html.replaceAll(/<[^>]+>/g, '')).toContain(problem!);
});

it('no two figures of the sheet have one name, by which they are found', () => {
  const names = figureKeys.map((key) => sheetFigures[key].label);
  expect(new Set(names).size).toBe(names.length);
});
