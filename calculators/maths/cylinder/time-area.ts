/**
 * Angle-area and time-area of a port: its open area summed over the crank angle, or the time, during
 * which each part of it is open. A yardstick for like engines, and no prediction of power.
 *
 * The specific time-area is the time-area over the swept volume. In SI it comes out in seconds per
 * metre: s·m² / m³.
 *
 * Source of the measure: G. P. Blair, The Basic Design of Two-Stroke Engines, SAE R-104, 1990,
 * chapter 6, "Empirical Assistance for the Designer" (equations recalled from memory).
 */
import { MathsError } from '../numeric/errors.ts';
import { integrate } from '../numeric/integrate.ts';
import { uncoveredArea, assertWindow, type PortWindow } from './port-area.ts';
import {
  crownPort,
  crownTravelTo,
  skirtPort,
  skirtTravelTo,
  type PistonInBarrel,
} from './port-timing.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { angleAfter, angleBefore, bdcAfter, totalTravel, travelAt } from '../crank/slider-crank.ts';

/** A port uncovered by the crown, with its size. */
export interface CrownWindow extends PortWindow {
  /** From the deck down to the top edge, mm. */
  readonly topEdge: number;
}

/** A skirt-controlled inlet, with its size. */
export interface SkirtWindow extends PortWindow {
  /** From the deck down to the bottom edge, mm. */
  readonly bottomEdge: number;
  /** From the crown's edge to the skirt's bottom, mm. */
  readonly skirtLength: number;
}

/**
 * Angle-area in mm²·degrees of a port uncovered by the crown, from its opening to its closing.
 *
 * @throws MathsError as `crownPort` and `assertWindow`.
 */
export function crownAngleArea(barrel: PistonInBarrel, port: CrownWindow): number {
  const { opens, closes } = crownPort(barrel, port.topEdge);
  return crownAngleAreaBetween(barrel, port, opens, closes);
}

/**
 * Angle-area in mm²·degrees of the exhaust from its own opening until a transfer with its top edge
 * at `transferEdge` mm below the deck opens: the blowdown. 0 if the transfer opens first.
 */
export function blowdownAngleArea(
  barrel: PistonInBarrel,
  exhaust: CrownWindow,
  transferEdge: number,
): number {
  const { opens } = crownPort(barrel, exhaust.topEdge);
  const until = crownPort(barrel, transferEdge).opens;
  return until > opens ? crownAngleAreaBetween(barrel, exhaust, opens, until) : 0;
}

/** Angle-area in mm²·degrees of a skirt-controlled inlet. Errors as `skirtPort`, `assertWindow`. */
export function skirtAngleArea(barrel: PistonInBarrel, port: SkirtWindow): number {
  assertWindow(port);
  const { opens, closes } = skirtPort(barrel, port.bottomEdge, port.skirtLength);
  const travel = skirtTravelTo(barrel, port.bottomEdge, port.skirtLength);
  return sumOver(
    barrel,
    (angle) => uncoveredArea(port, travel - travelAt(barrel, angle)),
    bendsOf(port).map((depth) => travel - depth),
    opens,
    closes,
  );
}

/**
 * Angle-area in mm²·degrees of a window behind a disc valve, taken as fully open from opening to
 * closing less the degrees it takes to open and to close, half of which counts.
 *
 * @param area Area of the window, mm², more than 0.
 * @param duration Degrees from opening to closing, more than 0 and less than 360.
 * @param edge Degrees during which the disc's edge passes the window, 0 to half the duration.
 */
export function discAngleArea(area: number, duration: number, edge: number): number {
  if (!(area > 0 && duration > 0 && duration < 360)) {
    throw new MathsError(
      'disc-area',
      ['area', 'duration'],
      'The disc valve needs a window of more than 0 mm² and a duration of more than 0° and less than 360°.',
    );
  }
  if (!(edge >= 0 && edge <= duration / 2)) {
    throw new MathsError(
      'disc-edge',
      ['edge'],
      `The disc’s edge must pass the window in 0° to ${sayNumber(duration / 2)}° (half the duration), not ${sayNumber(edge)}°.`,
    );
  }
  return area * (duration - edge);
}

/**
 * Open area in mm² of the same window so many degrees after the disc began to open it: it grows
 * evenly while the edge passes, stands, and falls evenly. 0 before and after.
 *
 * Arguments as for `discAngleArea`, of which this is the rate.
 */
export function discOpenArea(
  area: number,
  duration: number,
  edge: number,
  sinceOpening: number,
): number {
  const left = Math.min(sinceOpening, duration - sinceOpening);
  if (left <= 0) return 0;
  return left >= edge ? area : (area * left) / edge;
}

/**
 * Time-area in mm²·s.
 *
 * @param angleArea mm²·degrees, 0 or more.
 * @param rpm Revolutions a minute, more than 0. One revolution a minute is six
 *   degrees a second.
 * @throws MathsError `rpm`.
 */
export function timeArea(angleArea: number, rpm: number): number {
  if (!(rpm > 0 && rpm < Infinity)) {
    throw new MathsError(
      'rpm',
      ['rpm'],
      `The speed must be more than 0 rpm, not ${sayNumber(rpm)} rpm.`,
    );
  }
  return angleArea / (6 * rpm);
}

/**
 * Specific time-area in s/m: time-area over swept volume.
 *
 * @param area Time-area, mm²·s.
 * @param swept Swept volume, cc, more than 0.
 */
export function specificTimeArea(area: number, swept: number): number {
  if (!(swept > 0)) {
    throw new MathsError(
      'swept-volume',
      ['bore', 'stroke'],
      `The swept volume must be more than 0 cc, not ${sayNumber(swept)} cc. Check the bore and the stroke.`,
    );
  }
  return area / swept;
}

function crownAngleAreaBetween(
  barrel: PistonInBarrel,
  port: CrownWindow,
  from: number,
  to: number,
): number {
  assertWindow(port);
  const travel = crownTravelTo(barrel, port.topEdge);
  return sumOver(
    barrel,
    (angle) => uncoveredArea(port, travelAt(barrel, angle) - travel),
    bendsOf(port).map((depth) => travel + depth),
    from,
    to,
  );
}

/** Depths within a window at which its sides begin or cease to be straight. */
function bendsOf({ height, cornerRadius }: PortWindow): number[] {
  return [cornerRadius, height - cornerRadius, height];
}

/** The integral of `area` over the crank angle, cut where the area's law changes. */
function sumOver(
  barrel: PistonInBarrel,
  area: (angle: number) => number,
  travels: readonly number[],
  from: number,
  to: number,
): number {
  const whole = totalTravel(barrel);
  const cuts = travels
    .filter((travel) => travel > 0 && travel < whole)
    .flatMap((travel) => {
      const before = angleBefore(barrel, travel);
      return [-before, angleAfter(barrel, travel), 360 - before];
    });
  const places = [
    from,
    ...[...cuts, 0, bdcAfter(barrel)].filter((x) => x > from && x < to),
    to,
  ].sort((a, b) => a - b);
  let sum = 0;
  for (const [index, start] of places.entries()) {
    const end = places[index + 1];
    if (end !== undefined) sum += integrate(area, start, end);
  }
  return sum;
}
