import { circleArea } from '../numeric/circle-area.ts';
import { assertWithin } from '../numeric/within.ts';

/** Diameter of gauge 36, mm: 0.005 in. */
const THIRTY_SIX = 0.127;
/** Gauge 0000 is so many times as thick as gauge 36, in 39 equal steps. */
const RATIO = 92;
const STEPS = 39;

/**
 * Cross-section, mm², of a solid wire of American gauge `gauge`, from −3 (0000) to 40. A stranded wire
 * of that gauge has as much copper.
 *
 * Source: ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid round
 * wires: the rule of the diameters, from memory.
 * @throws MathsError `out-of-range`.
 */
export function americanGaugeArea(gauge: number): number {
  assertWithin(
    {
      quantity: 'gauge',
      words: 'The American gauge of the wire',
      unit: '',
      min: -3,
      max: 40,
      why: 'It runs from 0000, which counts as -3, to 40.',
    },
    gauge,
  );
  return circleArea(THIRTY_SIX * RATIO ** ((36 - gauge) / STEPS));
}
