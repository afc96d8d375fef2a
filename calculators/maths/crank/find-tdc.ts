/**
 * Top dead centre from two readings of a degree disc, one on either side of the top, taken against a
 * positive stop or at equal heights of the piston. The top is half-way between them.
 *
 * Two kinds of disc are about. One counts both ways from its zero, so that the readings are so many
 * degrees before and so many after. The other counts one way round, 0 to 360, in the direction in
 * which readings grow as the crank turns.
 */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';
import { angleAfter, angleBefore, type SliderCrank } from './slider-crank.ts';

export type DiscScale = 'both-ways' | 'one-way';

/** Two readings nearer than this, taken as places on a one-way disc, would be a stop at the top. */
const LEAST_ARC = 20;

const isOffBothWays = (reading: number): boolean => reading < 0 || reading > 180;

/**
 * Which kind of disc two readings come from, where nobody has said. A reading below 0 or above 180
 * is only on a disc that counts one way. Otherwise a stop decides. Readings that grow from the first
 * to the second by 20° and more are taken as places on a one-way disc. Nearer ones would be a stop at
 * the top itself, and ones that shrink a stop below the bottom: those were counted both ways from the
 * zero.
 *
 * @param before Reading in degrees on the side before the top, −360 to 360.
 * @param after Reading in degrees on the side after the top, −360 to 360.
 */
export function discScale(before: number, after: number): DiscScale {
  assertReading('before', before);
  assertReading('after', after);
  const isOneWay = [before, after].some(isOffBothWays) || after - before >= LEAST_ARC;
  return isOneWay ? 'one-way' : 'both-ways';
}

/**
 * Whether two readings may as well come from the other kind of disc than `discScale` takes them for:
 * both stand on a disc of either kind, and a stop may be found at either place.
 */
export const isEitherScale = (before: number, after: number): boolean =>
  ![before, after].some(isOffBothWays) && after - before >= LEAST_ARC;

/**
 * What the disc shows at true top dead centre.
 *
 * On a disc that counts both ways: half of after less before, so positive means after the zero, −90
 * to 90. On a disc that counts one way: the middle of the arc from `before` on to `after`, 0 to 360,
 * or −180 to 180 where a reading was given with a minus.
 *
 * @throws MathsError `not-a-number`; `reading-off-disc`; `no-arc` where both readings are the same
 *   place, which is at the top itself and finds nothing.
 */
export function tdcReading(
  before: number,
  after: number,
  scale: DiscScale = discScale(before, after),
): number {
  assertReading('before', before);
  assertReading('after', after);
  if (scale === 'both-ways') {
    assertBothWays('before', before);
    assertBothWays('after', after);
    if (before + after === 0) throw sameplace(before);
    return (after - before) / 2;
  }
  const arc = wrap360(after - before);
  if (arc === 0) throw sameplace(before);
  const middle = before + arc / 2;
  return before < 0 || after < 0 ? wrap180(middle) : wrap360(middle);
}

/**
 * Degrees of crank between the two places and the top, half of what lies between them, 0 to 180: from
 * the readings alone. Errors as `tdcReading`.
 */
export function halfArc(
  before: number,
  after: number,
  scale: DiscScale = discScale(before, after),
): number {
  tdcReading(before, after, scale);
  return (scale === 'both-ways' ? before + after : wrap360(after - before)) / 2;
}

/** Half of what must lie between them with the piston stopped so far below the top, mm. Errors as `angleAfter`. */
export const halfArcAt = (g: SliderCrank, height: number): number =>
  (angleBefore(g, height) + angleAfter(g, height)) / 2;

/**
 * What to add to the disc's readings (counted positive after zero) for degrees after true TDC: the
 * TDC reading with the other sign, more than −180 up to 180.
 */
export function discCorrection(tdc: number): number {
  return wrap180(-tdc);
}

/**
 * How far the found top can be out, in degrees, when each of the two readings may be out by
 * `readingError` degrees (0 or more).
 *
 * `independent`: the two errors have nothing to do with each other, and the mean of two is better
 * than one by √2 (JCGM 100:2008, clause 5.1.2). `worst`: both are out the same way, as from a
 * pointer that is looked at from one side, and nothing is gained.
 */
export function tdcSpread(readingError: number): { independent: number; worst: number } {
  assertNotNegative('readingError', 'reading error', readingError, 'degrees');
  return { independent: readingError / Math.SQRT2, worst: readingError };
}

/**
 * The dwell at the top: degrees the crank turns, from one side to the other, while the piston is
 * within `resolution` of its highest place and an indicator which shows no less cannot tell.
 *
 * @param resolution The least travel that can be seen, mm, 0 to the travel of the piston.
 * @returns Degrees of crank.
 * @throws MathsError as `angleAfter`.
 */
export function dwellAtTop(g: SliderCrank, resolution: number): number {
  return angleBefore(g, resolution) + angleAfter(g, resolution);
}

/**
 * By how many degrees the found top is out when the piston was not as high on both sides: the place
 * after the top was lower than the place before it by `difference`. Half the angle which that
 * difference is worth; about difference / (2 × slope).
 *
 * @param height mm below the top of the place before it, more than 0.
 * @param difference mm; negative where the place after the top was higher.
 * @returns Degrees, positive where the top is found too late.
 * @throws MathsError as `angleAfter`.
 */
export function middleShift(g: SliderCrank, height: number, difference: number): number {
  return (angleAfter(g, height + difference) - angleAfter(g, height)) / 2;
}

/**
 * By how many degrees half-way between equal heights is after the true top when the pin is offset:
 * the piston then goes down more slowly or faster than it came up. 0 without an offset.
 *
 * @param travel Where the piston was stopped, mm below the top.
 * @throws MathsError as `angleAfter`.
 */
export function offsetBias(g: SliderCrank, travel: number): number {
  return (angleAfter(g, travel) - angleBefore(g, travel)) / 2;
}

function wrap360(angle: number): number {
  const rest = angle % 360;
  return rest < 0 ? rest + 360 : rest + 0;
}

function wrap180(angle: number): number {
  const turned = wrap360(angle);
  return turned > 180 ? turned - 360 : turned;
}

function assertReading(name: 'before' | 'after', reading: number): void {
  assertNumber(name, `reading ${name} the top`, reading, 'Enter what the disc shows, in degrees.');
  if (Math.abs(reading) > 360) {
    throw new MathsError(
      'reading-off-disc',
      [name],
      `No disc shows ${sayNumber(reading)}°. The reading ${name} the top must lie between −360° and 360°.`,
    );
  }
}

function assertBothWays(name: 'before' | 'after', reading: number): void {
  if (isOffBothWays(reading)) {
    throw new MathsError(
      'reading-off-disc',
      [name],
      `A disc that counts both ways from its zero shows 0° to 180°, not ${sayNumber(reading)}°. Enter the reading ${name} the top without a sign, or choose the disc that counts one way round.`,
    );
  }
}

function assertNotNegative(name: string, words: string, value: number, unit: string): void {
  if (!(value >= 0) || !Number.isFinite(value)) {
    throw new MathsError(
      'negative',
      [name],
      `The ${words} must be 0 ${unit} or more, not ${sayNumber(value)}.`,
    );
  }
}

function sameplace(reading: number): MathsError {
  return new MathsError(
    'no-arc',
    ['before', 'after'],
    `Both readings are ${sayNumber(reading)}°, the same place on the disc, so there is no arc to halve. Set the stop lower, so that it stops the piston well before the top on either side, and read the disc at both.`,
  );
}
