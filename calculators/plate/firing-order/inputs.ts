import { DEMO_CYLINDERS, DEMO_SPEED } from '../../demo/engine.ts';
import { demoCrank } from '../../demo/crank.ts';
import { demoTiming } from '../../demo/timing.ts';
import { engineInputs } from '../../position/engine-inputs.ts';
import { choice } from '../../frame/define.ts';
import { readOrder } from '../order-reader.ts';
import type { Inputs } from '../../frame/types.ts';
import { evenTops, withinTurn } from '../../maths/crank/firing-order.ts';
import { MOST_CYLINDERS } from '../../maths/limits/cylinder-count.ts';

const crank = 'The crank';
const leans = 'A vee or a boxer: lean of the cylinders';
const plate = 'Plate and coils';
const weights = 'What shakes: spacing, masses, speed';

const count = (v: { readonly [key: string]: unknown }): number => v.cylinders as number;

/** Whether the firing order is given, so that the crank follows from it. */
export const isByOrder = (v: { readonly [key: string]: unknown }): boolean =>
  count(v) > 0 && (v['firing-order'] as readonly number[]).length === count(v);

/** A pin of a row of cylinders that fires evenly, one after the other; exact enough for a field. */
const evenPin = (index: number, cylinders: number): number =>
  cylinders === DEMO_CYLINDERS
    ? (demoCrank.pins[index - 1] ?? 0)
    : Number(withinTurn(((1 - index) * 360) / Math.max(1, Math.floor(cylinders))).toFixed(6));

/** The same in a firing order: a pin lies as far back as its top comes later. */
const pinInOrder = (index: number, order: readonly number[]): number =>
  Number(withinTurn(-evenTops(order)[index - 1]!).toFixed(6));

export const inputs = {
  cylinders: {
    assumed: true,
    kind: 'number',
    group: crank,
    label: 'Cylinders',
    help: 'Numbered along the crank, in any way that you keep to.',
    unit: 'count',
    min: 1,
    max: MOST_CYLINDERS,
    why: 'a crank has a pin at least, and no more are reckoned here',
    default: DEMO_CYLINDERS,
    whole: true,
    step: 1,
  },
  'firing-order': {
    kind: 'list',
    group: crank,
    label: 'Firing order, if it fires evenly',
    help: 'Cylinder numbers as they fire: 1-3-2, 1,3,2 or 132. Pins then follow. Leave it empty to give the angles of the pins.',
    unit: 'count',
    min: 1,
    max: MOST_CYLINDERS,
    why: 'cylinders are counted from 1',
    whole: true,
    most: MOST_CYLINDERS,
    order: { of: count, read: readOrder },
    default: [],
    step: 1,
  },
  pin: {
    kind: 'series',
    group: crank,
    label: 'Crank pin',
    member: (index) => `Crank pin ${String(index)}`,
    help: 'Degrees from pin 1, counted the way the crank turns. Pin 1 itself is 0. Cylinders on one pin have the same angle.',
    measure:
      'Crank between centres or on blocks, a degree disc on it: bring each pin to the same height under an indicator, and read the disc. In the engine: find the top of each cylinder with the disc, and type pins that give those tops.',
    unit: 'deg',
    min: -360,
    max: 360,
    why: 'beyond a full turn the count starts again',
    count,
    most: MOST_CYLINDERS,
    when: (v) => !isByOrder(v),
    default: (index, v) =>
      isByOrder(v)
        ? pinInOrder(index, v['firing-order'] as readonly number[])
        : evenPin(index, count(v)),
    step: 5,
    error: 0.5,
  },
  lean: {
    assumed: true,
    kind: 'series',
    group: leans,
    label: 'Lean of cylinder',
    member: (index) => `Lean of cylinder ${String(index)}`,
    help: 'Of its axis from upright, + the way the crank turns as you look at its end. All 0 in a row; half the angle of a vee either way.',
    unit: 'deg',
    min: -360,
    max: 360,
    why: 'beyond a full turn the count starts again',
    count,
    most: MOST_CYLINDERS,
    when: (v) => !isByOrder(v),
    default: () => 0,
    step: 5,
    error: 0.5,
  },
  turning: choice({
    assumed: true,
    group: plate,
    label: 'The cam turns',
    help: 'As you look at the plate with the sets on it.',
    options: { anticlockwise: 'Anticlockwise', clockwise: 'Clockwise' },
    default: 'anticlockwise',
  }),
  tolerance: {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: plate,
    label: 'Tops that count as one',
    help: 'Cylinders whose tops are no further apart may fire from one coil. One degree is common practice.',
    unit: 'deg',
    min: 0,
    max: 10,
    why: 'further apart, one of the two would fire at a wrong time',
    default: demoTiming.tolerance,
    step: 0.25,
  },
  turned: {
    assumed: true,
    kind: 'number',
    group: plate,
    label: 'Crank turned on, in the picture',
    help: 'From the top of cylinder 1.',
    unit: 'deg',
    min: 0,
    max: 360,
    why: 'after a full turn the picture is the same again',
    default: 30,
    step: 5,
  },
  place: {
    kind: 'series',
    group: weights,
    label: 'Place along the crank',
    member: (index) => `Place of cylinder ${String(index)}`,
    help: 'Distance of its middle along the crank, from anywhere.',
    unit: 'mm',
    usual: 0,
    min: -2000,
    max: 2000,
    why: 'no crank of this kind is longer',
    count,
    most: MOST_CYLINDERS,
    default: (index) => (index - 1) * demoCrank.pitch,
    step: 1,
    error: 0.5,
  },
  reciprocating: {
    kind: 'number',
    group: weights,
    label: 'Reciprocating mass',
    help: 'Of one cylinder: piston, rings, gudgeon pin with clips and bearing, and the upper part of the rod.',
    measure:
      'Weigh piston, rings, pin, clips and bearing together. Lay the rod level, its big end on a knife edge, its small end on the scales, and add what they show.',
    unit: 'g',
    min: 1,
    max: 10_000,
    why: 'lighter or heavier is no piston of such an engine',
    default: demoCrank.reciprocating,
    step: 5,
    error: 1,
  },
  rotating: {
    kind: 'number',
    group: weights,
    label: 'Rotating mass',
    help: 'Of one cylinder, that turns with its pin: big end, its bearing, and the lower part of the rod.',
    measure:
      'Lay the rod level, its small end on a knife edge, its big end with the bearing on the scales.',
    unit: 'g',
    min: 0,
    max: 10_000,
    why: 'no rod of such an engine is heavier',
    default: demoCrank.rotating,
    step: 5,
    error: 1,
  },
  factor: {
    kind: 'number',
    group: weights,
    label: 'Balance factor',
    help: 'Share of the reciprocating mass that a weight opposite each pin balances. 50 to 60% on a single is common practice.',
    unit: '%',
    min: 0,
    max: 100,
    why: 'a weight of more than the whole piston shakes the engine across instead',
    default: demoCrank.factor,
    step: 5,
  },
  rpm: {
    assumed: true,
    kind: 'number',
    group: weights,
    label: 'Engine speed',
    help: 'The forces grow with its square.',
    unit: 'rpm',
    min: 0,
    max: 20_000,
    why: 'no engine of this kind turns faster',
    default: DEMO_SPEED,
    step: 500,
  },
  stroke: { ...engineInputs.stroke, group: weights },
  rod: { ...engineInputs.rod, group: weights },
} as const satisfies Inputs;

/** Groups that stay shut until asked for. */
export const folded = [leans, weights];
