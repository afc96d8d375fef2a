import type { APIRoute } from 'astro';
import sharp from 'sharp';
import { MARK_GROUND, MARK_SIZE, markFile } from '../../previews/mark.ts';

/** Share of a maskable icon's width that every mask leaves free round the mark. */
const MARGIN = 0.14;

const icons = {
  '48': { size: 48, margin: 0 },
  '180': { size: 180, margin: 0 },
  '192': { size: 192, margin: 0 },
  '512': { size: 512, margin: 0 },
  maskable: { size: 512, margin: MARGIN },
} as const;

export const getStaticPaths = () =>
  Object.entries(icons).map(([name, props]) => ({ params: { name }, props }));

/** The site's mark as a picture, for home screens that take no SVG. */
export const GET: APIRoute<{ size: number; margin: number }> = async ({ props }) => {
  const { size, margin } = props;
  const border = Math.round(size * margin);
  const inner = size - 2 * border;
  const mark = sharp(Buffer.from(markFile), { density: (72 * inner) / MARK_SIZE })
    .resize(inner, inner)
    .extend({ top: border, bottom: border, left: border, right: border, background: MARK_GROUND });
  return new Response(new Uint8Array(await mark.png({ compressionLevel: 9 }).toBuffer()), {
    headers: { 'content-type': 'image/png' },
  });
};
