import { DEMO_CYLINDERS } from '../demo/engine.ts';
import type { AnyValues, NumberInput, SeriesInput } from '../frame/types.ts';

/** Heading of what is asked about the cylinders other than the first. */
export const others = 'The other cylinders';

export const several = (values: AnyValues): boolean => (values['cylinders'] as number) > 1;

/** How many cylinders a calculator sets beside one another. */
export const cylindersInput = {
  kind: 'number',
  group: others,
  label: 'Cylinders to compare',
  help: 'The figures above are of cylinder 1.',
  unit: 'count',
  min: 1,
  max: 8,
  why: 'the comparison holds no more cylinders',
  default: DEMO_CYLINDERS,
  whole: true,
  step: 1,
} as const satisfies NumberInput;

/** What every figure that is asked of each cylinder but the first has in common. */
export const ofOthers = {
  kind: 'series',
  group: others,
  count: (values) => (values['cylinders'] as number) - 1,
  most: 7,
  first: 2,
  when: several,
} as const satisfies Partial<SeriesInput>;
