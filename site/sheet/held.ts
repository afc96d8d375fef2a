import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import type { Spot } from '../../calculators/sheet/due.ts';
import { entriesOf, type Engine } from '../../calculators/sheet/model.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { written } from './FigureBox.tsx';
import { standingText } from './typed.ts';

/** The reading that stands: as left, or as found where nothing was done yet. */
export const heldAt = (engine: Engine, { step, index }: Spot): number | null =>
  entriesOf(engine, step)[index] ?? null;

/** What speaks against the reading that stands, in the words of its box. */
export function heldDoubt(engine: Engine, { step, index }: Spot, lengths: LengthDisplay) {
  const { left } = readingOf(engine, step);
  const moment = typeof left[index] === 'number' ? 'left' : 'found';
  const box = { kind: 'reading', step, moment, index } as const;
  const text = standingText(engine, box, written(heldAt(engine, { step, index }) ?? undefined));
  return readNumber(engine, box, text, { lengths }).doubt;
}
