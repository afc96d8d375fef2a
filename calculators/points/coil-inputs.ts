import { DEMO_SPEED } from '../demo/engine.ts';
import { demoCoil } from '../demo/coil.ts';
import type { NumberInput } from '../frame/types.ts';

/** A number that each calculator puts under a heading of its own, and may tell of in its own words. */
type Shared = Omit<NumberInput, 'group'>;

/** The primary of a coil: asked for alike wherever its current counts. */
export const primaryInputs = {
  resistance: {
    kind: 'number',
    label: 'Primary resistance',
    help: 'Of the winding between the two low-tension terminals.',
    measure:
      'Wires off, coil and workshop at about 20 °C. Hold the meter’s leads together first and take that reading off. Copper has 4 per cent more resistance for 10 °C more, so a hot coil fills to less.',
    unit: 'ohm',
    min: 0.05,
    max: 100,
    why: 'less is a short circuit and more is a broken winding or the secondary',
    default: demoCoil.resistance,
    step: 0.1,
    error: 0.1,
  },
  ballast: {
    assumed: true,
    kind: 'number',
    label: 'Ballast resistance',
    help: 'Resistor, resistance wire and leads in series with the coil. 0 if none.',
    unit: 'ohm',
    min: 0,
    max: 100,
    why: 'a resistor cannot be less than nothing, and more leaves no current',
    default: 0,
    step: 0.1,
  },
  inductance: {
    kind: 'number',
    label: 'Primary inductance',
    help: 'Coils for points have some 2 to 15 mH.',
    measure:
      'With an inductance meter across the primary, at its lowest frequency, secondary open. Or watch the current on an oscilloscope: it reaches 63 per cent of its final value after inductance ÷ resistance.',
    unit: 'mH',
    min: 0.05,
    max: 1000,
    why: 'less stores nothing and more is not an ignition coil',
    default: demoCoil.inductance,
    step: 0.5,
    error: 0.4,
  },
} as const satisfies Record<string, Shared>;

/** Speeds of the crank at which points work. */
export const crankSpeeds = {
  unit: 'rpm',
  min: 50,
  max: 30_000,
  why: 'slower is slower than a kick, and no such engine turns faster',
} as const satisfies Partial<Shared>;

/** The speed of the crank that is asked about. */
export const speedInput = {
  assumed: true,
  kind: 'number',
  label: 'Speed',
  help: 'Of the crank.',
  ...crankSpeeds,
  default: DEMO_SPEED,
  step: 100,
} as const satisfies Shared;

/** The most that a coil may draw with its points shut for good. */
export const currentLimitInput = {
  assumed: true,
  judgesBy: true,
  kind: 'number',
  label: 'Largest standing current',
  help: 'What coil and contacts stand. Around 4 A is common practice for contacts.',
  unit: 'A',
  min: 0.05,
  max: 100,
  why: 'without current there is no spark, and no contacts break more',
  default: demoCoil.limit,
  step: 0.5,
} as const satisfies Shared;
