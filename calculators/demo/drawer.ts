/**
 * A drawer of jets, all stamped alike or nearly so: by pin, mm; by the seconds that 100 cc take under
 * 300 mm; by the number on them. The first is measured the same each way.
 */
export const demoDrawer = {
  bores: [1.1, 1.125, 1.08, 1.115, 1.105, 1.17, 1.09, 1.14],
  times: [62, 59.5, 64.5, 60.5, 61.5, 55, 63, 57.5],
  numbers: [110, 112, 108, 112, 110, 115, 110, 112],
  volume: 100,
  head: 300,
  coefficient: 0.7,
} as const;
