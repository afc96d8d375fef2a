import type { Stage } from '../frame/stages.ts';
import type { UnitName } from '../frame/units.ts';
import type { FigureKey } from './figures.ts';
import { carburettorSteps } from './steps-carburettor.ts';
import { pointsSteps } from './steps-points.ts';
import { positionSteps } from './steps-position.ts';
import { proofSteps } from './steps-proof.ts';
import { startSteps } from './steps-start.ts';

/** How a step's readings are judged. */
export type Judging =
  /** Each against the figure, within the tolerance. */
  | 'figure'
  /** Each against the figure, in crank degrees, with one turn of the plate first. */
  | 'timing'
  /** Each against the figure, in crank degrees, with the barrel's move and what it does to the squish. */
  | 'port'
  /** Each against the figure, with what the gasket's move does to the port. */
  | 'squish'
  /** Each against the figure, with what skimming for it does to the squish. */
  | 'volume'
  /** No reading above the figure. */
  | 'at-most'
  /** Together, against one another. */
  | 'together'
  /** Against nothing. */
  | 'zero'
  /** Angles round the plate: each set against the direction in which the sheet has it. */
  | 'spacing';

export interface StepReading {
  /** What is read, such as "Gap". */
  readonly label: string;
  /** What each box stands for: "Cylinder", "Set", "Carburettor". */
  readonly per: string;
  readonly unit: UnitName;
  readonly min: number;
  readonly max: number;
  readonly why: string;
  readonly step: number;
  readonly whole?: boolean;
  readonly judging: Judging;
  readonly target?: FigureKey;
  readonly tolerance?: FigureKey;
  /** What to do about a reading that is too high, and one too low; followed by the amount. */
  readonly tooHigh: string;
  readonly tooLow: string;
  /** What else the correction moves: said beside it. */
  readonly moves?: string;
}

export interface Step {
  readonly stage: Stage;
  readonly title: string;
  readonly why: string;
  /** What to do, one act after another. */
  readonly how: readonly string[];
  readonly tool: string;
  readonly caution?: string;
  /** Boxes to fill; without them the step is ticked. */
  readonly reading?: StepReading;
  /** Figures of the sheet to have at hand. */
  readonly figures?: readonly FigureKey[];
  /** Earlier steps this one depends on, and why a change there makes it to be checked again. */
  readonly after: Readonly<Partial<Record<string, string>>>;
  /** Earlier steps that come first, though a change there moves nothing here. */
  readonly waitsFor?: readonly string[];
  /**
   * Later steps whose work moves this one, and why. Only steps with readings: a reading as found
   * alters nothing, so that the job done once from top to bottom reopens nothing.
   */
  readonly movedBy?: Readonly<Partial<Record<string, string>>>;
  /** Of those, the ones after which no look settles it: it has to be measured and written anew. */
  readonly readAnew?: readonly string[];
  /** Earlier steps that this one is measured by: while one is to correct at a cylinder, nothing is said of this there. */
  readonly measuredBy?: readonly string[];
  readonly calculators: readonly string[];
  readonly articles: readonly string[];
  /** Whether the list of the first start page belongs to it. */
  readonly list?: true;
  /** A calculator's series that means the same as these boxes; of some it holds the second on. */
  readonly series?: Readonly<Record<string, string>>;
}

const all = {
  ...positionSteps,
  ...proofSteps,
  ...pointsSteps,
  ...carburettorSteps,
  ...startSteps,
} as const satisfies Record<string, Step>;

export type StepId = keyof typeof all;

/** The order of the job. */
export const order: readonly StepId[] = [
  'oil',
  'measure',
  'top',
  'clearance',
  'ring-gap',
  'squish',
  'head-volume',
  'exhaust',
  'leak',
  'plate',
  'coil',
  'gap',
  'timing',
  'float',
  'jets',
  'clip',
  'screws',
  'slides',
  'plug',
  'leads',
  'stop',
  'fuel',
  'start',
  'after',
];

export const steps: Readonly<Record<StepId, Step>> = all;

export const isStepId = (id: string): id is StepId => Object.hasOwn(all, id);

/** The steps that come before a step, in the order of the job: what it waits for. */
export const needs = (id: StepId): StepId[] => {
  const { after, waitsFor = [] } = steps[id];
  return order.filter((other) => Object.hasOwn(after, other) || waitsFor.includes(other));
};

/** Why a change at one step makes another to be checked again; nothing where it does not. */
export const reopening = (id: StepId, by: StepId): string | undefined =>
  steps[id].after[by] ?? steps[id].movedBy?.[by];

/** Whether a step moved by these is settled by a new reading only. */
export const needsReading = (id: StepId, because: readonly StepId[]): boolean =>
  because.some((other) => steps[id].readAnew?.includes(other));

/** The steps whose changes make a step to be checked again, in the order of the job. */
export const reopeners = (id: StepId): StepId[] =>
  order.filter((other) => reopening(id, other) !== undefined);

/** What to call the box of one cylinder: "Set 2". */
export const boxName = (reading: StepReading, index: number): string =>
  `${reading.per} ${String(index + 1)}`;
