/** No points ignition of such an engine fires earlier, crank degrees before the top: common practice is 15 to 35. */
export const EARLIEST_SPARK = 50;

/** Later than this such engines are hardly set, crank degrees before the top: half of the least of common practice. */
export const LATEST_USUAL = 7.5;

/** Earlier than this such engines are hardly set, crank degrees before the top: the most of common practice. */
export const EARLIEST_USUAL = 35;
