import { expect, it } from 'vitest';
import { phone, visit } from './support/page.ts';

/** Takes the lettering into use, however late it came, under a name of its own. */
async function take(): Promise<void> {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
  const face = rules.find((rule) => rule instanceof CSSFontFaceRule)!;
  const [, file] = /url\("?([^")]+)/.exec(face.style.getPropertyValue('src'))!;
  const address = new URL(file!, face.parentStyleSheet!.href!).href;
  const probe = new FontFace('Probe', `url("${address}")`, {
    sizeAdjust: face.style.getPropertyValue('size-adjust'),
  } as FontFaceDescriptors);
  document.fonts.add(await probe.load());
}

/** How wide lines are in a face, px. */
const widths = ({ family, lines }: { family: string; lines: readonly string[] }): number[] =>
  lines.map((line) => {
    const place = document.createElement('span');
    place.style.font = `600 50px ${family}`;
    place.style.fontVariantNumeric = 'tabular-nums';
    place.style.whiteSpace = 'nowrap';
    place.style.position = 'absolute';
    place.textContent = line;
    document.body.append(place);
    const { width } = place.getBoundingClientRect();
    place.remove();
    return width;
  });

it('the lettering has figures of one width, and is no wider than the face that stands in for it', async () => {
  await visit({ path: 'calculators/compression/', viewport: phone }, async (page) => {
    await page.evaluate(take);
    const figures = ['1', '4', '8', '0'].map((digit) => digit.repeat(10));
    const even = await page.evaluate(widths, { family: 'Probe', lines: figures });
    for (const width of even) expect(width).toBeCloseTo(even[0]!, 1);
    const lines = ['Points gap and dwell', '0.38 mm ± 0.02', 'What does it tell you?'];
    const own = await page.evaluate(widths, { family: 'Probe', lines });
    const standing = await page.evaluate(widths, { family: 'sans-serif', lines });
    own.forEach((width, i) => expect(width, lines[i]).toBeLessThan(standing[i]!));
  });
});
