/**
 * Play: what is driven hangs behind what drives it by half the play, either way, and stands still
 * while the play is taken up. Mathematicians call it the play operator: A. Visintin, *Differential
 * Models of Hysteresis*, Springer, 1994, chapter III.
 */

/** Where the driven part is once the driver has gone straight to `driver`. */
export const driven = (before: number, driver: number, play: number): number =>
  Math.min(driver + play / 2, Math.max(driver - play / 2, before));

/** Where it is once the driver has gone through several places, straight from each to the next. */
export const drivenThrough = (before: number, drivers: readonly number[], play: number): number =>
  drivers.reduce((at, driver) => driven(at, driver, play), before);
