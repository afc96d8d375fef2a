import { holdingWords } from '../../drawing/holding-words.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import { dxf, pdf, svg } from '../../drawing/writers.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
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
    make: async (v: Values, lengths: LengthDisplay) =>
      (await pdf()).toPdf([drawingOf(v, lengths)], v.paper, lengths),
  },
  {
    name: 'plate-layout-true-scale.svg',
    label: 'True scale, SVG',
    type: 'image/svg+xml',
    make: async (v: Values, lengths: LengthDisplay) =>
      (await svg()).toSvg(holdingWords(drawingOf(v, lengths))),
  },
  {
    name: 'plate-layout.dxf',
    label: 'True scale, DXF',
    type: 'image/vnd.dxf',
    make: async (v: Values, lengths: LengthDisplay) => (await dxf()).toDxf(drawingOf(v, lengths)),
  },
] as const;
