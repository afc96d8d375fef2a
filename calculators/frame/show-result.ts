import { proseIn } from './prose.ts';
import { showFigure, type Shown } from './format.ts';
import type { ResultSpec, ResultValue } from './types.ts';
import type { LengthDisplay } from './units.ts';

/** A result's label and help, and the figure for one of them, in the reader's lengths. */
export function wordsOf(
  spec: ResultSpec,
  lengths: LengthDisplay,
): { readonly label: string; readonly help: string } {
  const { label, help } = spec;
  if (lengths === 'in' && spec.inInches) return spec.inInches;
  return { label: proseIn(label, lengths), help: proseIn(help, lengths) };
}

/** A result as it is shown. `column` holds all figures of its column, which share a unit. */
export function showResult(
  value: number,
  spec: ResultSpec,
  spread: number | undefined,
  lengths: LengthDisplay,
  column?: ResultValue,
): Shown {
  const times = lengths === 'in' ? (spec.inInches?.times ?? 1) : 1;
  return showFigure(
    value * times,
    spec.unit,
    spec.decimals,
    lengths,
    spread === undefined ? undefined : spread * times,
    { ...spec, among: Array.isArray(column) ? (column as readonly number[][]).flat() : [] },
  );
}
