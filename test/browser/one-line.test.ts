import { describe, expect, it } from 'vitest';
import { measuresApart } from '../../site/browser/measures.ts';
import { settled } from './support/calculator.ts';
import { pageFiles, pathOf } from './support/built.ts';
import { phone, visit } from './support/page.ts';

interface Blocks {
  /** Elements that hold nothing but a text and what stands within its lines, by their texts. */
  readonly texts: readonly string[];
  readonly laidOutApart: readonly string[];
}

describe('no line’s end parts a figure from its unit', () => {
  it.each(pageFiles)('%s', (file) =>
    visit({ path: pathOf(file), viewport: phone }, async (page) => {
      await settled(page);
      const { texts, laidOutApart } = await page.evaluate((): Blocks => {
        for (const fold of document.querySelectorAll('details')) fold.open = true;
        const blocks = [...document.querySelectorAll('main *')].filter(
          (element) =>
            !element.closest('svg, math, script, style, textarea') &&
            element.checkVisibility() &&
            getComputedStyle(element).display !== 'inline' &&
            [...element.childNodes].some(
              (child) => child instanceof Text && child.data.trim() !== '',
            ),
        );
        Object.assign(globalThis, { blocks });
        return {
          texts: blocks.map(({ textContent }) => textContent),
          laidOutApart: [...document.querySelectorAll('main one-line')]
            .filter((held) => /flex|grid/.test(getComputedStyle(held.parentElement!).display))
            .map((held) => held.parentElement!.textContent),
        };
      });
      const places = texts.map((text) => {
        let at = 0;
        return measuresApart(text).flatMap((piece, i) => {
          const from = at;
          at += piece.length;
          return i % 2 === 0 ? [] : [[from, at] as const];
        });
      });
      const parted = await page.evaluate((measures) => {
        const { blocks } = globalThis as unknown as { blocks: Element[] };
        return blocks.flatMap((block, i) => {
          const nodes: [Text, number][] = [];
          const walker = document.createTreeWalker(block, NodeFilter.SHOW_TEXT);
          for (let at = 0, node = walker.nextNode(); node; node = walker.nextNode()) {
            nodes.push([node as Text, at]);
            at += (node as Text).length;
          }
          const place = (index: number, end: boolean): [Text, number] => {
            const [node, at] = nodes.findLast(([, at]) => (end ? at < index : at <= index))!;
            return [node, index - at];
          };
          return measures[i]!.flatMap(([from, to]) => {
            const range = document.createRange();
            range.setStart(...place(from, false));
            range.setEnd(...place(to, true));
            const lines = [...range.getClientRects()].filter(({ width }) => width > 0);
            const broken = lines.some(({ top }) => top >= lines[0]!.bottom - 1);
            return broken ? [range.toString() + ' in: ' + block.textContent.slice(0, 80)] : [];
          });
        });
      }, places);
      expect(laidOutApart).toEqual([]);
      expect(parted).toEqual([]);
    }),
  );
});
