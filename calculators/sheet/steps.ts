import type { Stage } from '../frame/stages.ts';
import type { UnitName } from '../frame/text/units.ts';
import type { FigureKey } from './figures.ts';
import { cableSteps } from './steps-cables.ts';
import { carburettorSteps } from './steps-carburettor.ts';
import { crankSteps } from './steps-crank.ts';
import { plateSteps } from './steps-plate.ts';
import { pointsSteps } from './steps-points.ts';
import { positionSteps } from './steps-position.ts';
import { proofSteps } from './steps-proof.ts';
import { readySteps } from './steps-ready.ts';
import { sealingSteps } from './steps-sealing.ts';
import { startSteps } from './steps-start.ts';
import { strippingSteps } from './steps-stripping.ts';

/** How a step's readings are judged. */
export type Judging =
  /** Each against the figure, within the tolerance. */
  | 'figure'
  /** Each against the figure, in crank degrees, with one turn of the plate first. */
  | 'timing'
  /** Each against the figure, in crank degrees, with the barrel's move and what it does to the squish. */
  | 'port'
  /** Each against the figure, in crank degrees, with what has to come off the skirt. */
  | 'inlet'
  /** Each against the figure, with what the gasket's move does to the port. */
  | 'squish'
  /** Each against the figure, with what skimming for it does to the squish. */
  | 'volume'
  /** No reading above the figure. */
  | 'at-most'
  /** No reading below the figure. */
  | 'at-least'
  /** Each against the highest, below which none may lie by more than the tolerance. */
  | 'alike'
  /** By nothing: what is written is a record, to go back to. */
  | 'noted'
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
  /** Set where the engine has one of it, however many cylinders: a crank, a plate. */
  readonly once?: true;
  /** The figure that says how many of it the engine has, where that may be fewer than its cylinders. */
  readonly asManyAs?: 'carburettors' | 'condensers' | 'fed-coils';
  readonly unit: UnitName;
  readonly min: number;
  readonly max: number;
  readonly why: string;
  readonly step: number;
  readonly whole?: boolean;
  /** Set where it is often stamped on the part in hundredths of a millimetre. */
  readonly stamped?: boolean;
  /** What is counted, one of it and several. */
  readonly counted?: readonly [one: string, several: string];
  /** About what is read (common practice), where no figure of the sheet says it: another unit is asked about. */
  readonly usual?: number;
  readonly judging: Judging;
  readonly target?: FigureKey;
  readonly tolerance?: FigureKey;
  /** What to do about a reading that is too high, and one too low; followed by the amount. */
  readonly tooHigh: string;
  readonly tooLow: string;
  /** Set where the adjuster of its cable corrects it, so that its thread gives the turns. */
  readonly byThread?: true;
  /** What else the correction moves: said beside it. */
  readonly moves?: string;
  /** Set where it moves that only for a reading that is too high. */
  readonly movesIfHigh?: true;
  /** Set where one turn moves the readings of every cylinder: why those before it tell nothing any more. */
  readonly movesAll?: string;
  /** Set where one of them can also be moved by itself, so that the others stay as they are. */
  readonly movesOne?: true;
}

type Figures = Readonly<Partial<Record<FigureKey, number>>>;

/** An answer of the sheet by which a step falls away. */
export interface FallsAway {
  /** The figure that says so. */
  readonly by: FigureKey;
  readonly when: (answer: number | undefined, figures: Figures) => boolean;
  /** Why, for the line that names what was left out: "the inlet has no reeds". */
  readonly why: string;
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
  /** Why the engine is not fired before it is done: it hurts who stands there, or wrecks the engine, at the first fire. */
  readonly beforeFire?: string;
  /** Whether the engine fires in it: not while an earlier step is to be corrected. */
  readonly fires?: true;
  /** When the engine has no such work; without it every engine has. */
  readonly fallsAway?: FallsAway;
  /** A calculator's result that means the same as a box of this step, by the calculator. */
  readonly takes?: Readonly<Record<string, string>>;
  /** A calculator's series that means the same as these boxes; of some it holds the second on. */
  readonly series?: Readonly<Record<string, string>>;
}

const all = {
  ...positionSteps,
  ...crankSteps,
  ...proofSteps,
  ...sealingSteps,
  ...plateSteps,
  ...pointsSteps,
  ...strippingSteps,
  ...carburettorSteps,
  ...cableSteps,
  ...readySteps,
  ...startSteps,
} as const satisfies Record<string, Step>;

export type StepId = keyof typeof all;

/** The order of the job: the sheet, the home page and the articles all take it from here. */
export const order: readonly StepId[] = [
  'oil',
  'measure',
  'top',
  'run-out',
  'end-float',
  'rod-play',
  'pin-play',
  'clearance',
  'ring-gap',
  'pegs',
  'squish',
  'head-volume',
  'exhaust',
  'inlet',
  'reeds',
  'leak',
  'suction',
  'plate',
  'insulation',
  'plate-fit',
  'condenser',
  'coil',
  'polarity',
  'gap',
  'timing',
  'strip',
  'clean',
  'pilot',
  'float',
  'jets',
  'cutaway',
  'clip',
  'cables',
  'screws',
  'slides',
  'plug',
  'compression',
  'wiring',
  'leads',
  'stop',
  'fuel',
  'start',
  'run',
  'hot',
  'after',
  'hours',
];

export const steps: Readonly<Record<StepId, Step>> = all;

export const isStepId = (id: string): id is StepId => Object.hasOwn(all, id);

/** Whether an engine with these figures has this step. */
export function hasStep(figures: Figures, id: StepId): boolean {
  const { fallsAway } = steps[id];
  return fallsAway === undefined || !fallsAway.when(figures[fallsAway.by], figures);
}

/** The steps of a stage, in the order of the job. */
export const stepsOf = (stage: Stage): StepId[] => order.filter((id) => steps[id].stage === stage);

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
  because.some((other) => other === id || steps[id].readAnew?.includes(other));

/** The steps whose changes make a step to be checked again, in the order of the job. */
export const reopeners = (id: StepId): StepId[] =>
  order.filter((other) => reopening(id, other) !== undefined);

/** Whether there is one for each set of points, which is one for each cylinder unless some share one. */
export const isOfSet = ({ per, judging }: StepReading): boolean =>
  per === 'Set' || judging === 'timing';
