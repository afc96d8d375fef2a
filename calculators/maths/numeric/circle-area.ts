/** Area of a circle, in the square of the unit of `diameter`, 0 or more: of a bore, a jet, a wire. */
export const circleArea = (diameter: number): number => (Math.PI / 4) * diameter * diameter;
