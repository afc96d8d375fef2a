import { describe, expect, it } from 'vitest';
import { slugs } from './support/built.ts';
import { settled } from './support/calculator.ts';
import { visit } from './support/page.ts';

/** Runs in the page: what is wrong with the words of its pictures, as this browser sets them. */
function wordsAtFault(): string[] {
  const HAIR = 1;
  return [...document.querySelectorAll<SVGSVGElement>('.calc-picture svg.plot')].flatMap((svg) => {
    const { width, height } = svg.viewBox.baseVal;
    const into = svg.getScreenCTM()!.inverse();
    const words = [...svg.querySelectorAll<SVGTextElement>('text')]
      .filter((text) => text.getClientRects().length > 0 && text.textContent !== '')
      .map((text) => {
        const box = text.getBBox();
        const matrix = into.multiply(text.getScreenCTM()!);
        const from = new DOMPoint(box.x, box.y).matrixTransform(matrix);
        const to = new DOMPoint(box.x + box.width, box.y + box.height).matrixTransform(matrix);
        const size = parseFloat(getComputedStyle(text).fontSize) * matrix.a;
        // A line's box has room for accents above and below what is written in figures.
        const spare = box.height * 0.16;
        return {
          said: text.textContent,
          size,
          left: from.x,
          right: to.x,
          top: from.y + spare,
          bottom: to.y - spare,
        };
      });
    return words.flatMap((one, i) => [
      ...(one.size < 12.99 ? [`“${one.said}” is set in ${one.size}`] : []),
      ...(one.left < -HAIR ||
      one.top < -HAIR ||
      one.right > width + HAIR ||
      one.bottom > height + HAIR
        ? [`“${one.said}” stands outside`]
        : []),
      ...words
        .slice(i + 1)
        .filter(
          (other) =>
            one.left + HAIR < other.right &&
            other.left + HAIR < one.right &&
            one.top + HAIR < other.bottom &&
            other.top + HAIR < one.bottom,
        )
        .map((other) => `“${one.said}” on “${other.said}”`),
    ]);
  });
}

describe('the words of every picture, as a browser sets them, stand apart and within', () => {
  it.each(slugs)('%s', async (slug) => {
    await visit(
      { path: `calculators/${slug}/`, viewport: { width: 390, height: 844 } },
      async (page) => {
        await settled(page);
        expect(await page.locator('.calc-picture svg.plot text').count()).toBeGreaterThan(0);
        expect(await page.evaluate(wordsAtFault)).toEqual([]);
      },
    );
  });
});

it('air so thin that part of the picture cannot be leaves the page at work', async () => {
  const link =
    'calculators/air-and-jet/?pressure=40kPa&pressure-is=here&right-pressure=110kPa&right-pressure-is=here&right-temperature=-30&temperature=0';
  await visit({ path: link }, async (page) => {
    await settled(page);
    const jet = page.locator('output[name="jet"] data');
    const before = await jet.getAttribute('value');
    expect(await page.locator('.calc-picture svg.plot').count()).toBe(1);
    await page.locator('input[name="temperature"]').fill('10');
    await expect.poll(() => jet.getAttribute('value')).not.toBe(before);
    await page.locator('input[name="temperature"]').blur();
    await expect.poll(() => page.url()).toContain('temperature=10');
  });
});
