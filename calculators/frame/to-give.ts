import type { Field } from './fields.ts';
import { labelOf } from './rests-on.ts';
import type { AnyCalculator } from './types.ts';
import { inSentence } from './sentence.ts';
import { listed } from './whose-field.ts';

const seriesOf = (calculator: AnyCalculator, { key }: Field): string =>
  calculator.inputs[key] ? key : key.replace(/-\d+$/, '');

/** Names that are put one by one; what is more is counted, and marked in the form. */
const NAMED = 3;

/** What the members of one series are called together: "diameter of hole 1 to 5", "distance 1 to 14". */
function together(calculator: AnyCalculator, members: readonly Field[]): string {
  const [first, last] = [members[0]!, members.at(-1)!];
  const name = inSentence(labelOf(first));
  if (members.length === 1 || labelOf(first) === labelOf(last)) return name;
  const end = /-(\d+)$/.exec(last.key)?.[1] ?? '';
  if (/^\D*\d+$/.test(name)) return `${name} to ${end}`;
  const series = calculator.inputs[seriesOf(calculator, first)]!;
  const row = 'label' in series ? inSentence(series.label) : name;
  return `${row} ${/-(\d+)$/.exec(first.key)?.[1] ?? ''} to ${end}`;
}

/**
 * Fields still to be given, as a reader looks for them: those that the page is about first, the
 * members of a series together, and of many the first few and how many more there are.
 */
export function toGiveWords(calculator: AnyCalculator, missing: readonly Field[]): string {
  const series = (field: Field): string => seriesOf(calculator, field);
  const inHand = (field: Field): boolean => calculator.inHand?.includes(series(field)) ?? false;
  const ordered = [...missing.filter(inHand), ...missing.filter((field) => !inHand(field))];
  const sets = [...new Set(ordered.map(series))].map((key) =>
    ordered.filter((field) => series(field) === key),
  );
  const names = [...new Set(sets.map((members) => together(calculator, members)))];
  if (names.length <= NAMED + 1) return listed(names);
  return listed([...names.slice(0, NAMED), `${String(names.length - NAMED)} more`]);
}
