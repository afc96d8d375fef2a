import { assertWithin } from '../numeric/within.ts';

/** Most cylinders of one engine, and sets of points on one plate: this kind has no more. */
export const MOST_CYLINDERS = 8;

/** Throws unless there are 1 to 8 cylinders. */
export function assertCylinderCount(count: number): void {
  assertWithin(
    {
      quantity: 'cylinders',
      words: 'The number of cylinders',
      unit: '',
      min: 1,
      max: MOST_CYLINDERS,
      why: 'A crank has a pin at least, and no more than eight are reckoned here.',
    },
    count,
  );
}
