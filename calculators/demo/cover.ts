/**
 * The cover over the points, copied from its old gasket: four screws, the hole in its middle, and
 * more for whoever asks for them. Places as they are; readings to the twentieth of a caliper, each as
 * far out as a careful hand has it.
 */
export const demoCover = {
  holes: 5,
  distances: 10,
  diameters: [6.5, 6.5, 6.5, 6.5, 30, 4.2, 4.2, 8, 5, 5, 4.2, 4.2],
  places: [
    [0, 0],
    [66, 0],
    [72.3, 48.5],
    [-4.1, 52.6],
    [33.1, 29.1],
    [34, -7],
    [80, 22],
    [30, 62],
    [-14, 26],
    [55, 58],
    [12, 30],
    [54, 24],
  ],
  readTo: 0.05,
  errors: [0.02, -0.03, 0.04, -0.02, 0.03, 0, -0.04, 0.03, 0.01, -0.03, 0.02],
  land: 6,
} as const;
