/** Before the top: the piston's travel, and what it comes to as a disc and the rotor's rim show it. */
export const demoTiming = {
  travel: 2.2,
  angle: 21.5,
  arc: 17.8,
  rotor: 95,
  tolerance: 1,
  /** The cylinders as found: by indicator, and the same by a disc. */
  fired: [2.55, 2, 2.25, 2.1, 2.4, 2.05, 2.3, 2.2],
  firedAngles: [23, 20.5, 22, 21, 22.5, 21, 22, 21.5],
} as const;
