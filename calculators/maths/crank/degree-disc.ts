/**
 * The marks of a degree disc and of a tape for the rim of a rotor, and how wrong a printed one can
 * be.
 */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { angleAfter, angleBefore, type SliderCrank } from './slider-crank.ts';

/** Degrees are then 0.35 mm apart at the rim, as near as lines can be told apart, mm. */
export const LEAST_DISC = 40;

const RADIANS_PER_DEGREE = Math.PI / 180;

/** How a disc or tape is numbered: from 0 to 360 one way, or from 0 to 180 both ways. */
export type Numbering = 'one-way' | 'both-ways';

export interface ScaleMark {
  /** Degrees after the zero in the direction in which readings grow, 0 to 359. */
  readonly angle: number;
  /** How many degrees the mark rounds off: ten are longest and bear a number. */
  readonly rank: 1 | 5 | 10;
  /** The number to print; none on the marks between the tens. */
  readonly number: number | undefined;
}

/** The 360 marks of a full circle. */
export function scaleMarks(numbering: Numbering): readonly ScaleMark[] {
  return Array.from({ length: 360 }, (_, angle): ScaleMark => {
    const rank = angle % 10 === 0 ? 10 : angle % 5 === 0 ? 5 : 1;
    const both = angle > 180 ? 360 - angle : angle;
    return {
      angle,
      rank,
      number: rank === 10 ? (numbering === 'both-ways' ? both : angle) : undefined,
    };
  });
}

/**
 * Throws a MathsError `disc-too-small` or `disc-hole-out-of-range` unless there is room on the disc
 * for its marks: 40 mm across or more, with a hole of less than half of that.
 *
 * @param outsideDiameter mm.
 * @param insideDiameter Of the hole in the middle, mm, 0 for none.
 */
export function assertDisc(outsideDiameter: number, insideDiameter: number): void {
  if (!(outsideDiameter >= LEAST_DISC)) {
    throw new MathsError(
      'disc-too-small',
      ['outsideDiameter'],
      `On a disc of ${sayNumber(outsideDiameter)} mm the degrees run into each other. It must be ${LEAST_DISC} mm or more; 150 to 200 mm can be read to a quarter of a degree.`,
    );
  }
  if (!(insideDiameter >= 0 && insideDiameter <= outsideDiameter / 2)) {
    throw new MathsError(
      'disc-hole-out-of-range',
      ['insideDiameter', 'outsideDiameter'],
      `The hole must be from 0 mm (none) to half the disc, ${sayNumber(outsideDiameter / 2)} mm, not ${sayNumber(insideDiameter)} mm, or there is no room for marks and figures. Make the disc larger.`,
    );
  }
}

/**
 * Crank angles of piston positions on the way up.
 *
 * @param travels mm below the top, each from 0 to the whole travel.
 * @returns Degrees before true TDC, one for each.
 * @throws MathsError as `angleBefore`; its `pistonTravel` is the travel at fault.
 */
export function marksBefore(g: SliderCrank, travels: readonly number[]): readonly number[] {
  return travels.map((travel) => angleBefore(g, travel));
}

/** Crank angles of piston positions on the way down, degrees after true TDC. See `marksBefore`. */
export function marksAfter(g: SliderCrank, travels: readonly number[]): readonly number[] {
  return travels.map((travel) => angleAfter(g, travel));
}

/**
 * Length of a flat tape that goes once round a rotor. Bent round the rim, its outer face stretches
 * and its inner face is squeezed; its middle keeps its length, at a diameter of rotor plus one
 * thickness. Source: thin strip bent without pull, neutral line in the middle (common practice).
 *
 * @param diameter Of the rotor, mm, more than 0.
 * @param thickness Of the tape with its glue, mm, 0 or more and at most a tenth of the diameter.
 * @returns mm: π (diameter + thickness).
 * @throws MathsError `diameter-not-positive`, `tape-too-thick`.
 */
export function tapeLength(diameter: number, thickness: number): number {
  if (!(diameter > 0) || !Number.isFinite(diameter)) {
    throw new MathsError(
      'diameter-not-positive',
      ['diameter'],
      `A rotor of ${sayNumber(diameter)} mm diameter has no rim. Enter more than 0 mm, measured where the tape is to go.`,
    );
  }
  if (!(thickness >= 0 && thickness <= diameter / 10)) {
    throw new MathsError(
      'tape-too-thick',
      ['thickness'],
      `A tape ${sayNumber(thickness)} mm thick cannot be bent round a rotor of ${sayNumber(diameter)} mm as a strip: it must be from 0 mm to a tenth of the diameter, ${sayNumber(diameter / 10)} mm. Paper is 0.1 mm, with adhesive film over it about 0.2 mm.`,
    );
  }
  return Math.PI * (diameter + thickness);
}

/**
 * Place of an angle on the flat tape, mm from its zero.
 *
 * @param angle Degrees, any real number.
 * Errors as `tapeLength`.
 */
export function tapePlace(diameter: number, thickness: number, angle: number): number {
  return (tapeLength(diameter, thickness) * angle) / 360;
}

/**
 * The worst error of a disc that a printer has stretched more one way than the other, degrees. With
 * the ratio k of the two scales a true direction a becomes atan(k tan a), at most
 * atan((k − 1) / (2 √k)) from where it was. Stretched alike both ways, a disc stays true.
 *
 * @param across What a bar of some length measures across the sheet, mm, more than 0.
 * @param up What a bar of the same length measures up the sheet, mm, more than 0.
 * @throws MathsError `bar-not-positive`.
 */
export function stretchedDiscError(across: number, up: number): number {
  assertBar('barAcross', across);
  assertBar('barUp', up);
  const ratio = Math.max(across, up) / Math.min(across, up);
  return Math.atan((ratio - 1) / (2 * Math.sqrt(ratio))) / RADIANS_PER_DEGREE;
}

/**
 * How far the last mark of a tape is out when the printer stretched it, degrees: the whole round is
 * out by the share by which the bar is. Positive where the tape is too long.
 *
 * @param measured What the bar measures along the tape, mm, more than 0.
 * @param nominal What it should measure, mm, more than 0.
 * @throws MathsError `bar-not-positive`.
 */
export function stretchedTapeError(measured: number, nominal: number): number {
  assertBar('barAcross', measured);
  assertBar('barAcross', nominal);
  return 360 * (measured / nominal - 1);
}

/**
 * The worst error of a disc whose centre lies beside the crank's, degrees: asin(e / r).
 *
 * @param offCentre mm, 0 or more, less than the radius.
 * @param radius Where the pointer reads, mm, more than 0.
 * @throws MathsError `off-centre-too-far`.
 */
export function offCentreDiscError(offCentre: number, radius: number): number {
  if (!(radius > 0 && offCentre >= 0 && offCentre < radius)) {
    throw new MathsError(
      'off-centre-too-far',
      ['offCentre', 'outsideDiameter'],
      `A disc that is read ${sayNumber(radius)} mm from its centre can lie from 0 mm to less than that off centre, not ${sayNumber(offCentre)} mm. A disc centred by eye is within half a millimetre.`,
    );
  }
  return Math.asin(offCentre / radius) / RADIANS_PER_DEGREE;
}

function assertBar(name: string, length: number): void {
  if (!(length > 0) || !Number.isFinite(length)) {
    throw new MathsError(
      'bar-not-positive',
      [name],
      `The proving bar must measure more than 0 mm, not ${sayNumber(length)}. Lay a steel rule along it and read from tick to tick.`,
    );
  }
}
