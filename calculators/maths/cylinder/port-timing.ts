/**
 * When the piston uncovers a port. Heights are measured on the bore from the deck, the top face of
 * the barrel, in mm downwards; the piston's crown edge stands `deckClearance` below the deck at true
 * top dead centre. So a port whose edge is `edge` below the deck meets the crown when the piston has
 * travelled `edge − deckClearance`, and the slider-crank gives the angle of that travel, once on the
 * way down and once on the way up.
 *
 * With no pin offset both lie the same angle from bottom dead centre. With an offset they do not, so
 * that opening and closing are kept apart here.
 */
import { MathsError } from '../numeric/errors.ts';
import { findRoot } from '../numeric/find-root.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';
import {
  angleAfter,
  angleBefore,
  assertGeometry,
  bdcAfter,
  totalTravel,
  travelAt,
  type SliderCrank,
} from '../crank/slider-crank.ts';

/** A cylinder with its piston: the slider-crank and where the crown stands at the top. */
export interface PistonInBarrel extends SliderCrank {
  /**
   * From the deck down to the edge of the piston crown at true top dead centre, mm. Negative where
   * the crown stands above the deck.
   */
  readonly deckClearance: number;
}

/** The opening and closing of one port, crank degrees. */
export interface PortEvents {
  /** Where it opens: degrees after true top dead centre, 0 to 360; negative means before it. */
  readonly opens: number;
  /** Where it closes, on the same scale; always more than `opens`. */
  readonly closes: number;
  /** Degrees of crank during which it is open at all. */
  readonly duration: number;
}

/** Throws a MathsError unless the engine can turn and the deck is a figure. */
export function assertBarrel(barrel: PistonInBarrel): void {
  assertGeometry(barrel);
  const { deckClearance } = barrel;
  assertNumber(
    'deckClearance',
    'deck clearance',
    deckClearance,
    'Set the piston at top dead centre and measure from the top face of the barrel down to the edge of the crown; it is negative where the crown stands above the face.',
  );
}

/**
 * A port uncovered by the crown on the way down: exhaust, transfer or boost port.
 *
 * @param topEdge From the deck down to the port's top edge, mm. Between the crown's edge at the top
 *   and at the bottom.
 * @throws MathsError `port-always-open` or `port-never-opens`, or as `assertBarrel`.
 */
export function crownPort(barrel: PistonInBarrel, topEdge: number): PortEvents {
  const travel = crownTravelTo(barrel, topEdge);
  const opens = angleAfter(barrel, travel);
  const closes = 360 - angleBefore(barrel, travel);
  return { opens, closes, duration: closes - opens };
}

/**
 * Piston travel in mm at which the crown's edge stands at `topEdge`. Errors as `crownPort`.
 */
export function crownTravelTo(barrel: PistonInBarrel, topEdge: number): number {
  assertBarrel(barrel);
  assertLength('topEdge', "port's top edge", topEdge);
  const highest = barrel.deckClearance;
  const lowest = highest + totalTravel(barrel);
  if (topEdge < highest) {
    throw new MathsError(
      'port-always-open',
      ['topEdge', 'deckClearance'],
      `The port’s top edge is ${sayNumber(topEdge)} mm below the deck and the crown never comes higher than ${sayNumber(highest)} mm, so the port would be open all the time. It must lie from ${sayNumber(highest)} to ${sayNumber(lowest)} mm down. Measure both from the top face of the barrel.`,
    );
  }
  if (topEdge >= lowest) {
    throw new MathsError(
      'port-never-opens',
      ['topEdge', 'deckClearance', 'stroke'],
      `The port’s top edge is ${sayNumber(topEdge)} mm below the deck and the crown goes down to ${sayNumber(lowest)} mm only, so the port would never open. It must lie from ${sayNumber(highest)} to less than ${sayNumber(lowest)} mm down. Measure again, or look whether this barrel belongs to a longer stroke.`,
    );
  }
  return topEdge - highest;
}

/**
 * An inlet uncovered by the piston's skirt on the way up.
 *
 * @param bottomEdge From the deck down to the port's bottom edge, mm.
 * @param skirtLength From the crown's edge to the bottom of the skirt on the inlet side, mm.
 * @throws MathsError `inlet-never-opens`, `inlet-always-open`, `skirt-length`, or as `assertBarrel`.
 */
export function skirtPort(
  barrel: PistonInBarrel,
  bottomEdge: number,
  skirtLength: number,
): PortEvents {
  const travel = skirtTravelTo(barrel, bottomEdge, skirtLength);
  const opens = -angleBefore(barrel, travel);
  const closes = angleAfter(barrel, travel);
  return { opens, closes, duration: closes - opens };
}

/** Piston travel in mm at which the skirt stands at `bottomEdge`. Errors as `skirtPort`. */
export function skirtTravelTo(
  barrel: PistonInBarrel,
  bottomEdge: number,
  skirtLength: number,
): number {
  assertBarrel(barrel);
  assertLength('bottomEdge', 'inlet’s bottom edge', bottomEdge);
  if (!(skirtLength > 0 && skirtLength < Infinity)) {
    throw new MathsError(
      'skirt-length',
      ['skirtLength'],
      `The skirt must be more than 0 mm long, not ${sayNumber(skirtLength)} mm. Measure from the edge of the crown to the bottom of the skirt on the side of the inlet.`,
    );
  }
  const highest = barrel.deckClearance + skirtLength;
  const lowest = highest + totalTravel(barrel);
  if (bottomEdge <= highest) {
    throw new MathsError(
      'inlet-never-opens',
      ['bottomEdge', 'skirtLength', 'deckClearance'],
      `The inlet’s bottom edge is ${sayNumber(bottomEdge)} mm below the deck, and the skirt comes up to ${sayNumber(highest)} mm only, so the inlet would never open. The edge must lie from more than ${sayNumber(highest)} to less than ${sayNumber(lowest)} mm down. Check the skirt’s length and that the piston belongs to this barrel.`,
    );
  }
  if (bottomEdge >= lowest) {
    throw new MathsError(
      'inlet-always-open',
      ['bottomEdge', 'skirtLength', 'deckClearance'],
      `The inlet’s bottom edge is ${sayNumber(bottomEdge)} mm below the deck, and the skirt goes down to ${sayNumber(lowest)} mm only, so the inlet would never close. The edge must lie from more than ${sayNumber(highest)} to less than ${sayNumber(lowest)} mm down. Check the skirt’s length and that the piston belongs to this barrel.`,
    );
  }
  return bottomEdge - highest;
}

/**
 * An inlet opened and closed by a disc on the crankshaft, timed by the degrees cut in it.
 *
 * @param opensBtdc Degrees before true top dead centre, more than 0.
 * @param closesAtdc Degrees after true top dead centre, more than 0.
 * @throws MathsError `disc-opens`, `disc-closes`, or `disc-never-closes` where they add up to 360 or more.
 */
export function discPort(opensBtdc: number, closesAtdc: number): PortEvents {
  if (!(opensBtdc > 0)) {
    throw new MathsError(
      'disc-opens',
      ['discOpens'],
      `A disc valve must open more than 0° before top dead centre, not ${sayNumber(opensBtdc)}°. Count from top dead centre backwards to where the disc begins to uncover the port.`,
    );
  }
  if (!(closesAtdc > 0)) {
    throw new MathsError(
      'disc-closes',
      ['discCloses'],
      `A disc valve must close more than 0° after top dead centre, not ${sayNumber(closesAtdc)}°. Count from top dead centre forwards to where the disc has covered the port.`,
    );
  }
  const duration = opensBtdc + closesAtdc;
  if (!(duration < 360)) {
    throw new MathsError(
      'disc-never-closes',
      ['discOpens', 'discCloses'],
      `Opening ${sayNumber(opensBtdc)}° before and closing ${sayNumber(closesAtdc)}° after top dead centre makes ${sayNumber(duration)}°, and with 360° or more the disc would never shut. Check which figure is counted before and which after the top.`,
    );
  }
  return { opens: -opensBtdc, closes: closesAtdc, duration };
}

/**
 * How far below the deck a port's top edge must be for the crown to keep it open so many degrees.
 *
 * @param duration Degrees of crank, more than 0 to less than 360.
 * @returns mm from the deck.
 * @throws MathsError `duration`, or as `assertBarrel`.
 */
export function topEdgeForDuration(barrel: PistonInBarrel, duration: number): number {
  assertBarrel(barrel);
  assertDuration(duration);
  return barrel.deckClearance + travelForClosedAngle(barrel, 360 - duration);
}

/**
 * How far below the deck a skirt-controlled inlet's bottom edge must be for so many degrees open.
 * `duration` is more than 0 and less than 360.
 */
export function bottomEdgeForDuration(
  barrel: PistonInBarrel,
  skirtLength: number,
  duration: number,
): number {
  assertBarrel(barrel);
  assertDuration(duration);
  return barrel.deckClearance + skirtLength + travelForClosedAngle(barrel, duration);
}

/**
 * The travel above which the piston stays for `angle` degrees of crank about the top. The angle
 * before the top follows from the angle after it, and their sum grows with both.
 */
function travelForClosedAngle(barrel: PistonInBarrel, angle: number): number {
  const bottom = bdcAfter(barrel);
  const after = findRoot(
    (opens) =>
      opens + angleBefore(barrel, Math.min(travelAt(barrel, opens), totalTravel(barrel))) - angle,
    0,
    bottom,
  );
  return travelAt(barrel, after);
}

function assertDuration(duration: number): void {
  if (!(duration > 0 && duration < 360)) {
    throw new MathsError(
      'duration',
      ['duration'],
      `A duration must be more than 0° and less than 360°, not ${sayNumber(duration)}°. It is the whole time the port is open, from opening to closing.`,
    );
  }
}

function assertLength(name: string, words: string, value: number): void {
  assertNumber(name, words, value, 'Enter it in millimetres below the deck.');
}
