import { expect, it } from 'vitest';
import holePattern from '../../calculators/plate/hole-pattern/calculator.tsx';
import { randomParts } from '../drawing/random-parts.ts';
import { drawn } from './support/draw.tsx';
import { outside, overlaps, strikes } from './support/faults.ts';
import { sheetsOf } from './support/marks.ts';

it('each hole of a random part has its number, on the sheet, on no edge and no other words', () => {
  let [count, seen] = [0, 0];
  const faults: string[] = [];
  for (const { values, evaluation, lengths, texts } of randomParts(31, 60)) {
    const html = drawn(holePattern, { texts, lengths, evaluation });
    // An attribute without a value is none in an SVG file, which previews are made from.
    expect(html).not.toMatch(/ d(?:=""|[ />])/);
    for (const sheet of sheetsOf(html)) {
      const names = sheet.texts.filter(({ words }) => /^\d+(: ⌀.*)?$/.test(words));
      count += values.hole.length;
      seen += names.length;
      const bare = { ...sheet, texts: names.map((name) => ({ ...name, haloed: false })) };
      const struck = strikes(bare).filter((fault) => !fault.includes('drawn-centre'));
      faults.push(
        ...[...outside(sheet), ...overlaps(sheet), ...struck].map(
          (fault) => `${fault} (${JSON.stringify(texts)} ${lengths})`,
        ),
      );
    }
  }
  expect(faults).toEqual([]);
  expect(count).toBeGreaterThan(280);
  expect(seen).toBe(count);
});
