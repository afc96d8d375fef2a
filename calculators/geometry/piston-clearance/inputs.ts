import { onStep } from '../../maths/numeric/steps.ts';
import { demoBarrel } from '../../demo/barrel.ts';
import { demoClearance } from '../../demo/clearance.ts';
import type { AnyValues, Inputs } from '../../frame/types.ts';
import { expansions } from '../../maths/cylinder/expansion.ts';
import { FIT } from '../fits.ts';

/** Share of the bore: a piston with more clearance belongs to another barrel. */
const NO_PISTON = 0.01;

const parts = 'Bore and piston, on the bench';
const heat = 'Metals and heat';
const ring = 'The ring';
const readings = 'Round and straight: readings of the bore';
const oversize = 'The next oversize';

const MOST_LEVELS = 5;

const levels = (v: AnyValues): number => v.levels as number;
const level = (index: number): string => `height ${String(index)}`;

/** Readings that nobody gave stand as far above the bore as the demo's do above its own. */
const near =
  (above: readonly number[]) =>
  (index: number, v: AnyValues): number =>
    Number(((v.bore as number) + (above[index - 1] ?? 0)).toFixed(4));

const expansion = {
  kind: 'number',
  group: heat,
  unit: 'ppm/K',
  min: 0,
  max: 60,
  why: 'no metal of an engine grows more',
  step: 0.5,
} as const;

const temperature = {
  kind: 'number',
  group: heat,
  unit: 'degC',
  min: -40,
  max: 450,
  why: 'colder nobody rides, and hotter the piston is gone',
  step: 5,
} as const;

const diameter = {
  unit: 'mm',
  min: 10,
  max: 200,
  why: 'smaller or larger than that is not an engine of the kind this page serves',
  step: 0.01,
} as const;

export const inputs = {
  bore: {
    ...diameter,
    kind: 'number',
    group: parts,
    label: 'Bore',
    help: 'Its diameter where the skirt runs: the least of its readings.',
    measure:
      'Bore gauge set with the micrometer that measures the piston, so that the error of the micrometer drops out. Clear of the ports. Barrel and piston an hour on the same bench.',
    default: demoBarrel.bore,
    error: 0.01,
  },
  piston: {
    ...diameter,
    kind: 'number',
    group: parts,
    label: 'Piston',
    help: 'Diameter of the skirt at the height the maker gives, square to the gudgeon pin; else at its widest.',
    measure:
      'Micrometer on the skirt, square to the pin. A piston is neither round nor straight: try a little further up and down, and take the largest.',
    default: demoClearance.piston,
    givesWay: (own, values) => {
      const bore = values['bore'] as number;
      const clearance = bore - own;
      return clearance > 0 && clearance < NO_PISTON * bore
        ? undefined
        : onStep((bore * demoClearance.piston) / demoBarrel.bore, 0.001);
    },
    error: 0.005,
  },
  'measured-at': {
    ...temperature,
    assumed: true,
    group: parts,
    label: 'Measured at',
    help: 'Temperature of bench, barrel and piston.',
    max: 60,
    why: 'nobody measures where it is colder or hotter',
    default: 20,
    step: 1,
  },
  least: {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: parts,
    label: 'Least clearance wanted',
    help: 'Thousandths of the bore. From 1.0 for an aluminium piston in air-cooled iron is common practice; the maker’s figure rules.',
    unit: '‰',
    min: 0,
    max: 20,
    why: 'less is none, and more is the wrong piston',
    default: FIT.least,
    step: 0.1,
  },
  most: {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: parts,
    label: 'Most clearance wanted',
    help: 'To 1.5 is common practice. More for a forged piston or hard use, less for a cast one with much silicon.',
    unit: '‰',
    min: 0.1,
    max: 30,
    why: 'less leaves no room to hone, and more is the wrong piston',
    default: FIT.most,
    step: 0.1,
  },
  'bore-expansion': {
    ...expansion,
    label: 'Expansion of the bore',
    help: `Iron ${String(expansions.iron)}, aluminium ${String(expansions.aluminium)}: where a liner is cast or pressed into aluminium, that of the liner.`,
    default: expansions.iron,
    error: 0.5,
  },
  'bore-temperature': {
    ...temperature,
    assumed: true,
    judgesBy: true,
    label: 'Bore, running',
    help: 'Where the skirt runs. 90 to 150 °C air-cooled, 80 to 100 °C water-cooled, common practice.',
    default: 110,
    error: 10,
  },
  'piston-expansion': {
    ...expansion,
    label: 'Expansion of the piston',
    help: `Cast with 12% of silicon ${String(expansions.piston)}, with 18% ${String(expansions.siliconPiston)}, forged with little ${String(expansions.forgedPiston)}.`,
    default: expansions.piston,
    error: 0.5,
  },
  'piston-temperature': {
    ...temperature,
    assumed: true,
    judgesBy: true,
    label: 'Piston, running',
    help: 'Of the skirt. 10 to 40 °C above its bore is common practice; much more when it runs weak or knocks.',
    default: 120,
    error: 10,
  },
  'ring-gap': {
    kind: 'number',
    group: ring,
    label: 'Ring gap',
    help: 'Between the ends of the ring, square in the bore where it is least worn.',
    measure:
      'Push the ring down with the crown of the piston so that it lies square. Feeler gauges between its ends. Of two rings, the narrower.',
    unit: 'mm',
    min: 0,
    max: 1,
    why: 'less is none, and a ring with more is worn out or none for this bore',
    default: demoClearance.ringGap,
    step: 0.01,
    error: 0.02,
  },
  'ring-expansion': {
    ...expansion,
    group: ring,
    label: 'Expansion of the ring',
    help: `Iron ${String(expansions.iron)}; steel the same within a tenth.`,
    default: expansions.iron,
    error: 0.5,
  },
  'ring-temperature': {
    ...temperature,
    assumed: true,
    judgesBy: true,
    group: ring,
    label: 'Ring, running',
    help: 'Between piston and bore: 20 to 60 °C above the bore is common practice.',
    default: 150,
    error: 15,
  },
  levels: {
    assumed: true,
    kind: 'number',
    group: readings,
    label: 'Heights measured',
    help: 'Three at the least: above the ports, between, and below.',
    unit: 'count',
    min: 1,
    max: MOST_LEVELS,
    why: 'one tells of no taper, and more tell nothing new',
    default: demoClearance.heights.length,
    whole: true,
    step: 1,
  },
  height: {
    assumed: true,
    kind: 'series',
    group: readings,
    label: 'Below the deck',
    member: (index) => `Below the deck, ${level(index)}`,
    help: 'How far down the bore was measured.',
    unit: 'mm',
    min: 0,
    max: 300,
    why: 'no barrel of this kind is longer',
    count: levels,
    most: MOST_LEVELS,
    default: (index) => demoClearance.heights[index - 1] ?? 15 * index,
    step: 1,
  },
  along: {
    ...diameter,
    kind: 'series',
    group: readings,
    label: 'Along the crank',
    member: (index) => `Along the crank, ${level(index)}`,
    help: 'Diameter in line with the crankshaft.',
    count: levels,
    most: MOST_LEVELS,
    default: near(demoClearance.along),
    error: 0.01,
  },
  across: {
    ...diameter,
    kind: 'series',
    group: readings,
    label: 'Across the crank',
    member: (index) => `Across the crank, ${level(index)}`,
    help: 'Diameter square to the crankshaft, where the rod presses the piston against the wall.',
    count: levels,
    most: MOST_LEVELS,
    default: near(demoClearance.across),
    error: 0.01,
  },
  'wear-limit': {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: readings,
    label: 'Most taper or ovality',
    help: '0.05 mm is common practice; the maker’s limit rules.',
    unit: 'mm',
    min: 0.005,
    max: 1,
    why: 'nobody hones closer, and with more no ring seals',
    default: 0.05,
    step: 0.01,
  },
  standard: {
    ...diameter,
    kind: 'number',
    group: oversize,
    label: 'Standard bore',
    help: 'Its diameter when new, of the size that is stamped or listed.',
    default: demoClearance.standard,
    step: 0.5,
  },
  'oversize-step': {
    assumed: true,
    kind: 'number',
    group: oversize,
    label: 'From one oversize to the next',
    help: '0.25 mm is common practice; some pistons come in 0.5 mm.',
    unit: 'mm',
    min: 0.05,
    max: 2,
    why: 'pistons come in no finer steps, and no barrel has metal for more',
    default: 0.25,
    step: 0.05,
  },
  'clean-up': {
    assumed: true,
    kind: 'number',
    group: oversize,
    label: 'Taken off by boring and honing',
    help: 'On the diameter, at the widest place, until every mark is gone. More where it is scored.',
    unit: 'mm',
    min: 0,
    max: 2,
    why: 'nothing is the least, and no barrel has metal for more',
    default: 0.05,
    step: 0.01,
  },
} as const satisfies Inputs;

/** Groups that stay shut until asked for. */
export const folded = [readings, oversize];
