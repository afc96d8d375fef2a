/** The gasket under the cover of the demo engine's points: invented, in mm. */
export const gasket = {
  outside: 118,
  /** Diameter of the circle that its screws stand on, and of the holes punched for them. */
  circle: 104,
  hole: 5.5,
  screws: 3,
} as const;
