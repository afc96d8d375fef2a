import type { LengthDisplay } from '../frame/text/units.ts';
import { holdingWords } from './holding-words.ts';
import type { Paper } from './papers.ts';
import type { Drawing } from './shapes.ts';
import { withNote } from './with-note.ts';
import { dxf, pdf, svg } from './writers.ts';

/** What makes a drawing of a calculator's values, at once or once its code has come. */
type Draw<V> = (v: V, lengths: LengthDisplay) => Drawing | Promise<Drawing>;

/** The files of one part at true scale, each made from the same drawing. */
export const trueScaleFiles = <V extends { readonly paper: Paper }>(slug: string, draw: Draw<V>) =>
  [
    {
      name: `${slug}.pdf`,
      label: 'Template to print, PDF',
      type: 'application/pdf',
      make: async (v: V, lengths: LengthDisplay, note?: string) =>
        (await pdf()).toPdf([withNote(await draw(v, lengths), note)], v.paper, lengths),
    },
    {
      name: `${slug}-true-scale.svg`,
      label: 'True scale, SVG',
      type: 'image/svg+xml',
      make: async (v: V, lengths: LengthDisplay, note?: string) =>
        (await svg()).toSvg(holdingWords(withNote(await draw(v, lengths), note))),
    },
    {
      name: `${slug}.dxf`,
      label: 'True scale, DXF',
      type: 'image/vnd.dxf',
      make: async (v: V, lengths: LengthDisplay, note?: string) =>
        (await dxf()).toDxf(withNote(await draw(v, lengths), note)),
    },
  ] as const;
