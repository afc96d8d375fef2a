import { DEMO_CYLINDERS } from '../../demo/engine.ts';
import { demoDrawer } from '../../demo/drawer.ts';
import { demoJets } from '../../demo/jets.ts';
import { choice } from '../../frame/define.ts';
import type { AnyValues, Inputs, SeriesInput } from '../../frame/types.ts';
import { aboutSize, type Bench } from './readings.ts';
import { mainJet } from '../../frame/ranges.ts';

const MOST_JETS = 24;
const MOST_NUMBER = 1000;

const groups = {
  bench: 'How they were measured',
  jets: 'The jets',
  size: 'The size wanted',
} as const;

const byPin = (v: AnyValues): boolean => v.by === 'pin';
const byFlow = (v: AnyValues): boolean => v.by === 'flow';
const byNumber = (v: AnyValues): boolean => v.by === 'number';
const byFlowNumber = (v: AnyValues): boolean => byNumber(v) && v['number-means'] === 'flow';

/** The example’s bag of jets; its first is of the size that the example’s carburettor asks for. */
const ofJets = (of: readonly number[]) =>
  ({
    kind: 'series',
    group: groups.jets,
    most: MOST_JETS,
    count: (v) => v.jets as number,
    default: (index) => of[(index - 1) % of.length]!,
    givesWay: (own, v) => aboutSize(own, of[0]!, v as unknown as Bench),
  }) as const satisfies Partial<SeriesInput>;

export const inputs = {
  jets: {
    assumed: true,
    kind: 'number',
    group: groups.bench,
    label: 'Jets in the bag',
    help: 'How many you have to choose from. Lay them out in a row and number them.',
    unit: 'count',
    min: 1,
    max: MOST_JETS,
    why: 'there must be one to fit, and this page holds two dozen',
    default: demoDrawer.bores.length,
    step: 1,
    whole: true,
  },
  wanted: {
    assumed: true,
    kind: 'number',
    group: groups.bench,
    label: 'Carburettors',
    help: 'How many jets are to agree.',
    unit: 'count',
    min: 1,
    max: 8,
    why: 'every carburettor takes one, and no such engine has more',
    default: DEMO_CYLINDERS,
    step: 1,
    whole: true,
  },
  by: choice({
    assumed: true,
    group: groups.bench,
    label: 'Measured by',
    help: 'A pin shows the narrowest place, a flow what the jet does, a number what its maker meant.',
    options: { pin: 'Pin or gauge', flow: 'Flow', number: 'Number on it' },
    default: 'pin',
  }),
  volume: {
    kind: 'number',
    group: groups.bench,
    label: 'Volume run through',
    help: 'The same through every jet.',
    unit: 'cc',
    min: 1,
    max: 10_000,
    why: 'less is not measured, and more takes all day',
    default: demoDrawer.volume,
    step: 10,
    error: 1,
    when: byFlow,
  },
  head: {
    kind: 'number',
    group: groups.bench,
    label: 'Height of liquid over the jet',
    help: 'From the surface to the jet, kept up while it runs.',
    measure:
      'Screw or press the jet into the foot of a long clear tube, held upright. Mark a line on the tube and pour at the top so that the level stays at it.',
    unit: 'mm',
    min: 10,
    max: 5000,
    why: 'with less the skin of the liquid holds it back, and no bench is higher',
    default: demoDrawer.head,
    step: 10,
    error: 3,
    when: byFlow,
  },
  coefficient: {
    kind: 'number',
    group: groups.bench,
    label: 'Coefficient of discharge',
    help: 'What the shape of the jet lets through: 0.62 for a thin edge, some 0.7 to 0.85 for a bore with a cone before it. It moves every size alike and no spread.',
    measure: 'Run a jet whose bore you know: its coefficient is the one that gives its size.',
    unit: 'none',
    min: 0.3,
    max: 1,
    why: 'no hole passes more than free fall through its whole area, and none so little',
    default: demoDrawer.coefficient,
    step: 0.01,
    error: 0.03,
    when: byFlow,
  },
  'number-means': choice({
    assumed: true,
    group: groups.bench,
    label: 'The number means',
    help: 'Diameter in hundredths of a millimetre, or flow: then twice the number passes twice as much.',
    options: { size: 'Diameter', flow: 'Flow' },
    default: 'size',
    when: byNumber,
  }),
  'known-number': {
    kind: 'number',
    group: groups.bench,
    label: 'Number of a jet you measured',
    help: 'One of the same make.',
    unit: 'none',
    min: 1,
    max: MOST_NUMBER,
    why: 'no scheme of numbers goes further',
    default: demoJets.mainNumber,
    step: 5,
    when: byFlowNumber,
  },
  'known-bore': {
    kind: 'number',
    group: groups.bench,
    label: 'Its bore',
    help: 'By pin.',
    unit: 'mm',
    ...mainJet,
    default: demoJets.main,
    step: 0.01,
    error: 0.01,
    when: byFlowNumber,
  },
  bore: {
    ...ofJets(demoDrawer.bores),
    label: 'Bore',
    help: 'The largest pin that goes in by its own weight.',
    measure:
      'Clean the jet first. Pin gauges, best of copper or brass, or the plain shanks of new drills, in steps of 0.01 mm. The largest that drops in by its own weight is the bore: never push or turn one in the hole. Half of the step to the next pin is the ±.',
    unit: 'mm',
    ...mainJet,
    step: 0.01,
    error: 0.005,
    member: (index) => `Bore of jet ${String(index)}`,
    when: byPin,
  },
  time: {
    ...ofJets(demoDrawer.times),
    label: 'Time',
    help: 'For the volume to run through.',
    measure:
      'Water with a drop of washing-up liquid, at one temperature. Run each jet three times, and take the middle one. Blow it dry after.',
    unit: 's',
    min: 0.5,
    max: 20_000,
    why: 'shorter is not timed by hand, and longer is a blocked jet',
    step: 0.5,
    error: 0.3,
    member: (index) => `Time of jet ${String(index)}`,
    when: byFlow,
  },
  number: {
    ...ofJets(demoDrawer.numbers),
    label: 'Number',
    help: 'As stamped. A jet that was drilled or reamed lies.',
    measure: 'Two new jets of one number differ by some 2 per cent of flow (common practice).',
    unit: 'none',
    min: 1,
    max: MOST_NUMBER,
    why: 'no scheme of numbers goes further',
    step: 1,
    error: 1,
    member: (index) => `Number on jet ${String(index)}`,
    when: byNumber,
  },
  size: {
    kind: 'optional',
    group: groups.size,
    label: 'Size wanted',
    help: 'Diameter that the carburettor asks for. Left empty, the jets are judged against the set alone.',
    unit: 'mm',
    ...mainJet,
    step: 0.01,
  },
  tolerance: {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: groups.size,
    label: 'Reject beyond ±',
    help: 'Per cent of area. New jets of one number are within 2 or 3 (common practice), and the next size is some 4 away.',
    unit: '%',
    min: 0.1,
    max: 50,
    why: 'nothing is measured finer, and with more any jet would do',
    default: 4,
    step: 0.5,
  },
} as const satisfies Inputs;
