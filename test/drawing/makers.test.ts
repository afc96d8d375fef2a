import DxfParser from 'dxf-parser';
import { parseHTML } from 'linkedom';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { csvSummary } from '../../calculators/frame/copies.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { engineSheetSchema } from '../../calculators/sheet/schema.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { calculators } from '../../site/all-calculators.ts';
import { withMaker } from '../../calculators/picture/png-maker.ts';
import { foreignName } from './foreign-names.ts';

const files = calculators.flatMap((calculator) =>
  (calculator.downloads ?? []).map((download) => ({ calculator, ...download })),
);

/** Who made a file, as another program reads it. */
const makers: Readonly<Record<string, (content: Uint8Array) => Promise<unknown[]>>> = {
  'application/pdf': async (content) => {
    const { info } = await (await getDocument({ data: content }).promise).getMetadata();
    const { Author, Creator, Producer } = info as Record<string, unknown>;
    return [Author, Creator, Producer];
  },
  'image/vnd.dxf': (content) => {
    const { header } = new DxfParser().parseSync(Buffer.from(content).toString())!;
    return Promise.resolve([header.$LASTSAVEDBY]);
  },
  'image/svg+xml': (content) => {
    const text = Buffer.from(content)
      .toString()
      .replace(/^<\?xml.*\n/, '');
    const { document } = parseHTML(text);
    return Promise.resolve([document.querySelector('metadata > creator')?.textContent]);
  },
};

describe.each(files)('$name', ({ calculator, type, make }) => {
  it('names the site as its maker, and nobody else', async () => {
    const { values } = evaluate(calculator, {}, { lengths: 'mm' });
    const made = await make(values, 'mm');
    const content = new Uint8Array(Buffer.from(made));
    // What is compressed spells anything by chance.
    const text = Buffer.from(content)
      .toString('latin1')
      .replaceAll(/stream[^]*?endstream/g, '');
    const named = await makers[type]!(content);
    expect(new Set(named)).toEqual(new Set(['Gudgeon']));
    expect(foreignName(text)).toBeUndefined();
  });
});

it('a picture as a PNG names the site, and is still the picture', async () => {
  const plain = await sharp({
    create: { width: 3, height: 2, channels: 3, background: '#123456' },
  })
    .png()
    .toBuffer();
  const named = await withMaker(new Blob([new Uint8Array(plain)], { type: 'image/png' }));
  expect(named.type).toBe('image/png');
  const bytes = Buffer.from(await named.arrayBuffer());
  expect(await sharp(bytes).raw().toBuffer()).toEqual(await sharp(plain).raw().toBuffer());
  expect((await sharp(bytes).metadata()).comments).toEqual([
    { keyword: 'Author', text: 'Gudgeon' },
    { keyword: 'Software', text: 'Gudgeon' },
  ]);
});

it('tables and sheets name nobody else', () => {
  for (const calculator of calculators) {
    const evaluation = evaluate(calculator, {}, { lengths: 'mm' });
    expect(foreignName(csvSummary(calculator, evaluation)), calculator.slug).toBeUndefined();
  }
  expect(foreignName(writeDocument([demoSheet()]))).toBeUndefined();
  expect(engineSheetSchema.title).toContain('Gudgeon');
});

it('the search finds the names that a library would leave', () => {
  for (const left of ['pdf-lib (https://github.com/…)', '@tarikjabiri/dxf', 'Skia/PDF m153']) {
    expect(foreignName(left)).toBeDefined();
  }
  expect(foreignName('Gudgeon http://www.w3.org/2000/svg')).toBeUndefined();
});
