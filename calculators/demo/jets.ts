export const demoJets = {
  main: 1.1,
  pilot: 0.4,
  /** Stamped on it. */
  mainNumber: 110,
  needleJet: 2.6,
  needle: 2.51,
  taper: 1.5,
  straight: 4,
  clip: 3,
  clips: 5,
  clipPitch: 1,
  slideTravel: 24,
} as const;
