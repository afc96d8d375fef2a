import { fixed } from '../../calculators/frame/format.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';
import { mm } from './words.ts';

type Row = readonly [name: string, value: string];

/** What is known of an engine, as its card tells it. */
export function cardRows({ card, task }: Engine): readonly Row[] {
  const { stroke, rodLength, pinOffset, target, gap, discDiameter, given, written } = card;
  const rows: Row[] = [
    ['Stroke', mm(stroke, 1)],
    ['Rod, between centres', mm(rodLength, 1)],
    ['Pin offset', mm(pinOffset, 1)],
  ];
  if (hasPoints(task)) rows.push(['Fires before the top', mm(target)], ['Points gap', mm(gap)]);
  else rows.push(['Disc across', mm(discDiameter, 0)]);
  if (given) {
    rows.push(
      ['The other engine', `stroke ${mm(given.stroke, 1)}, rod ${mm(given.rodLength, 1)}`],
      ['It fires before the top', mm(given.before)],
    );
  }
  written?.forEach((reading, i) =>
    rows.push([`Written for cylinder ${i + 1}`, `${fixed(reading, 2)} mm`]),
  );
  return rows;
}
