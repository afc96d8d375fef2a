/**
 * How fast the charge leaves the squish band: the gap between piston and head empties into the bowl
 * as the piston comes up, all gas in the cylinder having the same density at each moment. With bore
 * B, bowl diameter D, gap z, bore area A and bowl volume V:
 *
 *     v = piston speed · D / (4 z) · ((B / D)² − 1) · V / (A z + V)
 *
 * It leaves out leakage, heat and the gas's own inertia, so that the real speed is smaller. It serves
 * to compare like heads.
 *
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals, McGraw-Hill, 1988, section 8.4,
 * squish (recalled from memory); it follows from the balance of mass alone, and is tested against
 * that.
 */
import { assertDiameter } from './cylinder-volume.ts';
import { circleArea } from '../numeric/circle-area.ts';
import { MathsError } from '../numeric/errors.ts';
import { integrate } from '../numeric/integrate.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { travelBefore, velocityAt, type SliderCrank } from '../crank/slider-crank.ts';

export interface SquishHead {
  /** mm. */
  readonly bore: number;
  /** Diameter of the bowl at the inner edge of the squish band, mm. Less than the bore. */
  readonly bowlDiameter: number;
  /** Squish clearance at top dead centre, mm. More than 0. */
  readonly squish: number;
  /** Whole volume above the piston at top dead centre, cc, the gap itself included. */
  readonly clearanceVolume: number;
}

/** Share of the bore's area that the squish band covers, 0 to 1. */
export function squishAreaShare({ bore, bowlDiameter }: SquishHead): number {
  return 1 - (bowlDiameter / bore) ** 2;
}

/**
 * Volume of the bowl in mm³: the clearance volume less a gap of `squish` over the whole bore.
 *
 * @throws MathsError `bowl-diameter`, `squish-clearance`, `no-bowl`.
 */
export function bowlVolume(head: SquishHead): number {
  const { bore, bowlDiameter, squish, clearanceVolume } = head;
  assertDiameter('bore', 'bore', bore);
  if (!(bowlDiameter > 0 && bowlDiameter < bore)) {
    throw new MathsError(
      'bowl-diameter',
      ['bowlDiameter', 'bore'],
      `The bowl must be more than 0 mm and less than the bore of ${sayNumber(bore)} mm across, not ${sayNumber(bowlDiameter)} mm. Measure it at the inner edge of the squish band.`,
    );
  }
  if (!(squish > 0 && squish < Infinity)) {
    throw new MathsError(
      'squish-clearance',
      ['squish'],
      `The squish clearance must be more than 0 mm, not ${sayNumber(squish)} mm. Measure it with soft solder laid over the piston pin.`,
    );
  }
  const gap = circleArea(bore) * squish;
  const bowl = clearanceVolume * 1000 - gap;
  if (!(bowl > 0)) {
    throw new MathsError(
      'no-bowl',
      ['clearanceVolume', 'squish', 'bore'],
      `A gap of ${sayNumber(squish)} mm over the whole bore holds ${sayNumber(gap / 1000)} cc, so the ${sayNumber(clearanceVolume)} cc above the piston leave nothing for a bowl. Check the volume and the squish clearance.`,
    );
  }
  return bowl;
}

/**
 * Speed of the gas at the inner edge of the squish band, m/s, inwards positive.
 *
 * @param rpm Revolutions a minute, more than 0.
 * @param angleBtdc Degrees before true top dead centre, 0 (where it is nil) to bottom dead centre.
 */
export function squishVelocityAt(
  g: SliderCrank,
  head: SquishHead,
  rpm: number,
  angleBtdc: number,
): number {
  assertSpeed(rpm);
  const bowl = bowlVolume(head);
  const gap = head.squish + travelBefore(g, angleBtdc);
  const pistonSpeed = (-velocityAt(g, -angleBtdc) * 6 * rpm) / 1000;
  const { bore, bowlDiameter } = head;
  const ring = (bowlDiameter / (4 * gap)) * ((bore / bowlDiameter) ** 2 - 1);
  return (pistonSpeed * ring * bowl) / (circleArea(bore) * gap + bowl);
}

/** The largest squish velocity and where it comes. */
export interface PeakSquish {
  /** m/s. */
  readonly velocity: number;
  /** Degrees before true top dead centre. */
  readonly angle: number;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The largest squish velocity on the way up. It rises from nothing at bottom dead centre to one peak
 * near the top and falls to nothing there; the peak is found by shrinking a bracket by the golden
 * section.
 */
export function peakSquish(g: SliderCrank, head: SquishHead, rpm: number): PeakSquish {
  const speed = (angle: number) => squishVelocityAt(g, head, rpm, angle);
  let low = 0;
  let high = 90;
  let inner = high - GOLDEN * (high - low);
  let outer = low + GOLDEN * (high - low);
  while (high - low > 1e-7) {
    if (speed(inner) > speed(outer)) {
      high = outer;
      outer = inner;
      inner = high - GOLDEN * (high - low);
    } else {
      low = inner;
      inner = outer;
      outer = low + GOLDEN * (high - low);
    }
  }
  const angle = (low + high) / 2;
  return { velocity: speed(angle), angle };
}

/**
 * Mean over time of the squish velocity in m/s, from where the exhaust closes to top dead centre.
 *
 * @param exhaustCloses Degrees before true top dead centre, more than 0 and at most 180.
 */
export function meanSquish(
  g: SliderCrank,
  head: SquishHead,
  rpm: number,
  exhaustCloses: number,
): number {
  if (!(exhaustCloses > 0 && exhaustCloses <= 180)) {
    throw new MathsError(
      'exhaust-closes',
      ['exhaustCloses'],
      `The exhaust must close more than 0° and at most 180° before top dead centre, not ${sayNumber(exhaustCloses)}°. Without a pin offset that is as many degrees as it opens after it.`,
    );
  }
  const { angle } = peakSquish(g, head, rpm);
  const speed = (x: number) => squishVelocityAt(g, head, rpm, x);
  const cut = Math.min(2 * angle, exhaustCloses);
  return (integrate(speed, 0, cut) + integrate(speed, cut, exhaustCloses)) / exhaustCloses;
}

function assertSpeed(rpm: number): void {
  if (!(rpm > 0 && rpm < Infinity)) {
    throw new MathsError(
      'rpm',
      ['rpm'],
      `The speed must be more than 0 rpm, not ${sayNumber(rpm)} rpm.`,
    );
  }
}
