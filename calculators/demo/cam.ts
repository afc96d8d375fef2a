export const demoCam = {
  lobes: 1,
  speedRatio: 1,
  lift: 1,
  rise: 50,
  top: 120,
  /** Diameter of its low part. */
  base: 22,
  gap: 0.35,
  /** What cam and gap come to. */
  dwell: 200,
  /** Gaps tried, and how far before the top the points then opened. */
  trialGaps: [0.25, 0.3, 0.35, 0.4, 0.45, 0.5],
  trialAngles: [18, 19.5, 22, 23.5, 25.5, 27],
} as const;
