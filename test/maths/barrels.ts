import fc from 'fast-check';
import type { PistonInBarrel } from '../../calculators/maths/cylinder/port-timing.ts';

const shape = {
  stroke: fc.double({ min: 30, max: 90, noNaN: true }),
  rodPerStroke: fc.double({ min: 1.5, max: 2.5, noNaN: true }),
  deckClearance: fc.double({ min: -3, max: 5, noNaN: true }),
};

/** Cylinders of garage size, the pin offset up to a tenth of what would stop the crank. */
export const barrels: fc.Arbitrary<PistonInBarrel> = fc
  .record({ ...shape, offset: fc.double({ min: -0.1, max: 0.1, noNaN: true }) })
  .map(({ stroke, rodPerStroke, deckClearance, offset }) => {
    const rodLength = stroke * rodPerStroke;
    return { stroke, rodLength, deckClearance, pinOffset: offset * (rodLength - stroke / 2) };
  });

/** The same without a pin offset. */
export const plainBarrels = barrels.map((barrel) => ({ ...barrel, pinOffset: 0 }));
