/**
 * Linear expansion of the metals of an engine, 10⁻⁶ for each K.
 *
 * Source: W. D. Callister and D. G. Rethwisch, Fundamentals of Materials Science and Engineering, 3rd
 * edition, Wiley 2008, table B.6, pages 815 and 816 (grey iron, cast aluminium 356.0). Piston alloy with
 * 12% of silicon: 19.5 to 20.5 from 20 to 100 °C, Meteor Piston, Materials for gravity cast pistons,
 * alloy G-AlSi 12MgCuNi-P. Piston with 18% of silicon, and forged one with little: common practice.
 */
import { assertNumber, assertWithin } from '../numeric/within.ts';

export const expansions = {
  iron: 11.4,
  aluminium: 21.5,
  piston: 20,
  siliconPiston: 18.5,
  forgedPiston: 22,
} as const;

const PARTS = 1e-6;

/**
 * A length at another temperature, mm.
 *
 * @param expansion 10⁻⁶ for each K, 0 or more.
 * @param warmer K by which it is warmer than when it was measured; negative where it is colder.
 */
export function grown(length: number, expansion: number, warmer: number): number {
  assertWithin(
    {
      quantity: 'expansion',
      words: 'The expansion',
      unit: '·10⁻⁶/K',
      min: 0,
      why: 'Metals of an engine lie between 10 and 30. Look the alloy up in a handbook.',
    },
    expansion,
  );
  assertNumber(
    'temperature',
    'change of temperature',
    warmer,
    'Check both temperatures, in degrees.',
  );
  return length * (1 + expansion * PARTS * warmer);
}
