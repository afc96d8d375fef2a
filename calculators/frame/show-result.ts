import { proseIn } from './text/prose.ts';
import { orderFigure } from './text/order.ts';
import { showFigure, type Shown } from './text/format.ts';
import { Absent, type ResultSpec, type ResultValue } from './types.ts';
import type { LengthDisplay } from './text/units.ts';

/** A result's label and help, and the figure for one of them, in the reader's lengths. */
export function wordsOf(
  spec: ResultSpec,
  lengths: LengthDisplay,
): Pick<ResultSpec, 'label' | 'short' | 'help'> {
  if (lengths === 'in' && spec.inInches) return spec.inInches;
  const { label, short, help } = spec;
  return {
    label: proseIn(label, lengths),
    help: proseIn(help, lengths),
    ...(short === undefined ? {} : { short: proseIn(short, lengths) }),
  };
}

/** What stands for a result that is not there: there is none of it, or the figures give no answer. */
export const wordForNothing = (value: ResultValue | undefined): string =>
  value instanceof Absent && value.at === undefined ? 'none' : 'no answer';

/** A result as it is shown. `column` holds all figures of its column, which share a unit. */
export function showResult(
  value: number,
  spec: ResultSpec,
  spread: number | undefined,
  lengths: LengthDisplay,
  column?: ResultValue,
): Shown {
  if (spec.isOrder) return { figure: orderFigure(value), unit: spec.unit };
  const times = lengths === 'in' ? (spec.inInches?.times ?? 1) : 1;
  return showFigure(
    (spec.sided ? Math.abs(value) : value) * times,
    spec.unit,
    spec.decimals,
    lengths,
    spread === undefined ? undefined : spread * times,
    {
      ...spec,
      signed: spec.signed === true && spec.sided !== true,
      among: Array.isArray(column) ? (column as readonly number[][]).flat() : [],
    },
  );
}
