/** The bed on which the demo engine is fired first: invented, in mm, kg and N. */
export const bed = {
  /** Between the outsides of the feet, along the crank's turning and across it. */
  long: 1000,
  wide: 400,
  /** From the end of the exhaust to the bottle. */
  pipeToBottle: 1000,
  /** From the foot out to the middle of the pedal. */
  leverOutside: 150,
  weight: 45,
  kick: 700,
} as const;
