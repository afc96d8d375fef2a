/** Five holes of an invented cover: across, up and diameter of each, in. */
export const COVER = [
  [0, 0, 0.25],
  [1.25, 0.02, 0.1875],
  [1.1, 0.98, 0.1875],
  [0.3, 1.12, 0.25],
  [0.64, 0.5, 0.5],
] as const;
