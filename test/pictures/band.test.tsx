import { expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { calculators } from '../../site/all-calculators.ts';
import { unsound } from '../hostile/unsound.ts';
import { drawn } from './support/draw.tsx';
import { outside, overlaps, strikes } from './support/faults.ts';
import { sheetsOf } from './support/marks.ts';
import { dice } from './support/states.ts';

// Few parts drawn at random have a band that leaves an opening: these have.
it('a part with a band is drawn within its frame, no word on another or under a line', () => {
  const calculator = calculators.find(({ slug }) => slug === 'hole-pattern')!;
  const roll = dice(11);
  const between = (least: number, most: number): string =>
    String(Number((least + (most - least) * roll()).toFixed(1)));
  let told = 0;
  const seen = Array.from({ length: 60 }, (_, i) => {
    const texts: Record<string, string> = {
      band: between(2, 14),
      'in-opening': '5',
      ...(i % 4 === 3 ? { outline: 'round', outside: between(104, 130) } : {}),
      ...Object.fromEntries([1, 2, 3, 4].map((hole) => [`land-${hole}`, between(2, 10)])),
      ...(i % 3 === 1 ? { 'bulge-1': between(-6, 4), 'bulge-2': between(-6, 4) } : {}),
    };
    const lengths = i % 2 === 0 ? 'mm' : 'in';
    const evaluation = evaluate(calculator, texts, { lengths });
    if (evaluation.problems.length > 0) return [];
    const html = drawn(calculator, { texts, lengths, evaluation });
    told += html.includes('>band ') ? 1 : 0;
    return [
      ...unsound(html),
      ...sheetsOf(html).flatMap((sheet) => [
        ...outside(sheet),
        ...overlaps(sheet),
        ...strikes(sheet),
      ]),
    ].map((fault) => `${fault} (${JSON.stringify(texts)} ${lengths})`);
  }).flat();
  expect(seen).toEqual([]);
  expect(told).toBeGreaterThan(35);
});
