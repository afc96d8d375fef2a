import { fixed } from '../../calculators/frame/text/format.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';
import type { Row } from './Asked.tsx';
import { mm } from './words.ts';

/** What is known of an engine, as its card tells it. */
export function cardRows({ card, task }: Engine): readonly Row[] {
  const { stroke, rodLength, pinOffset, discDiameter } = card;
  return [
    ['Stroke', mm(stroke, 1)],
    ['Rod, between centres', mm(rodLength, 1)],
    ['Pin offset', mm(pinOffset, 1)],
    ...(hasPoints(task) ? [] : [['Disc across', mm(discDiameter, 0)] as const]),
  ];
}

/** The figures that the task is about. */
export function wantedRows({ card, task }: Engine): readonly Row[] {
  const { target, gap, given, written } = card;
  return [
    ...(hasPoints(task)
      ? ([
          ['Fires before the top', mm(target)],
          ['Points gap', mm(gap)],
        ] as const)
      : []),
    ...(given
      ? ([
          ['The other’s stroke', mm(given.stroke, 1)],
          ['its rod', mm(given.rodLength, 1)],
          ['it fires before the top', mm(given.before)],
        ] as const)
      : []),
    ...(written
      ? [
          [
            `Written for cylinders 1 to ${written.length}, mm`,
            written.map((reading) => fixed(reading, 2)).join('; '),
          ] as const,
        ]
      : []),
  ];
}
