/** V, Ω and mH; A; µF of the condenser. */
export const demoCoil = {
  volts: 12,
  resistance: 4,
  inductance: 8,
  limit: 4,
  condenser: 0.22,
} as const;
