/** Where the ports of an unrolled cylinder wall stand, in user units across. */

export interface Strip {
  readonly x: number;
  readonly width: number;
}

export interface WallLayout {
  readonly exhaust: Strip;
  /** Each transfer with its twin on the other side. */
  readonly transfers: readonly (readonly [Strip, Strip])[];
  /** The inlet lies opposite the exhaust and is cut in two by the unrolling. */
  readonly inlet: readonly [Strip, Strip];
}

const GAP = 8;

/** The wall from `left` to `right` with `pairs` pairs of transfers. Widths are not to scale. */
export function wallLayout(left: number, right: number, pairs: number): WallLayout {
  const middle = (left + right) / 2;
  const exhaustHalf = 33;
  const inletHalf = 34;
  const room = middle - left - exhaustHalf - inletHalf - GAP;
  const pitch = room / pairs;
  const width = pitch - GAP;
  return {
    exhaust: { x: middle - exhaustHalf, width: 2 * exhaustHalf },
    transfers: Array.from({ length: pairs }, (_, index) => {
      const from = exhaustHalf + GAP + index * pitch;
      return [
        { x: middle + from, width },
        { x: middle - from - width, width },
      ] as const;
    }),
    inlet: [
      { x: left, width: inletHalf },
      { x: right - inletHalf, width: inletHalf },
    ],
  };
}
