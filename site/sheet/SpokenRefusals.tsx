import { useContext } from 'preact/hooks';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { boxAt } from '../../calculators/sheet/box-places.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { readNumber, type HowToRead } from '../../calculators/sheet/read-number.ts';
import { readOrder } from '../../calculators/sheet/read-order.ts';
import { Spoken } from '../browser/Spoken.tsx';
import { SheetSums } from './sheet-sums.ts';

/** What is wrong with a text that could not be read, under the name of its box. */
function refusalAt(engine: Engine, place: string, how: HowToRead): string[] {
  const box = boxAt(place);
  const text = engine.unread[place]!;
  if (box === undefined || box.kind === 'name' || box.kind === 'notes') return [];
  const { spec, problem } =
    box.kind === 'order' ? readOrder(engine, text, how) : readNumber(engine, box, text, how);
  return problem === undefined ? [] : [`${spec.label}: ${problem}`];
}

/** Reads what is refused in the list of the sheet to those who hear the page. */
export function SpokenRefusals({ engine, lengths }: { engine: Engine; lengths: LengthDisplay }) {
  const sums = useContext(SheetSums);
  const how = { lengths, sums };
  return (
    <Spoken lines={Object.keys(engine.unread).flatMap((place) => refusalAt(engine, place, how))} />
  );
}
