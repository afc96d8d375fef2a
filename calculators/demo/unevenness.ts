/** By how much cylinders 2 and on differ from the first. */
export const demoUnevenness = {
  deck: [0.15, -0.05, 0.1, 0.05, 0, 0.1, -0.05],
  port: [0.2, -0.2, 0, 0.1, -0.1, 0.2, 0],
  inlet: [0.2, -0.1, 0, 0.1, -0.1, 0, 0.2],
  volume: [0.3, -0.2, 0.1, -0.1, 0.2, 0, -0.2],
} as const;
