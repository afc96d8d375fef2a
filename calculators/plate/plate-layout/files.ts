import { toDxf } from '../../drawing/to-dxf.ts';
import { toPdf } from '../../drawing/to-pdf.ts';
import { toSvg } from '../../drawing/to-svg.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import { plateOf, type Values } from './compute.ts';
import { plateDrawing } from './drawing.ts';

export const drawingOf = (v: Values): Drawing =>
  plateDrawing({ plate: plateOf(v), allowance: v.allowance });

/** Files at true scale, each made from the same drawing. */
export const downloads = [
  {
    name: 'plate-layout.pdf',
    label: 'Template to print, PDF',
    type: 'application/pdf',
    make: (v: Values) => toPdf([drawingOf(v)], v.paper),
  },
  {
    name: 'plate-layout-true-scale.svg',
    label: 'True scale, SVG',
    type: 'image/svg+xml',
    make: (v: Values) => Promise.resolve(toSvg(drawingOf(v))),
  },
  {
    name: 'plate-layout.dxf',
    label: 'True scale, DXF',
    type: 'image/vnd.dxf',
    make: (v: Values) => toDxf(drawingOf(v)),
  },
] as const;
