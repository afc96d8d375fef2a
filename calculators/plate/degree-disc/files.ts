import { holdingWords } from '../../drawing/holding-words.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import { withNote } from '../../drawing/with-note.ts';
import { pdf, svg } from '../../drawing/writers.ts';
import { inputDigits, showIn, showInput, shownUnit } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { marksOf, type TapeValues, type Values } from './compute.ts';
import { discDrawing, tapeDrawing, type ScaleSheet } from './drawing.ts';

/** Piston travels are marked to a hundredth of a millimetre, engine and disc told to a tenth. */
const FINE = 0.01;
const COARSE = 0.1;

function scaleOf(v: TapeValues, lengths: LengthDisplay, what: string): ScaleSheet {
  const marks = marksOf(v);
  const among = marks.map(({ travel }) => travel);
  const unit = shownUnit(among, 'mm', lengths);
  return {
    lengths,
    note: `Stroke ${showInput(v.stroke, 'mm', lengths, COARSE)}, rod ${showInput(v.rod, 'mm', lengths, COARSE)}; crank turns ${v.turning}, ${what} on the ${v['fixed-to']}.`,
    numbering: v.numbering,
    grows:
      (v.turning === 'clockwise') === (v['fixed-to'] === 'crank') ? 'anticlockwise' : 'clockwise',
    marks: marks.map(({ travel, angle, before }) => ({
      angle: before ? -angle : angle,
      label: `${showIn(travel, unit, FINE)} ${before ? 'before' : 'after'}`,
      short: inputDigits(travel, unit, FINE),
    })),
  };
}

export const discOf = (v: Values, lengths: LengthDisplay = 'mm'): Drawing =>
  discDrawing({
    ...scaleOf(v, lengths, 'disc'),
    outsideDiameter: v.outside,
    insideDiameter: v.inside,
  });

export const tapeOf = (v: TapeValues, lengths: LengthDisplay = 'mm'): Drawing =>
  tapeDrawing({
    ...scaleOf(v, lengths, 'tape'),
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
    make: async (v: Values, lengths: LengthDisplay, note?: string) =>
      (await pdf()).toPdf(
        [withNote(discOf(v, lengths), note), withNote(tapeOf(v, lengths), note)],
        v.paper,
        lengths,
      ),
  },
  {
    name: 'degree-disc-true-scale.svg',
    label: 'Disc at true scale, SVG',
    type: 'image/svg+xml',
    make: async (v: Values, lengths: LengthDisplay, note?: string) =>
      (await svg()).toSvg(holdingWords(withNote(discOf(v, lengths), note))),
  },
  {
    name: 'rim-tape-true-scale.svg',
    label: 'Tape at true scale, SVG',
    type: 'image/svg+xml',
    make: async (v: Values, lengths: LengthDisplay, note?: string) =>
      (await svg()).toSvg(holdingWords(withNote(tapeOf(v, lengths), note))),
  },
] as const;
