import { blameFields } from '../../frame/attempt.ts';
import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import { absent } from '../../frame/types.ts';
import { headPlan, toothPlan } from '../../maths/plate/dividing.ts';
import { plateBlank } from '../../maths/plate/plate-blank.ts';
import { chord, holePlaces, setAngles, steps } from '../../maths/plate/plate-layout.ts';
import { offCentre } from '../../maths/plate/plate-run-out.ts';
import { assertWalls, walls, type Plate } from '../../maths/plate/plate-walls.ts';
import { holesFor } from '../../maths/plate/thread-holes.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;

/** Degrees from set 1 to each set, counted the way the cam turns. */
const fromFirst = (v: Values): readonly number[] => setAngles(0, v.spacing);

/** The direction of each set, degrees anticlockwise from X. */
const directions = (v: Values): readonly number[] =>
  v.turning === 'clockwise'
    ? fromFirst(v).map((angle) => (((v.start - angle) % 360) + 360) % 360)
    : setAngles(v.start, v.spacing).map((angle) =>
        angle > 360 ? angle - 360 * (Math.ceil(angle / 360) - 1) : angle,
      );

/** The plate that the inputs describe. */
export function plateOf(v: Values): Plate {
  return {
    outsideDiameter: v.outside,
    boreDiameter: v.bore,
    angles: directions(v),
    holes: v.radius.map((pitchRadius, i) => ({
      pitchRadius,
      holeAngle: v.angle[i]!,
      drill: v.drill[i]!,
    })),
    slots: Array.from({ length: v.slots }, (_, i) => ({
      slotRadius: v['slot-radius'],
      slotWidth: v['slot-width'],
      slotAngle: v['slot-start'] + (360 / v.slots) * i,
      slotSweep: v['slot-sweep'],
    })),
  };
}

/** The maths package's numbered names, by what their fields are called here. */
const numbered: Readonly<Record<string, string>> = {
  pitchRadius: 'radius',
  holeAngle: 'angle',
  drill: 'drill',
  spacing: 'spacing',
};

/** Tells an error about hole 2 of that hole's own fields. */
const atFields = <T>(work: () => T): T =>
  blameFields(
    (names) =>
      names.map((of) => of.replace(/^([a-zA-Z]+)(?=-\d+$)/, (name) => numbered[name] ?? name)),
    work,
  );

export function compute(v: Values): ComputedOf<typeof results> {
  return atFields(() => {
    const plate = plateOf(v);
    const metal = walls(plate);
    assertWalls(metal);
    const places = holePlaces(plate.angles, plate.holes);
    const along = fromFirst(v);
    const onwards = steps(along);
    const blank = plateBlank(v.outside, v.allowance);
    const head = headPlan(along, v.worm, v.circles);
    const teeth = toothPlan(
      along.map((angle) => angle % 360),
      v.teeth,
    );
    const drills = holesFor(v.thread);
    const out = offCentre(v['run-out'], v.clearance, v['heel-radius']);
    const single = absent('A plate with one set has no distance to a next one.');
    return {
      square: blank.square,
      corner: blank.corner,
      wall: metal[0]!.wall,
      x: places.map((set) => set.map(({ x }) => x)),
      y: places.map((set) => set.map(({ y }) => y)),
      'next-chord':
        onwards.length === 0
          ? single
          : onwards.map((step) => plate.holes.map((hole) => chord(hole.pitchRadius, step))),
      chord:
        onwards.length === 0
          ? single
          : plate.holes.map((hole) => chord(hole.pitchRadius, onwards[0]!)),
      'line-chord': plate.holes.map((hole) => chord(hole.pitchRadius, hole.holeAngle)),
      direction: plate.angles,
      turns: head.settings.map(({ turns }) => turns),
      'further-holes': head.settings.map(({ holes }) => holes),
      'head-error': head.settings.map(({ error }) => error),
      tooth: teeth.map(({ tooth }) => tooth),
      'tooth-error': teeth.map(({ error }) => error),
      circle: head.circle,
      cut: blank.cut,
      'octagon-swing': blank.octagonSwing,
      'square-swing': blank.squareSwing,
      'least-depth': blank.leastDepth,
      'most-depth': blank.mostDepth,
      'tapping-drill': drills.tappingDrill,
      'clearance-fine': drills.fine,
      'clearance-medium': drills.medium,
      'clearance-coarse': drills.coarse,
      'off-centre': out.offCentre,
      'gap-shift': out.heelShift,
      'timing-shift': out.angleShift,
    };
  });
}
