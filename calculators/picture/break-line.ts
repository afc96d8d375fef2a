/** How far a break line goes past the part that it breaks off, user units. */
const PAST = 6;

/** A straight thin line across with a zigzag at each of some places: here a part goes on, undrawn (ISO 128). */
export const breakLine = (
  from: number,
  to: number,
  y: number,
  zigzags: readonly number[] = [(from + to) / 2],
): string =>
  `M${String(from - PAST)} ${String(y)}` +
  zigzags.map((x) => `H${String(x - 4)}l2 -6l4 12l2 -6`).join('') +
  `H${String(to + PAST)}`;
