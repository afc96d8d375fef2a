import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { wordsWidth } from '../../calculators/drawing/holding-words.ts';
import { CAPITAL } from '../../calculators/drawing/svg-element.ts';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { calculators } from '../../site/all-calculators.ts';

/** Parts so small that what is written under the bars is wider than they are. */
const SMALL: Readonly<Record<string, Texts>> = {
  'plate-layout': { outside: '44', bore: '8', 'radius-1': '12', 'radius-2': '14', slots: '0' },
  'degree-disc': { outside: '60', inside: '10', rotor: '70' },
  'hole-pattern': { holes: '2', distances: '1', 'distance-1': '14', outline: 'none' },
};

const files = calculators.flatMap((calculator) =>
  (calculator.downloads ?? [])
    .filter(({ type }) => type === 'image/svg+xml')
    .map((download) => ({ calculator, ...download })),
);

describe.each(files)('$name', ({ calculator, make }) => {
  it.each(['mm', 'in'] as const)('has every word on its sheet, lengths in %s', async (lengths) => {
    for (const texts of [{}, SMALL[calculator.slug]!]) {
      const { values, problems } = evaluate(calculator, texts, { lengths: 'mm' });
      expect(problems).toEqual([]);
      const svg = String(await make(values, lengths));
      const { document } = parseHTML(svg.replace(/^<\?xml.*\n/, ''));
      const [left, , width] = document
        .querySelector('svg')!
        .getAttribute('viewBox')!
        .split(' ')
        .map(Number);
      const words = [...document.querySelectorAll('text')];
      expect(words.length).toBeGreaterThan(0);
      for (const each of words) {
        const place = /translate\((\S+) \S+\) rotate\((\S+)\)/.exec(
          each.getAttribute('transform')!,
        )!;
        if (each.getAttribute('text-anchor') !== 'start' || Number(place[2]) !== 0) continue;
        const x = Number(place[1]);
        const height = Number(each.getAttribute('font-size')) * CAPITAL;
        expect(x).toBeGreaterThanOrEqual(left!);
        expect(x + wordsWidth(each.textContent, height), each.textContent).toBeLessThanOrEqual(
          left! + width! + 1e-6,
        );
      }
    }
  });
});
