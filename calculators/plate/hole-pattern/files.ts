import { dxf, pdf, svg } from '../../drawing/writers.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import type { Values } from './compute.ts';
import { patternDrawing } from './drawing.ts';

/** Files at true scale, each made from the same drawing. */
export const downloads = [
  {
    name: 'hole-pattern.pdf',
    label: 'Template to print, PDF',
    type: 'application/pdf',
    make: async (v: Values, lengths: LengthDisplay) =>
      (await pdf()).toPdf([patternDrawing(v, lengths)], v.paper, lengths),
  },
  {
    name: 'hole-pattern-true-scale.svg',
    label: 'True scale, SVG',
    type: 'image/svg+xml',
    make: async (v: Values, lengths: LengthDisplay) =>
      (await svg()).toSvg(patternDrawing(v, lengths)),
  },
  {
    name: 'hole-pattern.dxf',
    label: 'True scale, DXF',
    type: 'image/vnd.dxf',
    make: async (v: Values, lengths: LengthDisplay) =>
      (await dxf()).toDxf(patternDrawing(v, lengths)),
  },
] as const;
