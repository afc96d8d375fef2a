/** Piston and ring in their bore, on the bench at 20 °C. Readings are above the bore's own figure. */
export const demoClearance = {
  piston: 51.935,
  ringGap: 0.2,
  standard: 52,
  heights: [8, 25, 45],
  along: [0.02, 0.01, 0],
  across: [0.035, 0.02, 0.005],
} as const;
