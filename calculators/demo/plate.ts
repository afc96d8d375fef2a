export const demoPlate = {
  outside: 92,
  bore: 28,
  /** From the middle to the fixing screw of a set, and so to the slot it clamps. */
  slotRadius: 31.5,
} as const;
