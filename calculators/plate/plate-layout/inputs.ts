import { DEMO_CYLINDERS } from '../../demo/engine.ts';
import { demoCam } from '../../demo/cam.ts';
import { demoPlate } from '../../demo/plate.ts';
import { choice } from '../../frame/define.ts';
import { readOrder } from '../order-reader.ts';
import type { AnyValues, Inputs } from '../../frame/types.ts';
import { evenTops, withinTurn } from '../../maths/crank/firing-order.ts';
import { equalSpacing, MOST_SETS } from '../../maths/plate/plate-layout.ts';
import { plateOutside } from '../../frame/ranges.ts';
import { MOST_SWEEP } from '../../maths/plate/plate-walls.ts';

const sets = 'The sets';
const plate = 'The plate';
const holes = 'Holes of each set';
const slots = 'Slots to turn the plate in';
const fit = 'How true it sits';
const dividing = 'Without a readout: dividing head or gear';

const MOST_HOLES = 6;
const hole = (index: number): string => `hole ${String(index)}`;

/** Demo holes, invented: the fixing screw, the pivot and the wire terminal of a set. */
const demoHoles = [
  { radius: demoPlate.slotRadius, angle: 0, drill: 3.3 },
  { radius: 25, angle: -24, drill: 4.2 },
  { radius: 33, angle: 30, drill: 2.5 },
  { radius: 24, angle: 30, drill: 2.5 },
  { radius: 33, angle: -40, drill: 2.5 },
  { radius: 24, angle: 48, drill: 2.5 },
] as const;
const demoHole = (index: number) => demoHoles[(index - 1) % demoHoles.length]!;

const demoSlot = { radius: 40, width: 4.5 } as const;

/** Half of what is left between bore and rim, and where its middle lies, mm. */
const ring = (outside: number, bore: number) => ({
  half: (outside - bore) / 4,
  middle: (outside + bore) / 4,
});
const demoRing = ring(demoPlate.outside, demoPlate.bore);

/** Whether holes and slots have room between rim and bore of the plate. */
function hasRoom(values: AnyValues): boolean {
  const radii = values['radius'] as readonly number[];
  const drills = values['drill'] as readonly number[];
  const holes = radii.map((radius, i) => ({ radius, width: drills[i]! }));
  const slot = { radius: values['slot-radius'], width: values['slot-width'] };
  const cut = (values['slots'] === 0 ? holes : [...holes, slot]) as readonly {
    radius: number;
    width: number;
  }[];
  return cut.every(
    ({ radius, width }) =>
      radius + width / 2 < (values['outside'] as number) / 2 &&
      radius - width / 2 > (values['bore'] as number) / 2,
  );
}

/** A hole or slot of the demo's in another plate: as near to the rim and the bore as in its own. */
function radiusGivesWay(own: number, values: AnyValues): number | undefined {
  if (hasRoom(values)) return undefined;
  const { half, middle } = ring(values['outside'] as number, values['bore'] as number);
  return half > 0 ? middle + ((own - demoRing.middle) * half) / demoRing.half : undefined;
}

/** What is cut by a smaller drill where there is less room. */
function widthGivesWay(own: number, values: AnyValues): number | undefined {
  if (hasRoom(values)) return undefined;
  const { half } = ring(values['outside'] as number, values['bore'] as number);
  return half > 0 && half < demoRing.half ? (own * half) / demoRing.half : undefined;
}

/**
 * Even spacing as a figure for a field: a billionth of a degree is near enough to a seventh of the
 * circle. A number of sets that is none has its own sentence.
 */
const evenSpacing = (count: number): number =>
  count >= 1 && count <= MOST_SETS ? Number(equalSpacing(Math.floor(count)).toFixed(9)) : 360;

const setCount = (v: AnyValues): number => v['sets'] as number;
const orderIn = (v: AnyValues): readonly number[] => v['firing-order'] as readonly number[];
/** Whether the firing order is given, so that the sets stand evenly in it. */
const isByOrder = (v: AnyValues): boolean => setCount(v) > 1 && orderIn(v).length === setCount(v);

/** From each set on to the next by number, where they stand evenly in a firing order. */
function spacingInOrder(index: number, order: readonly number[]): number {
  const [here, next] = evenTops(order).slice(index - 1, index + 1);
  return Number(withinTurn(next! - here!).toFixed(9));
}

export const inputs = {
  sets: {
    kind: 'number',
    group: sets,
    label: 'Sets of points',
    help: 'One for each cylinder with a coil of its own.',
    unit: 'count',
    min: 1,
    max: MOST_SETS,
    why: 'a plate carries at least one set, and no more are reckoned here',
    default: DEMO_CYLINDERS,
    whole: true,
    step: 1,
  },
  start: {
    assumed: true,
    kind: 'number',
    group: sets,
    label: 'Direction of set 1',
    help: 'Anticlockwise from the line to the right. 90 puts it at the top.',
    unit: 'deg',
    min: -360,
    max: 360,
    why: 'beyond a full turn the count starts again',
    default: 90,
    step: 5,
  },
  turning: choice({
    group: sets,
    label: 'The cam turns',
    help: 'As you look at the plate with the sets on it. The angles from set to set are counted that way.',
    options: { anticlockwise: 'Anticlockwise', clockwise: 'Clockwise' },
    default: 'anticlockwise',
    when: (v) => (v.sets as number) > 1,
  }),
  'firing-order': {
    kind: 'list',
    group: sets,
    label: 'Firing order, if it fires evenly',
    help: 'Cylinder numbers as they fire: 1-3-2, 1,3,2 or 132. The sets then stand evenly in it. Leave it empty to give the angles.',
    unit: 'count',
    min: 1,
    max: MOST_SETS,
    why: 'cylinders are counted from 1',
    whole: true,
    most: MOST_SETS,
    order: { of: setCount, read: readOrder },
    default: [],
    step: 1,
    when: (v) => setCount(v) > 1,
  },
  spacing: {
    kind: 'series',
    first: 2,
    group: sets,
    label: 'Angle on to set',
    member: (index) => `From set ${String(index)} on to set ${String(index + 1)}`,
    help: 'The way the cam turns. Equal for even firing; from top to top of the cylinders if not.',
    measure:
      'On an engine whose pistons come to the top one after another, evenly: 360° divided by the cylinders, with the cam on the crankshaft. Pistons that come up together share a set. Otherwise measure top to top with the disc: set it to 0 at the top of one cylinder, turn forwards to the top of the next, and read; half of it on a half-speed shaft. In a vee the tops stand apart by the angle of the barrels as well as that of the crank pins, and the disc takes both in. Sets are numbered by their cylinders: where set 3 comes before set 2, the way on to it goes past set 1.',
    unit: 'deg',
    min: 0.1,
    max: 359.9,
    why: 'two sets cannot stand on one line, nor a full turn apart',
    count: (v) => (v.sets as number) - 1,
    most: MOST_SETS - 1,
    when: (v) => !isByOrder(v),
    default: (index, v) =>
      isByOrder(v) ? spacingInOrder(index, orderIn(v)) : evenSpacing(setCount(v)),
    step: 1,
  },
  outside: {
    kind: 'number',
    group: plate,
    label: 'Outside diameter',
    help: 'Of the finished plate: what goes into the recess of the case.',
    measure: 'Bore gauge or inside caliper in the recess, at two places square to each other.',
    unit: 'mm',
    ...plateOutside,
    default: demoPlate.outside,
    givesWay: (own, { bore }) =>
      own > (bore as number) ? undefined : (bore as number) + demoPlate.outside - demoPlate.bore,
    step: 1,
  },
  bore: {
    kind: 'number',
    group: plate,
    label: 'Bore',
    help: 'Hole in the middle for the cam or a boss. 0 for none.',
    unit: 'mm',
    min: 0,
    max: 399,
    why: 'it must leave a plate round it',
    default: demoPlate.bore,
    givesWay: (own, { outside }) =>
      own < (outside as number)
        ? undefined
        : (demoPlate.bore / demoPlate.outside) * (outside as number),
    step: 0.5,
  },
  allowance: {
    assumed: true,
    kind: 'number',
    group: plate,
    label: 'Metal left for turning',
    help: 'On the diameter. 2 to 4 mm is common practice for a sawn edge.',
    unit: 'mm',
    min: 0,
    max: 40,
    why: 'less is none, and more is waste',
    default: 3,
    step: 0.5,
  },
  'least-wall': {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: plate,
    label: 'Least metal wanted',
    help: 'Between any two holes, and to the rim and the bore. About the thickness of the plate is common practice.',
    unit: 'mm',
    min: 0,
    max: 50,
    why: 'holes that touch leave none, and no plate has more',
    default: 3,
    step: 0.5,
  },
  paper: choice({
    assumed: true,
    group: plate,
    label: 'Paper for the template',
    help: 'For the PDF. What is larger than a sheet goes on several, to be joined.',
    options: { a4: 'A4', letter: 'Letter' },
    default: 'a4',
  }),
  holes: {
    assumed: true,
    kind: 'number',
    group: holes,
    label: 'Holes in each set',
    help: 'The same in every set, turned round with it.',
    unit: 'count',
    min: 1,
    max: MOST_HOLES,
    why: 'a set needs a hole to hold it, and has room for no more',
    default: 2,
    whole: true,
    step: 1,
  },
  radius: {
    kind: 'series',
    group: holes,
    label: 'Pitch circle radius',
    member: (index) => `Pitch circle radius, ${hole(index)}`,
    help: 'From the centre of the plate to the centre of the hole.',
    measure:
      'On an old plate: from edge to edge of hole and bore with a caliper, plus half of each. On a new one: offer the set up to the cam, heel on the lobe, and prick through its holes.',
    unit: 'mm',
    min: 0.5,
    max: 200,
    why: 'nearer to the centre no set has room for its own, and the plate ends before that',
    count: (v) => v.holes as number,
    most: MOST_HOLES,
    default: (index) => demoHole(index).radius,
    givesWay: radiusGivesWay,
    step: 0.5,
  },
  angle: {
    kind: 'series',
    group: holes,
    label: 'Angle from the set’s line',
    member: (index) => `Angle from the set’s line, ${hole(index)}`,
    help: 'Anticlockwise positive. 0 on the line itself.',
    unit: 'deg',
    min: -180,
    max: 180,
    why: 'beyond half a turn it is nearer the other way',
    count: (v) => v.holes as number,
    most: MOST_HOLES,
    default: (index) => demoHole(index).angle,
    step: 1,
  },
  drill: {
    kind: 'series',
    group: holes,
    label: 'Drill',
    member: (index) => `Drill, ${hole(index)}`,
    help: 'Diameter. The sizes for a thread stand below.',
    unit: 'mm',
    min: 0.3,
    max: 60,
    why: 'smaller drills break and larger ones are not used on such a plate',
    count: (v) => v.holes as number,
    most: MOST_HOLES,
    default: (index) => demoHole(index).drill,
    givesWay: widthGivesWay,
    step: 0.1,
  },
  thread: choice({
    assumed: true,
    group: holes,
    label: 'Drills for a thread',
    help: 'ISO metric coarse. Tapping and clearance sizes are shown with the results.',
    options: { M2: 'M2', 'M2.5': 'M2.5', M3: 'M3', M4: 'M4', M5: 'M5', M6: 'M6', M8: 'M8' },
    default: 'M4',
  }),
  slots: {
    kind: 'number',
    group: slots,
    label: 'Slots',
    help: 'Spaced evenly. 0 for none.',
    unit: 'count',
    min: 0,
    max: 8,
    why: 'no plate is held by more screws',
    default: 3,
    whole: true,
    step: 1,
  },
  'slot-start': {
    kind: 'number',
    group: slots,
    label: 'Direction of slot 1',
    help: 'Its middle, anticlockwise from the line to the right.',
    unit: 'deg',
    min: -360,
    max: 360,
    why: 'beyond a full turn the count starts again',
    default: 30,
    step: 5,
    when: (v) => v.slots !== 0,
  },
  'slot-radius': {
    kind: 'number',
    group: slots,
    label: 'Radius of the slots',
    help: 'From the centre of the plate to the middle line of the slot.',
    unit: 'mm',
    min: 1,
    max: 200,
    why: 'the plate ends before that',
    default: demoSlot.radius,
    givesWay: radiusGivesWay,
    step: 0.5,
    when: (v) => v.slots !== 0,
  },
  'slot-width': {
    kind: 'number',
    group: slots,
    label: 'Width of the slots',
    help: 'The clearance size of their screw.',
    unit: 'mm',
    min: 0.5,
    max: 30,
    why: 'narrower or wider takes no screw of such a plate',
    default: demoSlot.width,
    givesWay: widthGivesWay,
    step: 0.1,
    when: (v) => v.slots !== 0,
  },
  'slot-sweep': {
    kind: 'number',
    group: slots,
    label: 'The plate turns either way by',
    help: 'Degrees of plate from the middle of the slot until a screw that fills it stops it.',
    unit: 'deg',
    min: 0,
    max: MOST_SWEEP,
    why: 'more would all but cut the plate in two',
    default: 10,
    step: 1,
    when: (v) => v.slots !== 0,
  },
  'run-out': {
    kind: 'number',
    group: fit,
    label: 'Run-out',
    help: 'Full movement of an indicator on the crankshaft that is swung round the plate’s rim or bore.',
    unit: 'mm',
    min: 0,
    max: 5,
    why: 'a plate further out was not turned true',
    default: 0.06,
    step: 0.01,
    error: 0.01,
  },
  clearance: {
    kind: 'number',
    group: fit,
    label: 'Clearance in the recess',
    help: 'Recess less plate, on the diameter.',
    unit: 'mm',
    min: 0,
    max: 5,
    why: 'a plate with more play does not come back to its place',
    default: 0.04,
    step: 0.01,
    error: 0.01,
  },
  'heel-radius': {
    kind: 'number',
    group: fit,
    label: 'Heel from the centre',
    help: 'From the centre of the cam to where the heel rubs.',
    unit: 'mm',
    min: 2,
    max: 60,
    why: 'no breaker cam is smaller or larger',
    default: demoCam.base / 2,
    step: 0.5,
    error: 0.2,
  },
  worm: {
    kind: 'number',
    group: dividing,
    label: 'Worm ratio of the head',
    help: 'Turns of the crank for one of the work: 40 on most dividing heads, 60 or 90 on many rotary tables.',
    unit: 'none',
    min: 1,
    max: 1000,
    why: 'no head has a smaller or larger one',
    default: 40,
    step: 1,
  },
  circles: {
    kind: 'list',
    group: dividing,
    label: 'Hole circles',
    help: 'Holes in each circle of your division plates, with spaces between.',
    unit: 'count',
    min: 1,
    max: 400,
    why: 'a circle has a hole at least, and nobody counts more',
    whole: true,
    most: 40,
    default: [15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49],
    step: 1,
  },
  teeth: {
    kind: 'number',
    group: dividing,
    label: 'Teeth of the gear',
    help: 'On the lathe spindle, counted and held by a pawl.',
    unit: 'count',
    min: 2,
    max: 1000,
    why: 'a gear with fewer or more is none for a spindle',
    whole: true,
    default: 60,
    step: 1,
  },
} as const satisfies Inputs;

/** Groups that stay shut until asked for. */
export const folded = [slots, fit, dividing];
