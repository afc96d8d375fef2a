import { toDxf } from '../../drawing/to-dxf.ts';
import { toTiledPdf } from '../../drawing/to-pdf.ts';
import { toSvg } from '../../drawing/to-svg.ts';
import type { LengthDisplay } from '../../frame/units.ts';
import type { Values } from './compute.ts';
import { barePattern, patternDrawing } from './drawing.ts';

/** Files at true scale, each made from the same drawing. */
export const downloads = [
  {
    name: 'hole-pattern.pdf',
    label: 'Template to print, PDF',
    type: 'application/pdf',
    make: (v: Values, lengths: LengthDisplay) =>
      toTiledPdf(patternDrawing(v, lengths), barePattern(v, lengths), v.paper, lengths),
  },
  {
    name: 'hole-pattern-true-scale.svg',
    label: 'True scale, SVG',
    type: 'image/svg+xml',
    make: (v: Values, lengths: LengthDisplay) => Promise.resolve(toSvg(patternDrawing(v, lengths))),
  },
  {
    name: 'hole-pattern.dxf',
    label: 'True scale, DXF',
    type: 'image/vnd.dxf',
    make: (v: Values, lengths: LengthDisplay) => toDxf(patternDrawing(v, lengths)),
  },
] as const;
