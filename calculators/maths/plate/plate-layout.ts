/**
 * Where the holes of a plate go: several sets of the same holes round one centre. X points right, Y
 * up, and angles are counted anticlockwise from X, as on a readout and in a drawing file.
 */
import { MOST_CYLINDERS } from '../limits/cylinder-count.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';

const RADIANS_PER_DEGREE = Math.PI / 180;

/** Most sets on one plate: one for each cylinder. */
export const MOST_SETS = MOST_CYLINDERS;

/** One hole of every set, in terms of the set's own line from the centre outwards. */
export interface PlateHole {
  /** From the plate's centre to the hole's, mm, more than 0. */
  readonly pitchRadius: number;
  /** From the set's own line, degrees, positive anticlockwise. */
  readonly holeAngle: number;
  /** Diameter of the drill, mm, more than 0. */
  readonly drill: number;
}

export interface Place {
  /** mm to the right of the centre. */
  readonly x: number;
  /** mm above the centre. */
  readonly y: number;
}

/** Equal spacing of `sets` round the plate, degrees. */
export function equalSpacing(sets: number): number {
  assertSets(sets);
  return 360 / sets;
}

/** Degrees within which two lines are one. */
const SAME_LINE = 1e-6;

const onOneLine = (a: number, b: number): boolean => {
  const apart = Math.abs(a - b) % 360;
  return Math.min(apart, 360 - apart) < SAME_LINE;
};

/**
 * The direction of each set's own line.
 *
 * @param start Direction of set 1, degrees anticlockwise from X, any real number.
 * @param spacings Degrees from each set to the next, for sets 2, 3, …; each more than 0. They may
 *   come to more than a turn, since sets are numbered by their cylinders and not round the plate, but
 *   no two sets may stand on one line. One set fewer than there are sets; none for a single set.
 * @returns Degrees, one for each set; not wrapped, so that each is more than the one before.
 * @throws MathsError `not-a-number`; `spacing-not-positive`; `sets-on-one-line`; `sets-out-of-range`.
 *   The quantities are `start` and `spacing-2`, `spacing-3`, ….
 */
export function setAngles(start: number, spacings: readonly number[]): readonly number[] {
  assertSets(spacings.length + 1);
  assertNumber('start', 'angle of set 1', start, 'Enter degrees.');
  const angles = [start];
  spacings.forEach((spacing, i) => {
    const name = `spacing-${i + 2}`;
    assertNumber(name, `angle from set ${i + 1} to set ${i + 2}`, spacing, 'Enter degrees.');
    if (!(spacing > 0)) {
      throw new MathsError(
        'spacing-not-positive',
        [name],
        `From set ${i + 1} to set ${i + 2} there must be more than 0°, not ${sayNumber(spacing)}°: the sets are counted on from one to the next, all the same way round. Enter the angle the other way round, 360° less what you have.`,
      );
    }
    const angle = angles[i]! + spacing;
    const other = angles.findIndex((before) => onOneLine(before, angle));
    if (other >= 0) {
      throw new MathsError(
        'sets-on-one-line',
        [name],
        `Set ${i + 2} would stand on the line of set ${other + 1}: from there on the angles come to ${sayNumber(angle - angles[other]!)}°. Leave out the way from the last set back to set 1, or check the angles.`,
      );
    }
    angles.push(angle);
  });
  return angles;
}

/**
 * The centre of one hole of one set.
 *
 * @param setAngle Direction of the set's own line, degrees.
 * @returns mm.
 * @throws MathsError as `assertHole`, without a number in the names.
 */
export function holePlace(setAngle: number, hole: Omit<PlateHole, 'drill'>): Place {
  const direction = ((setAngle + hole.holeAngle) % 360) * RADIANS_PER_DEGREE;
  return {
    x: hole.pitchRadius * Math.cos(direction),
    y: hole.pitchRadius * Math.sin(direction),
  };
}

/** All holes: `[set][hole]`. Errors as `assertHole`. */
export function holePlaces(
  angles: readonly number[],
  holes: readonly PlateHole[],
): readonly (readonly Place[])[] {
  holes.forEach((hole, i) => assertHole(hole, i + 1));
  return angles.map((angle) => holes.map((hole) => holePlace(angle, hole)));
}

/**
 * Straight distance between the same hole of two sets: what dividers are set to.
 *
 * @param pitchRadius mm, more than 0.
 * @param between Degrees from one set to the other, any real number.
 * @returns mm: 2 r sin(angle / 2), of which the size counts.
 * @throws MathsError `pitch-radius-not-positive`, `not-a-number`.
 */
export function chord(pitchRadius: number, between: number): number {
  assertPitchRadius('pitchRadius', pitchRadius);
  assertNumber('spacing', 'angle between the sets', between, 'Enter degrees.');
  return Math.abs(2 * pitchRadius * Math.sin(((between % 720) * RADIANS_PER_DEGREE) / 2));
}

/**
 * The way on from each set to the next, and from the last to the first, degrees, more than 0 and no
 * more than 360. Nothing for a single set.
 */
export function steps(angles: readonly number[]): readonly number[] {
  if (angles.length < 2) return [];
  return angles.map((angle, i) => {
    const next = angles[i + 1];
    if (next !== undefined) return next - angle;
    const back = (angles[0]! - angle) % 360;
    return back > 0 ? back : back + 360;
  });
}

/**
 * Throws a MathsError unless the hole can be drilled: `not-a-number`, `pitch-radius-not-positive`,
 * `drill-not-positive`. The quantities are `pitchRadius-2`, `holeAngle-2`, `drill-2` for hole 2.
 */
function assertHole(hole: PlateHole, number: number): void {
  assertPitchRadius(`pitchRadius-${number}`, hole.pitchRadius, ` of hole ${number}`);
  assertNumber(`holeAngle-${number}`, `angle of hole ${number}`, hole.holeAngle, 'Enter degrees.');
  assertNumber(`drill-${number}`, `drill of hole ${number}`, hole.drill, 'Enter millimetres.');
  if (!(hole.drill > 0)) {
    throw new MathsError(
      'drill-not-positive',
      [`drill-${number}`],
      `A drill of ${sayNumber(hole.drill)} mm makes no hole. Enter the diameter of the drill for hole ${number}, more than 0 mm.`,
    );
  }
}

function assertSets(sets: number): void {
  if (!Number.isInteger(sets) || sets < 1 || sets > MOST_SETS) {
    throw new MathsError(
      'sets-out-of-range',
      ['sets'],
      `A plate has a whole number of sets from 1 to ${MOST_SETS}, not ${sayNumber(sets)}. Count the pairs of contacts that are to stand on it.`,
    );
  }
}

function assertPitchRadius(name: string, pitchRadius: number, whose = ''): void {
  assertNumber(name, `pitch circle radius${whose}`, pitchRadius, 'Enter millimetres.');
  if (!(pitchRadius > 0)) {
    throw new MathsError(
      'pitch-radius-not-positive',
      [name],
      `The pitch circle radius${whose} must be more than 0 mm, not ${sayNumber(pitchRadius)}: it is the distance from the centre of the plate to the centre of the hole. For a hole on the other side of the plate add 180° to its angle.`,
    );
  }
}
