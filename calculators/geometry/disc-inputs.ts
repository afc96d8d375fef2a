import type { AnyValues, NumberInput } from '../frame/types.ts';

/** When a disc valve opens and closes: asked for alike by every calculator that needs it. */
export const discInputs = (when: (values: AnyValues) => boolean) =>
  ({
    'disc-opens': {
      kind: 'number',
      group: 'Inlet',
      label: 'Disc opens',
      help: 'Degrees before top dead centre at which the disc begins to uncover its window.',
      measure:
        'Degree disc set to true top dead centre; watch the edge of the disc pass the window.',
      unit: 'deg',
      min: 1,
      max: 270,
      why: 'the crankcase draws while the piston rises, and that begins no earlier',
      default: 130,
      step: 1,
      error: 1,
      when,
    },
    'disc-closes': {
      kind: 'number',
      group: 'Inlet',
      label: 'Disc closes',
      help: 'Degrees after top dead centre at which the disc has covered its window.',
      unit: 'deg',
      min: 1,
      max: 180,
      why: 'after bottom dead centre it would blow back for good',
      default: 55,
      step: 1,
      error: 1,
      when,
    },
  }) as const satisfies Record<string, NumberInput>;
