/** Every two of so many holes, counted from 0. */
export const everyPair = (holes: number): (readonly [number, number])[] =>
  Array.from({ length: holes }, (_, b) =>
    Array.from({ length: b }, (__, a) => [a, b] as const),
  ).flat();
