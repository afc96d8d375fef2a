/** Whether piston and barrel suit each other: the two ends of the stroke, where mixed parts clash. */
import { assertBarrel, type PistonInBarrel } from './port-timing.ts';
import { totalTravel } from '../crank/slider-crank.ts';

/**
 * How far the skirt reaches below a port's bottom edge at top dead centre, mm. Negative: the skirt
 * leaves the port open to the crankcase there, as a wrong piston does with the exhaust.
 *
 * @param bottomEdge From the deck down to the port's bottom edge, mm.
 * @param skirtLength From the crown's edge to the skirt's bottom on that side, mm.
 */
export function skirtCover(
  barrel: PistonInBarrel,
  bottomEdge: number,
  skirtLength: number,
): number {
  assertBarrel(barrel);
  return barrel.deckClearance + skirtLength - bottomEdge;
}

/**
 * How far the crown's edge stands below a port's bottom edge at bottom dead centre, mm. Negative: a
 * step of so much is left standing in the port and it never opens fully.
 */
export function crownBelowPort(barrel: PistonInBarrel, bottomEdge: number): number {
  assertBarrel(barrel);
  return barrel.deckClearance + totalTravel(barrel) - bottomEdge;
}
