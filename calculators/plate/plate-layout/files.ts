import { trueScaleFiles } from '../../drawing/true-scale-files.ts';
import { plateOf, type Values } from './compute.ts';
import { plateDrawing } from './drawing.ts';

export const downloads = trueScaleFiles('plate-layout', (v: Values, lengths) =>
  plateDrawing({ plate: plateOf(v), allowance: v.allowance, lengths }),
);
