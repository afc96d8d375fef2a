/**
 * A crank, a rod and a piston as rigid bodies in planck, joined by two pins, a main bearing and a
 * bore, and turned by a motor. One millimetre is one unit of the solver's length.
 */
import { BoxShape, PrismaticJoint, RevoluteJoint, Settings, Vec2, World } from 'planck';
import type { SliderCrank } from '../../../calculators/maths/crank/slider-crank.ts';

/** How far the solver lets joints gape; its usual 0.005 units is too much here. */
const GAP = 1e-9;

export interface Pose {
  /** Degrees of the crank from the line of the bore. */
  readonly crank: number;
  /** Height of the gudgeon pin over the crank centre, mm. */
  readonly pin: number;
  /** Its velocity downwards, mm per degree of crank, and the crank's place at which it held. */
  readonly velocity: number;
  readonly velocityCrank: number;
}

const turns = new Map<SliderCrank, readonly Pose[]>();

/** The first pose at or after `angle` degrees from the line of the bore, of one turn of the engine. */
export function turnBodies(g: SliderCrank, angle: number): Pose {
  const poses = turns.get(g) ?? withSmallGaps(() => turn(g));
  turns.set(g, poses);
  return poses.find(({ crank }) => crank >= angle)!;
}

function withSmallGaps<T>(run: () => T): T {
  const settings = Settings as { linearSlop: number; maxLinearCorrection: number };
  const { linearSlop, maxLinearCorrection } = settings;
  Object.assign(settings, { linearSlop: GAP, maxLinearCorrection: 10 });
  try {
    return run();
  } finally {
    Object.assign(settings, { linearSlop, maxLinearCorrection });
  }
}

function turn({ stroke, rodLength, pinOffset }: SliderCrank): Pose[] {
  const r = stroke / 2;
  const bigEnd = new Vec2(0, r);
  const pin = new Vec2(pinOffset, r + Math.sqrt(rodLength ** 2 - pinOffset ** 2));
  const world = new World({ gravity: new Vec2(0, 0) });
  const block = world.createBody();
  const body = (from: Vec2, to: Vec2, width: number) => {
    const line = Vec2.sub(to, from);
    const made = world.createBody({
      type: 'dynamic',
      position: Vec2.mid(from, to),
      angle: Math.atan2(line.y, line.x),
    });
    made.createFixture({
      shape: new BoxShape(line.length() / 2, width),
      density: 1,
      isSensor: true,
    });
    return made;
  };
  const crank = body(new Vec2(0, 0), bigEnd, r / 10);
  const rod = body(bigEnd, pin, r / 10);
  const piston = body(Vec2.add(pin, new Vec2(0, -r / 2)), Vec2.add(pin, new Vec2(0, r / 2)), r / 2);

  const mainBearing = new RevoluteJoint(
    { enableMotor: true, maxMotorTorque: 1e12, motorSpeed: -0.5 },
    block,
    crank,
    new Vec2(0, 0),
  );
  world.createJoint(mainBearing);
  world.createJoint(new RevoluteJoint({}, crank, rod, bigEnd));
  world.createJoint(new RevoluteJoint({}, rod, piston, pin));
  world.createJoint(new PrismaticJoint({}, block, piston, pin, new Vec2(0, 1)));

  const turned = () => 90 - (crank.getAngle() * 180) / Math.PI;
  const poses: Pose[] = [];
  while (turned() < 310) {
    // The solver finds velocities for the pose at the beginning of a step, then moves the bodies.
    const velocityCrank = turned();
    world.step(1 / 100, 8, 12);
    poses.push({
      crank: turned(),
      pin: piston.getWorldCenter().y,
      velocity: (piston.getLinearVelocity().y / crank.getAngularVelocity()) * (Math.PI / 180),
      velocityCrank,
    });
  }
  return poses;
}
