/** No points ignition of such an engine fires earlier, crank degrees before the top: common practice is 15 to 35. */
export const EARLIEST_SPARK = 50;
