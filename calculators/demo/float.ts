/** One of three alike. Lengths in mm, mass in g, area in mm², density in kg/m³. */
export const demoFloat = {
  height: 24,
  pivotToNeedle: 8,
  pivotToFloat: 32,
  mass: 9,
  area: 1000,
  depth: 20,
  seat: 2,
  head: 300,
  density: 745,
  tolerance: 0.3,
  /** The carburettors as found. */
  found: [24.4, 23.5, 24.1, 24.2, 23.8, 24],
} as const;
