import { GAUGE_READINGS } from '../maths/limits/gauge-readings.ts';

/**
 * Ranges of figures that the engine sheet and a calculator both ask for: what the sheet takes is never
 * refused where it is sent. `test/sheet/ranges.test.ts` compares all others.
 */

/** Diameter of a main jet, mm. */
export const mainJet = {
  min: 0.1,
  max: 6,
  why: 'no jet is smaller or larger',
  stamped: true,
} as const;

/** Angle between both sides of a jet needle’s taper, degrees. */
export const needleTaper = {
  min: 0,
  max: 30,
  why: 'no needle is so blunt; most have 1° to 3°',
} as const;

/** What a gauge shows from the joint face of the body to the float, mm. */
export const floatHeight = {
  ...GAUGE_READINGS,
  why: 'no gauge for a float reaches further; a negative reading means an edge inside the body',
} as const;

/** Outside diameter of a breaker plate, mm. */
export const plateOutside = {
  min: 10,
  max: 400,
  why: 'smaller or larger than that is no breaker plate',
} as const;

/** Coils that one wire feeds from a battery, at the most. */
export const MOST_COILS = 16;
