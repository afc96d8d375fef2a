/** The tasks of the practice bench. A name is a part of the address and never changes its meaning. */
export const crankTasks = [
  'stop',
  'heights',
  'disc',
  'figure',
  'gap',
  'heel',
  'plate',
  'spacing',
  'reading',
] as const;
export const carburettorTasks = ['slides', 'float'] as const;
export const taskNames = [...crankTasks, ...carburettorTasks] as const;

export type CrankTask = (typeof crankTasks)[number];
export type TaskName = (typeof taskNames)[number];

export const isCrankTask = (name: TaskName): name is CrankTask =>
  (crankTasks as readonly string[]).includes(name);

/** Whether points and lamp have a part in a task. */
export const hasPoints = (name: CrankTask): boolean =>
  !['stop', 'heights', 'disc', 'figure'].includes(name);

/** A place in an article: its slug, and the heading if not its beginning. */
export interface Reading {
  readonly article: string;
  readonly heading?: string;
}

export interface Task {
  readonly title: string;
  readonly aim: string;
  /** How near is near enough, crank degrees or mm as `unit` says. */
  readonly tolerance: number;
  readonly unit: 'deg' | 'mm' | 'none';
  /** What is within the tolerance when it is right, in words. */
  readonly within: string;
  readonly read: readonly Reading[];
  /** Slugs of the calculators that the task calls for. */
  readonly calculators: readonly string[];
  readonly cylinders: number;
}

/** How far a gap may lie beside its figure, mm. */
export const GAP_TOLERANCE = 0.03;

const top = 'finding-top-dead-centre';
const gap = 'gap-dwell-and-timing';
const several = 'setting-several-cylinders';

export const tasks: Readonly<Record<TaskName, Task>> = {
  stop: {
    title: 'Find the top by a stop',
    aim: 'The disc was set to 0 at what looked like the top. Find the true top with the positive stop, and shift the disc until it shows 0 there.',
    tolerance: 0.5,
    unit: 'deg',
    within: 'what the disc shows at the true top',
    read: [{ article: top, heading: 'positive-stop' }],
    calculators: ['find-tdc'],
    cylinders: 1,
  },
  heights: {
    title: 'Find the top by equal heights',
    aim: 'There is no stop. Find the true top with the indicator at equal heights, and shift the disc until it shows 0 there. The big end has play.',
    tolerance: 0.5,
    unit: 'deg',
    within: 'what the disc shows at the true top',
    read: [{ article: top, heading: 'equal-heights' }],
    calculators: ['find-tdc'],
    cylinders: 1,
  },
  disc: {
    title: 'A disc off centre',
    aim: 'The hole of this disc is not in its middle, so its degrees are crowded on one side. Read both pointers, which stand opposite each other, find the true top, and leave the disc showing 0 at pointer A there.',
    tolerance: 0.5,
    unit: 'deg',
    within: 'what pointer A shows at the true top',
    read: [{ article: top, heading: 'how-wrong-each-is' }],
    calculators: ['find-tdc', 'degree-disc'],
    cylinders: 1,
  },
  figure: {
    title: 'Carry a figure from another engine',
    aim: 'The timing was given for another engine. Turn it into a travel of this piston, and leave the crank standing there before the top, come to forwards.',
    tolerance: 0.5,
    unit: 'deg',
    within: 'where the crank stands',
    read: [
      { article: 'where-the-piston-is', heading: 'carry-the-angle-across-not-the-millimetres' },
    ],
    calculators: ['piston-position'],
    cylinders: 1,
  },
  gap: {
    title: 'Gap, then time one cylinder',
    aim: 'Set the gap, then the timing, of one cylinder.',
    tolerance: 1,
    unit: 'deg',
    within: 'the timing',
    read: [{ article: gap, heading: 'gap-first-then-timing' }],
    calculators: ['piston-position', 'plate-setting'],
    cylinders: 1,
  },
  heel: {
    title: 'What a worn heel did',
    aim: 'This engine was right when it was last set, and nobody has moved plate or set since. The heel has worn. Put gap and timing right with as little work as will do.',
    tolerance: 1,
    unit: 'deg',
    within: 'the timing',
    read: [{ article: gap, heading: 'what-wear-does' }],
    calculators: ['breaker-cam', 'piston-position'],
    cylinders: 1,
  },
  plate: {
    title: 'Time three from one plate',
    aim: 'Three sets on one plate. Gap them, then bring all three cylinders to the same timing with the plate and the slots.',
    tolerance: 1,
    unit: 'deg',
    within: 'each timing',
    read: [{ article: several, heading: 'the-order-of-work' }],
    calculators: ['plate-setting'],
    cylinders: 3,
  },
  spacing: {
    title: 'A plate made 1° out',
    aim: 'On this plate the holes of one set were drilled 1° from where they belong. The gaps are right. Find the set, and bring all three cylinders together.',
    tolerance: 0.4,
    unit: 'deg',
    within: 'each timing',
    read: [{ article: several, heading: 'how-far-to-turn-the-plate' }],
    calculators: ['plate-setting'],
    cylinders: 3,
  },
  reading: {
    title: 'Which reading was bad?',
    aim: 'Somebody has measured four cylinders and written down where they fire. One of the four readings is bad. Measure as you see fit, and say which.',
    tolerance: 0,
    unit: 'none',
    within: 'the reading you name',
    read: [{ article: several, heading: 'turn-one-way-only' }],
    calculators: ['piston-position'],
    cylinders: 4,
  },
  slides: {
    title: 'Balance the slides',
    aim: 'Bring three slides to the same opening by their adjusters. Drill shanks tell how far each is open.',
    tolerance: 0.1,
    unit: 'mm',
    within: 'each slide at the figure given',
    read: [{ article: 'opening-all-slides-together' }],
    calculators: ['slide-balance'],
    cylinders: 3,
  },
  float: {
    title: 'Set a float',
    aim: 'Bend the tang until the fuel stands as high as it should, with the carburettor upright and filled.',
    tolerance: 0.5,
    unit: 'mm',
    within: 'the fuel level',
    read: [{ article: 'float-height-and-fuel-level' }],
    calculators: ['float-level'],
    cylinders: 1,
  },
};
