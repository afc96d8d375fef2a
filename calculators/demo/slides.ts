export const demoSlides = {
  /** Of each slide, and the play of each cable as found and the least to keep. */
  cutaway: 2,
  play: [1.2, 1.2, 1.2, 1.2, 1.2, 1.2],
  leastPlay: 1,
  /** Pitch of the cable's adjuster. */
  thread: 1,
  /** The slides as found: mm by drill, and the same by gauge, kPa. */
  found: [2.6, 2.5, 2.9, 2.7, 2.4, 2.6],
  vacuums: [30, 31, 27, 29, 32, 30],
} as const;
