import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { MOST_CYLINDERS } from '../limits/cylinder-count.ts';
import { angleAfter, angleBefore, travelBefore, type SliderCrank } from '../crank/slider-crank.ts';

/**
 * Several sets of points on one plate. Turning the plate shifts every cylinder's timing alike; only
 * moving a set in its own slot brings the cylinders together. Angles are crank degrees before top
 * dead centre, so that more is earlier, and a move is positive where it advances.
 */
export interface PlateSetting {
  /** Turn of the plate, crank degrees, that makes the largest error left as small as it can be. */
  readonly move: number;
  /** What is left of each cylinder's error after that turn, crank degrees; positive is early. */
  readonly errors: readonly number[];
  /** Error of each cylinder as found, crank degrees; positive is early. */
  readonly errorsBefore: readonly number[];
  /** Largest less smallest timing, crank degrees; no turn of the plate changes it. */
  readonly spread: number;
  /** Largest error left, either way: half the spread. */
  readonly worst: number;
}

/**
 * Crank degrees before top dead centre for a piston position: `before` mm below the top on the way
 * up, or after it where negative. Throws as `angleBefore` for more travel than the piston has.
 */
export function timingAt(engine: SliderCrank, before: number): number {
  return before < 0 ? -angleAfter(engine, -before) : angleBefore(engine, before);
}

/** The piston position, mm, at a timing: the other way round from `timingAt`. */
export function positionAt(engine: SliderCrank, timing: number): number {
  const travel = travelBefore(engine, timing);
  return timing < 0 ? -travel : travel;
}

/** Throws unless there is a timing for each of 1 to `MOST_CYLINDERS` cylinders. */
function assertCylinders(found: readonly number[]): void {
  if (found.length < 1 || found.length > MOST_CYLINDERS) {
    throw new MathsError(
      'cylinders',
      ['cylinders'],
      `There must be from 1 to ${MOST_CYLINDERS} cylinders, and ${String(found.length)} were given. Give the timing found on each one.`,
    );
  }
}

/** What is left of each error, crank degrees, after turning the plate by `move` crank degrees. */
export function errorsAfterMove(
  found: readonly number[],
  target: number,
  move: number,
): readonly number[] {
  return found.map((angle) => angle - target + move);
}

/**
 * The plate turn that makes the worst error least. The worst of several errors shifted together is
 * least when the earliest and the latest cylinder are equally wrong, so the turn is exactly minus
 * the middle between those two (the midrange); every other turn makes one of them worse.
 *
 * `found` holds 1 to 8 timings and `target` the timing wanted, all crank degrees before top dead
 * centre (negative after it), each between −90 and 180.
 */
export function settlePlate(found: readonly number[], target: number): PlateSetting {
  assertCylinders(found);
  // Whole turns apart, angles are the same: within less than a turn their difference is what it seems.
  found.forEach((angle, index) => {
    if (!(angle >= -90 && angle <= 180)) {
      throw new MathsError(
        'found-out-of-range',
        [`fired-${String(index + 1)}`],
        `Cylinder ${String(index + 1)} was found at ${sayNumber(angle)}°, and a timing counts from 180° before top dead centre to 90° after it (−90). Measure again, turning the engine forwards.`,
      );
    }
  });
  if (!(target >= -90 && target <= 180)) {
    throw new MathsError(
      'target-out-of-range',
      ['target'],
      'The timing wanted must lie between 180° before top dead centre and 90° after it (−90).',
    );
  }
  const errorsBefore = errorsAfterMove(found, target, 0);
  const earliest = Math.max(...errorsBefore);
  const latest = Math.min(...errorsBefore);
  const move = -(earliest + latest) / 2;
  return {
    move,
    errors: errorsAfterMove(found, target, move),
    errorsBefore,
    spread: earliest - latest,
    worst: (earliest - latest) / 2,
  };
}

/**
 * Degrees the plate itself turns about the shaft for `crankDegrees` of timing: the cam's share of
 * the crank's turning. On a half-speed shaft half as many.
 */
export function plateDegrees(crankDegrees: number, speedRatio: number): number {
  return crankDegrees * speedRatio;
}

/**
 * Distance, mm, along a circle of `radius` mm about the shaft for `crankDegrees` of timing, with
 * the cam turning `speedRatio` times for one turn of the crank.
 */
export function arcForTiming(crankDegrees: number, radius: number, speedRatio: number): number {
  if (!(radius > 0)) {
    throw new MathsError(
      'radius',
      ['radius'],
      'The radius must be above 0 mm. Measure from the middle of the shaft to the middle of the slot.',
    );
  }
  return (plateDegrees(crankDegrees, speedRatio) * Math.PI * radius) / 180;
}

/**
 * How far each set moves along its slot, mm, to take away what the plate left: positive in the
 * direction that advances, which is against the turning of the cam.
 */
export function setMoves(
  setting: Pick<PlateSetting, 'errors'>,
  slotRadius: number,
  speedRatio: number,
): readonly number[] {
  return setting.errors.map((error) =>
    arcForTiming(error === 0 ? 0 : -error, slotRadius, speedRatio),
  );
}

/** Whether every error is within `tolerance` crank degrees either way; equal counts as within. */
export function withinTolerance(errors: readonly number[], tolerance: number): boolean {
  if (!(tolerance > 0)) {
    throw new MathsError(
      'tolerance',
      ['tolerance'],
      'The tolerance must be above 0 crank degrees; nothing on a bench is exact.',
    );
  }
  return errors.every((error) => Math.abs(error) <= tolerance + 1e-9);
}
