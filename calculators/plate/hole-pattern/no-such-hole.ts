import { MathsError } from '../../maths/numeric/errors.ts';

/** A hole named by a number that none has. */
export const noSuchHole = (key: string, number: number, count: number): MathsError =>
  new MathsError(
    'no-such-hole',
    [key],
    `There is no hole ${number}: the holes are numbered from 1 to ${count}. Type another number.`,
  );
