import { holdingWords } from '../../drawing/holding-words.ts';
import { toDxf } from '../../drawing/to-dxf.ts';
import { toPdf } from '../../drawing/to-pdf.ts';
import { toSvg } from '../../drawing/to-svg.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import type { LengthDisplay } from '../../frame/units.ts';
import { plateOf, type Values } from './compute.ts';
import { plateDrawing } from './drawing.ts';

const drawingOf = (v: Values, lengths: LengthDisplay): Drawing =>
  plateDrawing({ plate: plateOf(v), allowance: v.allowance, lengths });

/** Files at true scale, each made from the same drawing. */
export const downloads = [
  {
    name: 'plate-layout.pdf',
    label: 'Template to print, PDF',
    type: 'application/pdf',
    make: (v: Values, lengths: LengthDisplay) => toPdf([drawingOf(v, lengths)], v.paper),
  },
  {
    name: 'plate-layout-true-scale.svg',
    label: 'True scale, SVG',
    type: 'image/svg+xml',
    make: (v: Values, lengths: LengthDisplay) =>
      Promise.resolve(toSvg(holdingWords(drawingOf(v, lengths)))),
  },
  {
    name: 'plate-layout.dxf',
    label: 'True scale, DXF',
    type: 'image/vnd.dxf',
    make: (v: Values, lengths: LengthDisplay) => toDxf(drawingOf(v, lengths)),
  },
] as const;
