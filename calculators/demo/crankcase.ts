/** Play of the crank in its case and of the rods on it, mm, with what either may be off. */
export const demoCrankcase = {
  runOut: 0.03,
  endFloat: 0.2,
  endFloatWithin: 0.1,
  sidePlay: 0.35,
  sidePlayWithin: 0.15,
} as const;
