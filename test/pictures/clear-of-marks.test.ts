import { expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { drawn } from './support/draw.tsx';
import { outside, overlaps, pierced } from './support/faults.ts';
import { sheetsOf } from './support/marks.ts';

it.each([[{ 'opening-1': '0' }], [{ 'opening-1': '60' }], [{ method: 'vacuum', 'vacuum-2': '0' }]])(
  'a slide at the floor of its bore keeps its name clear of its handle: %j',
  (texts) => {
    const calculator = calculatorBySlug('slide-balance');
    const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
    const sheets = sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation }));
    expect(sheets.length).toBeGreaterThan(0);
    expect(
      sheets.flatMap((sheet) => [...pierced(sheet), ...outside(sheet), ...overlaps(sheet)]),
    ).toEqual([]);
  },
);

it('a letter of the disc stands clear of its figures', () => {
  const calculator = calculatorBySlug('degree-disc');
  const evaluation = evaluate(calculator, {}, { lengths: 'mm' });
  const [disc] = sheetsOf(drawn(calculator, { texts: {}, lengths: 'mm', evaluation }));
  const letters = disc!.texts.filter(({ words }) => /^[A-Z]$/.test(words));
  const figures = disc!.texts.filter(({ words }) => /^\d+$/.test(words));
  expect(letters).toHaveLength(2);
  for (const { area: a } of letters) {
    for (const { area: b, words } of figures) {
      const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
      const up = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
      expect(Math.max(across, up), words).toBeGreaterThan(1);
    }
  }
});
