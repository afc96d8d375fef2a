import { Path2D, createCanvas } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** The renderer makes its paths with whatever class goes by this name. */
Object.assign(globalThis, { Path2D });

export interface RenderedPage {
  /** mm. */
  readonly width: number;
  readonly height: number;
  readonly dotsPerMm: number;
  readonly columns: number;
  readonly rows: number;
  /** 1 for each dot with ink, row by row from the top. */
  readonly ink: Uint8Array;
  readonly words: string;
}

/** Pages of a PDF as a printer would lay them down, at so many dots per inch. */
export async function renderPdf(bytes: Uint8Array, dpi: number): Promise<RenderedPage[]> {
  const task = getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const pages: RenderedPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const viewport = page.getViewport({ scale: dpi / 72 });
    const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
    await page.render({ canvas: canvas as never, viewport }).promise;
    const colours = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height).data;
    const ink = new Uint8Array(canvas.width * canvas.height);
    for (let dot = 0; dot < ink.length; dot += 1) ink[dot] = colours[dot * 4]! < 160 ? 1 : 0;
    const { items } = await page.getTextContent();
    pages.push({
      width: (viewport.width / dpi) * 25.4,
      height: (viewport.height / dpi) * 25.4,
      dotsPerMm: dpi / 25.4,
      columns: canvas.width,
      rows: canvas.height,
      ink,
      words: items.map((item) => ('str' in item ? item.str : '')).join(' '),
    });
  }
  await task.destroy();
  return pages;
}

/** The longest unbroken run of ink along the rows of the page, or up its columns, in mm. */
export function longestRun(page: RenderedPage, way: 'across' | 'up'): number {
  const { columns, rows, ink } = page;
  const [lines, along] = way === 'across' ? [rows, columns] : [columns, rows];
  let longest = 0;
  for (let line = 0; line < lines; line += 1) {
    let run = 0;
    for (let place = 0; place < along; place += 1) {
      const dot = way === 'across' ? line * columns + place : place * columns + line;
      run = ink[dot] ? run + 1 : 0;
      if (run > longest) longest = run;
    }
  }
  return longest / page.dotsPerMm;
}
