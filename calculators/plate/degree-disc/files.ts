import type { Drawing } from '../../drawing/shapes.ts';
import { toPdf } from '../../drawing/to-pdf.ts';
import { toSvg } from '../../drawing/to-svg.ts';
import { sayNumber } from '../../maths/numeric/rounding.ts';
import { marksOf, type TapeValues, type Values } from './compute.ts';
import { discDrawing, tapeDrawing, type ScaleSheet } from './drawing.ts';

function scaleOf(v: TapeValues): ScaleSheet {
  return {
    numbering: v.numbering,
    grows:
      (v.turning === 'clockwise') === (v['fixed-to'] === 'crank') ? 'anticlockwise' : 'clockwise',
    marks: marksOf(v).map(({ travel, angle, before }) => ({
      angle: before ? -angle : angle,
      label: `${sayNumber(travel)} mm ${before ? 'before' : 'after'}`,
      short: sayNumber(travel),
    })),
  };
}

export const discOf = (v: Values): Drawing =>
  discDrawing({
    ...scaleOf(v),
    outsideDiameter: v.outside,
    insideDiameter: v.inside,
    note: `Stroke ${sayNumber(v.stroke)} mm, rod ${sayNumber(v.rod)} mm; crank turns ${v.turning}, disc on the ${v['fixed-to']}.`,
  });

export const tapeOf = (v: TapeValues): Drawing =>
  tapeDrawing({
    ...scaleOf(v),
    rotorDiameter: v.rotor,
    thickness: v.thickness,
    tapeWidth: v['tape-width'],
  });

/** Files at true scale, each made from the same drawings. */
export const downloads = [
  {
    name: 'degree-disc.pdf',
    label: 'Disc and tape to print, PDF',
    type: 'application/pdf',
    make: (v: Values) => toPdf([discOf(v), tapeOf(v)], v.paper),
  },
  {
    name: 'degree-disc-true-scale.svg',
    label: 'Disc at true scale, SVG',
    type: 'image/svg+xml',
    make: (v: Values) => Promise.resolve(toSvg(discOf(v))),
  },
  {
    name: 'rim-tape-true-scale.svg',
    label: 'Tape at true scale, SVG',
    type: 'image/svg+xml',
    make: (v: Values) => Promise.resolve(toSvg(tapeOf(v))),
  },
] as const;
