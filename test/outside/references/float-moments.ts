/**
 * An independent float: in newtons, metres and pascals, sliced into thin layers, its level found by
 * halving. It shares nothing with the calculator's formula but the physics.
 */
export interface FloatInSi {
  /** Arms from the pivot to the needle and to the middle of the float, m. */
  readonly needleArm: number;
  readonly floatArm: number;
  /** kg */
  readonly mass: number;
  /** m² */
  readonly area: number;
  /** m */
  readonly depth: number;
  /** Diameter of the seat, m. */
  readonly seat: number;
  /** m */
  readonly head: number;
  /** kg/m³ */
  readonly density: number;
  /** Lower face of the float when the valve shuts, m below the gasket face. */
  readonly lowerFace: number;
}

const G = 9.80665;
const LAYERS = 20_000;

/** Moment about the pivot that shuts the valve, N·m, with the fuel `level` m below the gasket face. */
function closingMoment(f: FloatInSi, level: number): number {
  const layer = f.depth / LAYERS;
  let displaced = 0;
  for (let i = 0; i < LAYERS; i += 1) {
    const bottom = f.lowerFace - i * layer;
    const wet = Math.min(layer, Math.max(0, bottom - level));
    displaced += f.area * wet;
  }
  const buoyancy = f.density * G * displaced;
  const push = f.density * G * f.head * Math.PI * (f.seat / 2) ** 2;
  return (buoyancy - f.mass * G) * f.floatArm - push * f.needleArm;
}

/** The level at which the valve just shuts, m below the gasket face, by bisection. */
export function levelByHalving(f: FloatInSi): number {
  let wet = f.lowerFace - f.depth;
  let dry = f.lowerFace;
  for (let i = 0; i < 60; i += 1) {
    const middle = (wet + dry) / 2;
    if (closingMoment(f, middle) > 0) wet = middle;
    else dry = middle;
  }
  return (wet + dry) / 2;
}
