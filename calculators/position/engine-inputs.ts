import { demoEngine } from '../demo/engine.ts';
import { demoTiming } from '../demo/timing.ts';
import type { NumberInput } from '../frame/types.ts';

export { demoEngine };

const group = 'The engine';

/** Stroke, rod and pin offset: asked for alike by every calculator that needs the piston's place. */
export const engineInputs = {
  stroke: {
    kind: 'number',
    group,
    label: 'Stroke',
    help: 'Twice the throw of the crank.',
    measure:
      'With the head off, set a depth gauge or an indicator on the deck, take the reading at top and at bottom dead centre, and subtract. Or measure the crank from the centre of the main journal to the centre of the crank pin and double it.',
    unit: 'mm',
    min: 10,
    max: 200,
    why: 'smaller or larger than that is not a piston engine of the kind this page serves',
    default: demoEngine.stroke,
    step: 0.5,
    error: 0.05,
  },
  rod: {
    kind: 'number',
    group,
    label: 'Rod length',
    help: 'Between the centres of the big end and the little end.',
    measure:
      'Measure the gap between the two bores and add half of each bore. On a rod still in the engine: find the piston position at 90° of a disc set to true top dead centre, and try lengths in the calculator Piston position until the travel agrees. A disc read to a quarter of a degree leaves the rod unknown by some three parts in a hundred, which moves the timing by little.',
    unit: 'mm',
    min: 10,
    max: 500,
    why: 'shorter or longer than that is not a rod of such an engine',
    default: demoEngine.rod,
    step: 0.5,
    error: 0.1,
  },
  offset: {
    assumed: true,
    kind: 'number',
    group,
    label: 'Pin offset',
    help: 'How far the pin stands from the line of the crank centre. Positive towards the side to which the big end moves after the top. 0 if you know of none.',
    measure:
      'Measure from the edge of the pin bore to the piston skirt on each side; the offset is half the difference. Add any offset of the bore itself from the crank centre.',
    unit: 'mm',
    min: -30,
    max: 30,
    why: 'no piston is built with its pin further out',
    default: demoEngine.offset,
    step: 0.5,
  },
} as const satisfies Record<string, NumberInput>;

/** A rotor, flywheel or disc with marks on its rim. */
export const rotorInput = {
  kind: 'number',
  label: 'Rotor diameter',
  unit: 'mm',
  min: 10,
  max: 450,
  why: 'smaller or larger than that is no rotor, flywheel or disc of such an engine',
  default: demoTiming.rotor,
  step: 1,
  error: 0.1,
} as const satisfies Omit<NumberInput, 'help'>;

/** From the maths package's names to these inputs' keys. */
export const engineFields = { stroke: 'stroke', rodLength: 'rod', pinOffset: 'offset' } as const;

/** The inputs as the maths package takes them. */
export const sliderCrank = (values: { stroke: number; rod: number; offset: number }) => ({
  stroke: values.stroke,
  rodLength: values.rod,
  pinOffset: values.offset,
});
