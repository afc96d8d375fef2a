/**
 * Which part of a slide carburettor rules the mixture at which throttle. Common practice, and no
 * sharp borders: each fades into the next.
 */
export interface Circuit {
  readonly name: string;
  /** Short enough for a picture. */
  readonly short: string;
  /** Throttle in per cent at which the next one takes over. */
  readonly until: number;
}

export const circuits: readonly Circuit[] = [
  { name: 'pilot jet and air screw', short: 'pilot', until: 12.5 },
  { name: 'cutaway of the slide', short: 'cutaway', until: 25 },
  { name: 'needle and needle jet', short: 'needle', until: 75 },
  { name: 'main jet', short: 'main', until: 100 },
];

/** The one in charge at a throttle in per cent. */
export function circuitAt(throttle: number): Circuit {
  return circuits.find(({ until }) => throttle < until) ?? circuits.at(-1)!;
}
