import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPdf {
  readonly pages: number;
  /** Width and height of the first page, mm. */
  readonly size: readonly [number, number];
  /** All words, with single spaces. */
  readonly text: string;
  /** The words that stand lowest on each page. */
  readonly feet: readonly string[];
  /** How far from the left edge of the first page its first words begin, in points. */
  readonly left: number;
}

const MM_PER_POINT = 25.4 / 72;

/** What another program reads in a PDF. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const words: string[] = [];
  const feet: string[] = [];
  let left = Infinity;
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    const texts = items.flatMap((item) => ('str' in item ? [item] : []));
    words.push(...texts.map(({ str }) => str));
    const height = ({ transform }: (typeof texts)[number]): number => Number(transform[5]);
    const said = texts.filter(({ str }) => str.trim() !== '');
    if (number === 1) left = Math.min(...said.map(({ transform }) => Number(transform[4])));
    const lowest = Math.min(...said.map(height));
    const foot = said.filter((text) => height(text) < lowest + 2);
    feet.push(foot.map(({ str }) => str).join(''));
  }
  const [, , width, height] = (await document.getPage(1)).view as [number, number, number, number];
  return {
    pages: document.numPages,
    size: [width * MM_PER_POINT, height * MM_PER_POINT],
    text: words.join(' ').replaceAll(/\s+/g, ' '),
    feet,
    left,
  };
}
