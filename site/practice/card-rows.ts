import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';
import type { Row } from './Asked.tsx';
import { length, onDial } from './words.ts';

/** What is known of an engine, as its card tells it. */
export function cardRows({ card, task }: Engine, lengths: LengthDisplay): readonly Row[] {
  const { stroke, rodLength, pinOffset, discDiameter } = card;
  return [
    ['Stroke', length(stroke, lengths, 1)],
    ['Rod, between centres', length(rodLength, lengths, 1)],
    ['Pin offset', length(pinOffset, lengths, 1)],
    ...(hasPoints(task) ? [] : [['Disc across', length(discDiameter, lengths, 0)] as const]),
  ];
}

/** The figures that the task is about. */
export function wantedRows({ card, task }: Engine, lengths: LengthDisplay): readonly Row[] {
  const { target, gap, given, written } = card;
  return [
    ...(hasPoints(task)
      ? ([
          ['Fires before the top', onDial(target, lengths)],
          ['Points gap', length(gap, lengths)],
        ] as const)
      : []),
    ...(given
      ? ([
          ['The other’s stroke', length(given.stroke, lengths, 1)],
          ['its rod', length(given.rodLength, lengths, 1)],
          ['it fires before the top', onDial(given.before, lengths)],
        ] as const)
      : []),
    ...(written
      ? [
          [
            `Written for cylinders 1 to ${written.length}`,
            written.map((reading) => onDial(reading, lengths)).join('; '),
          ] as const,
        ]
      : []),
  ];
}
