export const demoHead = {
  volume: 9.3,
  gasket: 1,
  gasketBore: 54,
  bowl: 36,
  /** What deck and gasket come to. */
  squish: 1.4,
  /** What head, gasket and deck come to. */
  clearance: 12.4,
} as const;
