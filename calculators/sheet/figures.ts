import { engineInputs } from '../position/engine-inputs.ts';
import type { FieldSpec } from '../frame/field/fields.ts';
import { MOST_CYLINDERS } from '../maths/limits/cylinder-count.ts';
import { carburettorFigures } from './figures-carburettor.ts';
import { crankFigures } from './figures-crank.ts';
import { fittedFigures } from './figures-fitted.ts';
import { ignitionFigures } from './figures-ignition.ts';
import { proofFigures } from './figures-proof.ts';

/** A figure of the engine sheet: defined like an input of a calculator, and always optional. */
/** The figures that are said to be usual are common practice: for an example, and to ask about a slip of the unit. */
export interface SheetFigure extends FieldSpec {
  readonly group: string;
  /** Inputs that mean the same, by calculator. */
  readonly fills?: Readonly<Record<string, string>>;
  /** Of those, the ones where it means the same only while the pin has no offset. */
  readonly fillsWithoutOffset?: readonly string[];
  /** Series of a calculator's other cylinders, from the second on, for which the figure holds too. */
  readonly fillsOthers?: Readonly<Record<string, string>>;
  /** What a calculator is to go by once it has the figure: a choice of its own, and the option. */
  readonly chooses?: Readonly<Record<string, readonly [key: string, option: string]>>;
  /** Set where it stands for one of these, and the last for none: it is chosen and not typed. */
  readonly answers?: Readonly<Record<string, string>>;
  /** Set where every calculator with an input of this key means the same by it. */
  readonly everywhere?: true;
  /** Asked for only from so many sets of points on. */
  readonly sets?: number;
  /** Results that may be sent here, by calculator. */
  readonly takes?: Readonly<Record<string, string>>;
}

const engine = 'The engine';
/** Micrometers, bore gauges and indicators read so fine, mm. */
const READ_TO = 0.01;
export { MOST_CYLINDERS };

const engineFigures = {
  cylinders: {
    group: engine,
    label: 'Cylinders',
    help: 'Each gets its own reading boxes, its own carburettor and its own set of points, unless you say below that it shares one.',
    unit: 'count',
    min: 1,
    max: MOST_CYLINDERS,
    why: 'the sheet has boxes for no more',
    whole: true,
    step: 1,
    fills: {
      'firing-order': 'cylinders',
      'plate-setting': 'cylinders',
      'plate-layout': 'sets',
      'slide-balance': 'slides',
      'float-level': 'carburettors',
      'jet-set': 'wanted',
      compression: 'cylinders',
      'port-timing': 'cylinders',
    },
  },
  bore: {
    group: engine,
    label: 'Cylinder bore',
    help: 'Diameter of the cylinder. One for all cylinders: of bores that differ keep a sheet for each, or enter the one that this sheet is to judge by.',
    measure:
      'Bore gauge or inside micrometer, near the top of the piston’s path and across it, along the crank and square to it. Take the mean; more than 0.05 mm between them is wear to see to first.',
    unit: 'mm',
    min: 10,
    max: 200,
    why: 'smaller or larger than that is not an engine of the kind this site serves',
    step: 0.5,
    reads: READ_TO,
    fills: {
      compression: 'bore',
      'piston-clearance': 'bore',
      'squish-velocity': 'bore',
      'time-area': 'bore',
    },
  },
  stroke: {
    ...engineInputs.stroke,
    group: engine,
    everywhere: true,
    usual: engineInputs.stroke.default,
    reads: READ_TO,
  },
  rod: {
    ...engineInputs.rod,
    help: `${engineInputs.rod.help} One length for all cylinders: rods that differ lift their pistons to different heights. Fit rods alike, or keep a sheet for each length.`,
    group: engine,
    everywhere: true,
    usual: engineInputs.rod.default,
    reads: READ_TO,
  },
  offset: {
    ...engineInputs.offset,
    help: `${engineInputs.offset.help} One for all cylinders: keep a sheet for each that differs.`,
    group: engine,
    everywhere: true,
    reads: READ_TO,
  },
} as const satisfies Record<string, SheetFigure>;

const all = {
  ...engineFigures,
  ...fittedFigures,
  ...ignitionFigures,
  ...carburettorFigures,
  ...crankFigures,
  ...proofFigures,
} as const satisfies Record<string, SheetFigure>;

export type FigureKey = keyof typeof all;

/** Every figure of the sheet, in order. */
export const sheetFigures: Readonly<Record<FigureKey, SheetFigure>> = all;
export const figureKeys = Object.keys(all) as FigureKey[];

export const isFigureKey = (key: string): key is FigureKey => Object.hasOwn(all, key);

/** Which of its answers a figure stands for; none where it is a measure. */
export const answerOf = (key: FigureKey, value: number): string | undefined =>
  sheetFigures[key].answers?.[value];

/** What a figure is as a field: it may be left empty. */
export const figureSpec = (key: FigureKey): FieldSpec => ({
  ...sheetFigures[key],
  optional: true,
});

/** Whether a figure is asked for on an engine with so many sets of points. */
export const appliesTo = (key: FigureKey, sets: number): boolean =>
  sets >= (sheetFigures[key].sets ?? 1);

/** The figures under their headings, in order. */
export const figureGroups: readonly { readonly heading: string; readonly keys: FigureKey[] }[] = [
  ...new Set(figureKeys.map((key) => sheetFigures[key].group)),
].map((heading) => ({
  heading,
  keys: figureKeys.filter((key) => sheetFigures[key].group === heading),
}));
