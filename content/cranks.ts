/** A crank by its pins, degrees from pin 1 the way it turns. */
export interface Crank {
  readonly name: string;
  readonly pins: readonly number[];
}

/** Cranks of a row of cylinders, as an article compares them. */
export const cranks: readonly Crank[] = [
  { name: 'Twin at 180°', pins: [0, 180] },
  { name: 'Twin at 360°', pins: [0, 0] },
  { name: 'Triple at 120°', pins: [0, 240, 120] },
  { name: 'Four at 90°', pins: [0, 180, 90, 270] },
];

/** How far the crank turns from the top of cylinder 1 to that of each, degrees from 0 below 360. */
export const topsOf = ({ pins }: Crank): readonly number[] => pins.map((pin) => (360 - pin) % 360);

/** The order in which the cylinders come to the top: `1, 2 and 3` together as `1 + 2`. */
export function firingOrder(crank: Crank): string {
  const tops = topsOf(crank);
  const places = [...new Set(tops)].sort((a, b) => a - b);
  return places
    .map((place) => tops.flatMap((top, i) => (top === place ? [String(i + 1)] : [])).join(' + '))
    .join(', ');
}

/**
 * How many cylinders' worth of shaking is left in sum, and in pitches of the row as a couple, for
 * the force that comes `times` a turn (1 primary, 2 secondary). Vectors one pin long each, added.
 */
export function leftOver({ pins }: Crank, times: 1 | 2): { force: number; couple: number } {
  const middle = (pins.length - 1) / 2;
  const sum = (arm: (index: number) => number): number =>
    Math.hypot(
      ...[Math.cos, Math.sin].map((side) =>
        pins.reduce((all, pin, i) => all + arm(i) * side((times * pin * Math.PI) / 180), 0),
      ),
    );
  return { force: sum(() => 1), couple: sum((index) => index - middle) };
}
