import { spindleSpeed } from '../../calculators/maths/plate/cutting-speed.ts';
import { headPlan, toothPlan } from '../../calculators/maths/plate/dividing.ts';
import { plateBlank } from '../../calculators/maths/plate/plate-blank.ts';
import {
  chord,
  equalSpacing,
  holePlaces,
  setAngles,
} from '../../calculators/maths/plate/plate-layout.ts';
import { offCentre } from '../../calculators/maths/plate/plate-run-out.ts';
import { assertWalls, walls, type Plate } from '../../calculators/maths/plate/plate-walls.ts';
import { holdsTo } from './limits.ts';

const hole = { pitchRadius: 30, holeAngle: 0, drill: 4 };
const slot = { slotRadius: 40, slotWidth: 4, slotAngle: 0, slotSweep: 10 };
const plate: Plate = {
  outsideDiameter: 90,
  boreDiameter: 20,
  angles: [0],
  holes: [],
  slots: [],
};
const judge = (changed: Partial<Plate>): void => assertWalls(walls({ ...plate, ...changed }));

holdsTo([
  {
    code: 'cutting-speed-not-positive',
    of: ['cuttingSpeed'],
    run: (speed) => spindleSpeed(speed, 90),
    takes: [0.001],
    refuses: [0, -1, NaN, Infinity],
    says: /^The cutting speed must be more than 0 metres a minute, not /,
  },
  {
    code: 'diameter-not-positive',
    of: ['diameter'],
    run: (diameter) => spindleSpeed(30, diameter),
    takes: [0.001],
    refuses: [0, -1, NaN, Infinity],
    says: /^The work must measure more than 0 mm across, not /,
  },
  {
    code: 'worm-not-positive',
    of: ['wormRatio'],
    run: (ratio) => headPlan([0, 120], ratio, [20]),
    takes: [0.5, 90],
    refuses: [0, -1, NaN, Infinity],
    says: /^The worm ratio must be more than 0, not /,
  },
  {
    code: 'no-circles',
    of: ['circles'],
    run: (count) => headPlan([0, 120], 40, [20].slice(0, count)),
    takes: [1],
    refuses: [0],
    says: /^At least one hole circle/,
  },
  {
    code: 'circle-not-whole',
    of: ['circles'],
    run: (circle) => headPlan([0, 120], 40, [20, circle]),
    takes: [1],
    refuses: [0, -1, 1.5, NaN],
    says: /a whole number of holes, 1 or more, not /,
  },
  {
    code: 'teeth-not-whole',
    of: ['teeth'],
    run: (teeth) => toothPlan([0], teeth),
    takes: [2],
    refuses: [1, 0, 2.5, NaN],
    says: /a whole number of teeth, 2 or more, not /,
  },
  {
    code: 'outside-not-positive',
    of: ['outsideDiameter'],
    run: (outside) => plateBlank(outside, 3),
    takes: [0.001],
    refuses: [0, -1, NaN, Infinity],
    says: /mm across is none\. .* more than 0 mm/,
  },
  {
    code: 'allowance-negative',
    of: ['allowance'],
    run: (allowance) => plateBlank(90, allowance),
    takes: [0],
    refuses: [-0.1, NaN, Infinity],
    says: /^The allowance must be 0 mm or more, not /,
  },
  {
    code: 'negative',
    of: ['runOut'],
    run: (runOut) => offCentre(runOut, 0.05, 12),
    takes: [0],
    refuses: [-0.1, NaN, Infinity],
    says: /^The run-out must be 0 mm or more, not /,
  },
  {
    code: 'negative',
    of: ['clearance'],
    run: (clearance) => offCentre(0.05, clearance, 12),
    takes: [0],
    refuses: [-0.1, NaN, Infinity],
    says: /^The clearance must be 0 mm or more, not /,
  },
  {
    code: 'heel-radius-not-positive',
    of: ['heelRadius'],
    run: (radius) => offCentre(0, 0, radius),
    takes: [0.001],
    refuses: [0, -1, NaN, Infinity],
    says: /more than 0 mm from the centre of the cam, not /,
  },
  {
    // Half of 10 and 14 mm together lies 12 mm off, which is the heel's own radius.
    code: 'off-centre-too-far',
    of: ['runOut', 'clearance', 'heelRadius'],
    run: (runOut) => offCentre(runOut, 14, 12),
    takes: [9.9],
    refuses: [10, 20],
    says: /would lie 1[27] mm off centre, as far as the heel of 12 mm/,
  },
]);

holdsTo([
  {
    code: 'sets-out-of-range',
    of: ['sets'],
    run: equalSpacing,
    takes: [1, 8],
    refuses: [0, 9, 1.5, NaN],
    says: /a whole number of sets from 1 to 8, not /,
  },
  {
    code: 'sets-out-of-range',
    of: ['sets'],
    run: (spacings) => setAngles(0, Array<number>(spacings).fill(10)),
    takes: [0, 7],
    refuses: [8],
    says: /from 1 to 8, not 9/,
  },
  {
    code: 'not-a-number',
    of: ['start'],
    run: (start) => setAngles(start, [120]),
    takes: [-720, 720],
    refuses: [NaN, Infinity],
    says: /^The angle of set 1 is not a number\. Enter degrees\.$/,
  },
  {
    code: 'not-a-number',
    of: ['spacing-3'],
    run: (spacing) => setAngles(0, [120, spacing]),
    takes: [120],
    refuses: [NaN, Infinity],
    says: /^The angle from set 2 to set 3 is not a number\. Enter degrees\.$/,
  },
  {
    code: 'spacing-not-positive',
    of: ['spacing-3'],
    run: (spacing) => setAngles(0, [120, spacing]),
    takes: [0.001],
    refuses: [0, -1],
    says: /^From set 2 to set 3 there must be more than 0°, not /,
  },
  {
    code: 'sets-on-one-line',
    of: ['spacing-3'],
    run: (spacing) => setAngles(45, [120, spacing]),
    takes: [239.9, 240.1, 250],
    refuses: [240, 360],
    says: /^Set 3 would stand on the line of set [12]: from there on the angles come to 360°\./,
  },
  {
    code: 'not-a-number',
    of: ['spacing'],
    run: (between) => chord(30, between),
    takes: [0, 400],
    refuses: [NaN, Infinity],
    says: /^The angle between the sets is not a number\. Enter degrees\.$/,
  },
  {
    code: 'not-a-number',
    of: ['pitchRadius'],
    run: (radius) => chord(radius, 120),
    takes: [0.001],
    refuses: [NaN, Infinity],
    says: /^The pitch circle radius is not a number\. Enter millimetres\.$/,
  },
  {
    code: 'pitch-radius-not-positive',
    of: ['pitchRadius'],
    run: (radius) => chord(radius, 120),
    takes: [0.001],
    refuses: [0, -1],
    says: /^The pitch circle radius must be more than 0 mm, not /,
  },
  ...(
    [
      ['pitchRadius', 'pitch circle radius of hole 2', 'millimetres'],
      ['holeAngle', 'angle of hole 2', 'degrees'],
      ['drill', 'drill of hole 2', 'millimetres'],
    ] as const
  ).map(([name, words, unit]) => ({
    code: 'not-a-number',
    of: [`${name}-2`],
    run: (figure: number) => holePlaces([0], [hole, { ...hole, [name]: figure }]),
    takes: [0.001],
    refuses: [NaN, Infinity],
    says: new RegExp(`^The ${words} is not a number\\. Enter ${unit}\\.$`),
  })),
  {
    code: 'pitch-radius-not-positive',
    of: ['pitchRadius-2'],
    run: (pitchRadius) => holePlaces([0], [hole, { ...hole, pitchRadius }]),
    takes: [0.001],
    refuses: [0, -1],
    says: /^The pitch circle radius of hole 2 must be more than 0 mm/,
  },
  {
    code: 'drill-not-positive',
    of: ['drill-2'],
    run: (drill) => holePlaces([0], [hole, { ...hole, drill }]),
    takes: [0.001],
    refuses: [0, -1],
    says: /mm makes no hole\. .* for hole 2, more than 0 mm/,
  },
]);

holdsTo([
  {
    code: 'not-a-number',
    of: ['outsideDiameter'],
    run: (outsideDiameter) => judge({ outsideDiameter }),
    takes: [20.1],
    refuses: [NaN, Infinity],
    says: /^The outside diameter is not a number/,
  },
  {
    code: 'outside-not-positive',
    of: ['outsideDiameter'],
    run: (outsideDiameter) => judge({ boreDiameter: 0, outsideDiameter }),
    takes: [0.001],
    refuses: [0, -1],
    says: /mm across is none\. .* more than 0 mm/,
  },
  {
    code: 'not-a-number',
    of: ['boreDiameter'],
    run: (boreDiameter) => judge({ boreDiameter }),
    takes: [0],
    refuses: [NaN, Infinity],
    says: /^The bore is not a number/,
  },
  {
    code: 'bore-out-of-range',
    of: ['boreDiameter', 'outsideDiameter'],
    run: (boreDiameter) => judge({ boreDiameter }),
    takes: [0, 89.9],
    refuses: [-0.1, 90],
    says: /from 0 mm \(none\) to less than the outside diameter of 90 mm, not /,
  },
  ...(
    [
      ['slotRadius', 'slotRadius', 'radius of the slots'],
      ['slotWidth', 'slotWidth', 'width of the slots'],
      ['slotSweep', 'slotSweep', 'reach of the slots'],
      ['slotAngle', 'slotStart', 'direction of the slots'],
    ] as const
  ).map(([key, name, words]) => ({
    code: 'not-a-number',
    of: [name],
    run: (figure: number) => judge({ boreDiameter: 0, slots: [{ ...slot, [key]: figure }] }),
    takes: [1],
    refuses: [NaN, Infinity],
    says: new RegExp(`^The ${words} is not a number`),
  })),
  ...(['slotRadius', 'slotWidth'] as const).map((name) => ({
    code: 'slot-out-of-range',
    of: ['slotRadius', 'slotWidth'],
    run: (figure: number) => judge({ boreDiameter: 0, slots: [{ ...slot, [name]: figure }] }),
    takes: [2.001],
    refuses: [0, -1],
    says: /a radius and a width of more than 0 mm/,
  })),
  {
    code: 'slot-out-of-range',
    of: ['slotSweep'],
    run: (slotSweep) => judge({ slots: [{ ...slot, slotSweep }] }),
    takes: [0, 90],
    refuses: [-0.1, 90.1],
    says: /from 0° to 90° to either side of its middle, not /,
  },
  {
    // Half of 90 mm less half of a 4 mm drill: 43 mm; half of 20 mm more: 12 mm.
    code: 'hole-off-plate',
    of: ['pitchRadius-1', 'holeAngle-1', 'drill-1', 'outsideDiameter'],
    run: (pitchRadius) => judge({ holes: [{ ...hole, pitchRadius }] }),
    takes: [42.9],
    refuses: [43, 44],
    says: /^Hole 1 of set 1 reaches [01] mm past the rim/,
  },
  {
    code: 'hole-in-bore',
    of: ['pitchRadius-1', 'holeAngle-1', 'drill-1', 'boreDiameter'],
    run: (pitchRadius) => judge({ holes: [{ ...hole, pitchRadius }] }),
    takes: [12.1],
    refuses: [12, 11],
    says: /^Hole 1 of set 1 cuts [01] mm into the bore/,
  },
  {
    code: 'holes-collide',
    of: ['pitchRadius-1', 'holeAngle-1', 'drill-1', 'pitchRadius-2', 'holeAngle-2', 'drill-2'],
    run: (pitchRadius) => judge({ holes: [hole, { ...hole, pitchRadius }] }),
    takes: [34.1, 25.9],
    refuses: [34, 33, 26],
    says: /^Hole 1 of set 1 and hole 2 of set 1 run into each other by [01] mm/,
  },
  {
    code: 'hole-off-plate',
    of: ['slotRadius', 'slotWidth', 'slotSweep', 'slotStart', 'outsideDiameter'],
    run: (slotRadius) => judge({ slots: [{ ...slot, slotRadius }] }),
    takes: [42.9],
    refuses: [43, 44],
    says: /^Slot 1 reaches [01] mm past the rim/,
  },
]);
