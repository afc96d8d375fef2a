import { demoCoil } from '../../demo/coil.ts';
import { dwellInput } from '../cam-inputs.ts';
import { crankSpeeds, currentLimitInput, primaryInputs, speedInput } from '../coil-inputs.ts';
import type { Inputs } from '../../frame/types.ts';

const coil = 'The coil';
const running = 'Running';
const limits = 'Limits';

/** The table has a row for each. */
const MOST_SPEEDS = 8;

export const inputs = {
  volts: {
    kind: 'number',
    group: coil,
    label: 'Voltage at the coil',
    help: 'While current flows, not the figure on the battery.',
    measure:
      'Meter from the coil’s feed terminal to the engine, ignition on, points shut. Be quick: the coil heats.',
    unit: 'V',
    min: 0.5,
    max: 48,
    why: 'no coil for points is fed with less or more',
    default: demoCoil.volts,
    step: 0.5,
    error: 0.2,
  },
  resistance: { ...primaryInputs.resistance, group: coil },
  ballast: { ...primaryInputs.ballast, group: coil },
  inductance: { ...primaryInputs.inductance, group: coil },
  'dwell-angle': { ...dwellInput, group: running, error: 3 },
  rpm: { ...speedInput, group: running },
  speeds: {
    assumed: true,
    kind: 'list',
    group: running,
    label: 'Speeds to compare',
    help: `Up to ${String(MOST_SPEEDS)}, with spaces between.`,
    ...crankSpeeds,
    most: MOST_SPEEDS,
    default: [1000, 3000, 6000, 9000],
    step: 100,
  },
  share: {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: limits,
    label: 'Share of the current wanted',
    help: 'Per cent of what would flow with the points shut for good.',
    unit: '%',
    min: 1,
    max: 99.9,
    why: 'the current creeps towards its final value and never quite reaches it',
    default: 75,
    step: 5,
  },
  'current-limit': { ...currentLimitInput, group: limits },
} as const satisfies Inputs;
