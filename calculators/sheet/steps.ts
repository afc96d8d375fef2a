import type { Stage } from '../frame/stages.ts';
import type { UnitName } from '../frame/units.ts';
import type { FigureKey } from './figures.ts';
import { carburettorSteps } from './steps-carburettor.ts';
import { pointsSteps } from './steps-points.ts';
import { proofSteps } from './steps-proof.ts';
import { startSteps } from './steps-start.ts';

/** How a step's readings are judged. */
export type Judging =
  /** Each against the figure, within the tolerance. */
  | 'figure'
  /** Each against the figure, in crank degrees, with one turn of the plate first. */
  | 'timing'
  /** No reading above the figure. */
  | 'at-most'
  /** Together, against one another. */
  | 'together'
  /** Against nothing. */
  | 'zero'
  /** Angles round the plate: each set against its place when all share one turn evenly. */
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
}

export interface Step {
  readonly stage: Stage;
  readonly title: string;
  readonly why: string;
  readonly how: string;
  readonly tool: string;
  readonly caution?: string;
  /** Boxes to fill; without them the step is ticked. */
  readonly reading?: StepReading;
  /** Figures of the sheet to have at hand. */
  readonly figures?: readonly FigureKey[];
  /** The steps this one depends on, and why a change there makes it to be checked again. */
  readonly after: Readonly<Record<string, string>>;
  readonly calculators: readonly string[];
  readonly articles: readonly string[];
  /** Whether the list of the first start page belongs to it. */
  readonly list?: true;
  /** A calculator's series that means the same as these boxes. */
  readonly series?: Readonly<Record<string, string>>;
}

const all = {
  ...pointsSteps,
  ...carburettorSteps,
  ...proofSteps,
  ...startSteps,
} as const satisfies Record<string, Step>;

export type StepId = keyof typeof all;

/** The order of the job. */
export const order: readonly StepId[] = [
  'measure',
  'top',
  'plate',
  'coil',
  'gap',
  'timing',
  'float',
  'jets',
  'clip',
  'slides',
  'squish',
  'head-volume',
  'exhaust',
  'leak',
  'plug',
  'stop',
  'fuel',
  'start',
  'after',
];

export const steps: Readonly<Record<StepId, Step>> = all;

export const isStepId = (id: string): id is StepId => Object.hasOwn(all, id);

/** The steps that a step depends on, in the order of the job. */
export const needs = (id: StepId): StepId[] =>
  order.filter((other) => Object.hasOwn(steps[id].after, other));

/** What to call the box of one cylinder: "Set 2". */
export const boxName = (reading: StepReading, index: number): string =>
  `${reading.per} ${String(index + 1)}`;
