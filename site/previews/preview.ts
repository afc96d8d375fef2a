import { readFile } from 'node:fs/promises';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import sharp from 'sharp';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { resultLines } from '../../calculators/frame/summary.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { MARK_GROUND, MARK_SIZE, markDrawing } from './mark.ts';

const WIDTH = 1200;
const HEIGHT = 630;
const PICTURE = 470;
/** The site's mark before its name at the foot. */
const MARK = `<svg class="mark" x="60" y="537" width="60" height="60" viewBox="0 0 ${MARK_SIZE} ${MARK_SIZE}" color="#fff">${markDrawing}</svg>`;
/** What a picture may say of its own place and size, which the preview says instead. */
const OWN_PLACE = /\s(?:xmlns|x|y|width|height|font-family)="[^"]*"/g;

/** The style sheets with their colours written out: the light ones, as base.css declares them. */
export async function looks(): Promise<string> {
  const [base, picture] = await Promise.all(
    ['base.css', 'picture.css'].map((name) => readFile(`site/styles/${name}`, 'utf8')),
  );
  const root = base!.slice(base!.indexOf(':root'), base!.indexOf('}'));
  const colours = new Map(
    [...root.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name!, value!]),
  );
  return picture!.replaceAll(
    /var\((--[\w-]+)\)/g,
    (_, name: string) => colours.get(name) ?? '#000',
  );
}

const escape = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** Breaks a line of text at spaces so that no line is longer than `most` characters. */
function wrap(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < most) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(word);
  }
  return lines;
}

function write(lines: readonly string[], x: number, y: number, size: number, weight: number) {
  return lines
    .map(
      (line, i) =>
        `<text x="${x}" y="${y + i * size * 1.2}" font-size="${size}" font-weight="${weight}" fill="#fff">${escape(line)}</text>`,
    )
    .join('');
}

/** The calculator's first picture with its defaults, as an SVG of its own. */
export function pictureOf(calculator: AnyCalculator): string {
  const { values, results, spreads } = evaluate(calculator, {}, { lengths: 'mm' });
  const nothing = (): void => undefined;
  const markup = render(
    h(calculator.picture, {
      values,
      results,
      spreads: () => spreads,
      lengths: 'mm',
      idPrefix: '',
      set: nothing,
      commit: nothing,
    }),
  );
  const start = markup.indexOf('<svg');
  return markup.slice(start, markup.indexOf('</svg>', start) + '</svg>'.length);
}

/** The picture that goes with a link to a page: its title, and for a calculator its drawing. */
export async function preview(
  title: string,
  text: string,
  calculator?: AnyCalculator,
): Promise<Uint8Array<ArrayBuffer>> {
  const drawn = calculator === undefined ? '' : pictureOf(calculator);
  const figures =
    calculator === undefined
      ? []
      : resultLines(calculator, evaluate(calculator, {}, { lengths: 'mm' }), 'mm')
          .slice(0, 2)
          .map((line) => `${line.label}: ${line.text}`);
  const most = drawn === '' ? 30 : 17;
  const heading = wrap(title, most);
  const below = 150 + heading.length * 68;
  const words = drawn === '' ? wrap(text, 66) : figures.flatMap((figure) => wrap(figure, 34));
  const placed = drawn
    .replace(/<svg[^>]*>/, (tag) => tag.replaceAll(OWN_PLACE, ''))
    .replace(
      '<svg',
      `<svg xmlns="http://www.w3.org/2000/svg" x="${WIDTH - PICTURE - 60}" y="80" width="${PICTURE}" height="${PICTURE}" font-family="sans-serif"`,
    );
  const sheet =
    drawn === ''
      ? ''
      : `<rect x="${WIDTH - PICTURE - 76}" y="64" width="${PICTURE + 32}" height="${PICTURE + 32}" fill="#fff"/>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" font-family="sans-serif">
    <style>${escape(await looks())}
    svg svg:not(.mark){width:${PICTURE}px;height:${PICTURE}px;max-height:none}</style>
    <rect width="100%" height="100%" fill="${MARK_GROUND}"/>
    ${write(heading, 60, 130, 56, 800)}${write(words, 60, below, 30, 400)}
    ${MARK}${write(['Gudgeon'], 132, 580, 34, 800)}${sheet}${placed}</svg>`;
  return new Uint8Array(await sharp(Buffer.from(svg)).png({ compressionLevel: 9 }).toBuffer());
}
