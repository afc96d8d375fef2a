import { plateDrawing } from '../../calculators/plate/plate-layout/drawing.ts';
import { setAngles } from '../../calculators/maths/plate/plate-layout.ts';

/** Invented: three sets at unequal angles, two holes each, two slots. */
export const samplePlate = {
  outsideDiameter: 92,
  boreDiameter: 27,
  angles: setAngles(84, [118, 123.5]),
  holes: [
    { pitchRadius: 31.5, holeAngle: 0, drill: 3.3 },
    { pitchRadius: 27, holeAngle: 21, drill: 2.5 },
  ],
  slots: [20, 200].map((slotAngle) => ({
    slotRadius: 39,
    slotWidth: 4.5,
    slotAngle,
    slotSweep: 9,
  })),
};

export const sampleDrawing = plateDrawing({ plate: samplePlate, allowance: 3 });
