/** A point of the plate, mm. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

export const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);
