/** Crank and pistons. Degrees from pin 1 the way it turns; mm from cylinder to cylinder; g. */
export const demoCrank = {
  pins: [0, 240, 120],
  pitch: 88,
  reciprocating: 165,
  rotating: 190,
  /** Share of what goes up and down that the weights balance, %. */
  factor: 50,
} as const;
