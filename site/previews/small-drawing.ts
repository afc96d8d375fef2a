import sharp from 'sharp';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { looks, pictureOf } from './preview.ts';

/** Twice the size at which it is shown. */
const WIDTH = 240;
const HEIGHT = 176;
/** What cannot be read so small. */
const LETTERING = /<text[\s>][\s\S]*?<\/text>/g;
/** Lines are drawn for a picture some four times as wide. */
const BOLDER = 2.2;

/** The calculator’s own picture, small and without its lettering, to know it by in a list. */
export async function smallDrawing(calculator: AnyCalculator): Promise<Uint8Array<ArrayBuffer>> {
  const picture = pictureOf(calculator).replaceAll(LETTERING, '');
  const [, left, top, width, height] = /viewBox="([\d.-]+) ([\d.-]+) ([\d.-]+) ([\d.-]+)"/.exec(
    picture,
  )!;
  const styles = (await looks()).replaceAll(
    /stroke-width: ([\d.]+)/g,
    (_, wide: string) => `stroke-width: ${String(Number(wide) * BOLDER)}`,
  );
  const inside = picture.slice(picture.indexOf('>') + 1, picture.lastIndexOf('</svg>'));
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="${left!} ${top!} ${width!} ${height!}">
    <style>.key { display: none } ${styles.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</style>
    <g class="plot">${inside}</g></svg>`;
  const drawn = await sharp(Buffer.from(svg), { density: 144 })
    .flatten({ background: '#fff' })
    .trim()
    .resize(WIDTH, HEIGHT, { fit: 'contain', background: '#fff' })
    .webp({ quality: 70 })
    .toBuffer();
  return new Uint8Array(drawn);
}
