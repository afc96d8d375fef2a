import { solvedAt } from '../ode.ts';

/** A round tube that its liquid wets, in SI units: m, N/m, kg/m³. */
export interface TubeInSi {
  readonly radius: number;
  readonly surfaceTension: number;
  readonly density: number;
}

const GRAVITY = 9.80665;

/**
 * The rise in a tube, m, by halving: the surface is followed in SI units, with its slope as the
 * variable, from a cap of a sphere at the axis to the upright wall, by a solver from the registry.
 */
export function riseByHalving({ radius, surfaceTension, density }: TubeInSi): number {
  const weight = (density * GRAVITY) / surfaceTension;
  const widthAt = (rise: number): number => {
    const cap = 2 / (weight * rise);
    const first = 1e-5;
    return solvedAt(
      (slope, [x, z]) => {
        const bend = weight * (rise + z!) - Math.sin(slope) / x!;
        return [Math.cos(slope) / bend, Math.sin(slope) / bend];
      },
      first,
      [cap * Math.sin(first), cap * (1 - Math.cos(first))],
      Math.PI / 2,
    )[0]!;
  };
  let low = 1e-6;
  let high = 2 / (weight * radius);
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (widthAt(middle) > radius) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
