/**
 * A crank with several pins, each with its rod, its piston and its leaning bore, as rigid bodies in
 * planck, turned by a motor. One millimetre is one unit of the solver's length. X runs in the direction
 * of turning from upright, which is clockwise.
 */
import { BoxShape, PrismaticJoint, RevoluteJoint, Settings, Vec2, World } from 'planck';

const GAP = 1e-9;
const STEP = 1 / 200;
/** Radians a second, clockwise. */
const SPEED = 0.5;

interface Pinned {
  readonly pin: number;
  readonly lean: number;
}

const towards = (degrees: number, length: number): Vec2 =>
  new Vec2(
    length * Math.sin((degrees * Math.PI) / 180),
    length * Math.cos((degrees * Math.PI) / 180),
  );

/** Degrees of the crank, from pin 1 upright, at which each piston is furthest out, from 0 to 360. */
export function topsByBodies(
  cylinders: readonly Pinned[],
  throwLength: number,
  rodLength: number,
): readonly number[] {
  const settings = Settings as { linearSlop: number; maxLinearCorrection: number };
  const { linearSlop, maxLinearCorrection } = settings;
  Object.assign(settings, { linearSlop: GAP, maxLinearCorrection: 10 });
  try {
    return run(cylinders, throwLength, rodLength);
  } finally {
    Object.assign(settings, { linearSlop, maxLinearCorrection });
  }
}

function run(cylinders: readonly Pinned[], throwLength: number, rodLength: number): number[] {
  const world = new World({ gravity: new Vec2(0, 0) });
  const block = world.createBody();
  const body = (at: Vec2, size: number, density = 1) => {
    const made = world.createBody({ type: 'dynamic', position: at });
    made.createFixture({ shape: new BoxShape(size, size), density, isSensor: true });
    return made;
  };
  // A heavy crank, so that the pistons do not hurry it.
  const crank = body(new Vec2(0, 0), throwLength, 50);
  world.createJoint(
    new RevoluteJoint(
      { enableMotor: true, maxMotorTorque: 1e15, motorSpeed: -SPEED },
      block,
      crank,
      new Vec2(0, 0),
    ),
  );
  const pistons = cylinders.map(({ pin, lean }) => {
    const bigEnd = towards(pin, throwLength);
    const axis = towards(lean, 1);
    const along = Vec2.dot(bigEnd, axis);
    const across = Vec2.sub(bigEnd, Vec2.mul(along, axis)).length();
    const gudgeon = Vec2.mul(along + Math.sqrt(rodLength ** 2 - across ** 2), axis);
    const rod = body(Vec2.mid(bigEnd, gudgeon), throwLength / 5);
    const piston = body(gudgeon, throwLength / 4);
    world.createJoint(new RevoluteJoint({}, crank, rod, bigEnd));
    world.createJoint(new RevoluteJoint({}, rod, piston, gudgeon));
    world.createJoint(new PrismaticJoint({}, block, piston, gudgeon, axis));
    return { axis, piston };
  });
  const turned = (): number => (-crank.getAngle() * 180) / Math.PI;
  const heights = (): number[] =>
    pistons.map(({ axis, piston }) => Vec2.dot(piston.getWorldCenter(), axis));
  const seen: { angle: number; heights: number[] }[] = [];
  while (turned() < 375) {
    world.step(STEP, 12, 16);
    seen.push({ angle: turned(), heights: heights() });
  }
  return cylinders.map((_, i) => {
    // The highest of three neighbours, by the parabola through them.
    const tops = seen.flatMap((now, k) => {
      const [before, after] = [seen[k - 1], seen[k + 1]];
      if (!before || !after) return [];
      const [a, b, c] = [before.heights[i]!, now.heights[i]!, after.heights[i]!];
      if (!(b >= a && b > c)) return [];
      return [now.angle + ((after.angle - before.angle) / 4) * ((a - c) / (a - 2 * b + c))];
    });
    return tops[0]! % 360;
  });
}
