/**
 * The inertia forces of an engine by sums: each piston's place from Pythagoras, its acceleration by
 * differences, the forces added up as arrows at every degree, and the part that comes once or twice a
 * turn taken out by Fourier sums. Knows nothing of direct and reverse cranks.
 */
interface Cylinder {
  readonly pin: number;
  readonly lean: number;
  /** What its force counts: 1, or its arm in m. */
  readonly weight: number;
}

const STEPS = 720;
const SMALL = 1e-3;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Height of the gudgeon pin, `after` radians from the top. */
const height = (r: number, l: number, after: number): number =>
  r * Math.cos(after) + Math.sqrt(l * l - (r * Math.sin(after)) ** 2);

/** Minus the second derivative by the angle, mm. */
const bend = (r: number, l: number, after: number): number =>
  -(height(r, l, after + SMALL) - 2 * height(r, l, after) + height(r, l, after - SMALL)) /
  SMALL ** 2;

/**
 * The most over a turn of the force that comes `times` a turn.
 *
 * @param mass kg; lengths in mm, speed in rpm; the result in N times the unit of the weights.
 */
export function mostBySums(
  cylinders: readonly Cylinder[],
  {
    mass,
    throwLength,
    rodLength,
    rpm,
  }: Record<'mass' | 'throwLength' | 'rodLength' | 'rpm', number>,
  times: 1 | 2,
): number {
  const omega = (rpm * 2 * Math.PI) / 60;
  const angles = Array.from({ length: STEPS }, (_, i) => (2 * Math.PI * i) / STEPS);
  const forces = angles.map((turned) =>
    cylinders.reduce(
      ([x, y], { pin, lean, weight }) => {
        const after = turned + radians(pin) - radians(lean);
        const force = weight * mass * omega ** 2 * (bend(throwLength, rodLength, after) / 1000);
        return [x + force * Math.sin(radians(lean)), y + force * Math.cos(radians(lean))] as const;
      },
      [0, 0] as readonly [number, number],
    ),
  );
  const part = (axis: 0 | 1, wave: (angle: number) => number): number =>
    (2 / STEPS) * forces.reduce((sum, force, i) => sum + force[axis] * wave(times * angles[i]!), 0);
  const [xc, xs, yc, ys] = [
    part(0, Math.cos),
    part(0, Math.sin),
    part(1, Math.cos),
    part(1, Math.sin),
  ];
  return Math.max(
    ...angles.map((angle) =>
      Math.hypot(
        xc * Math.cos(angle) + xs * Math.sin(angle),
        yc * Math.cos(angle) + ys * Math.sin(angle),
      ),
    ),
  );
}
