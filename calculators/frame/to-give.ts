import type { Field } from './field/fields.ts';
import { labelOf } from './rests-on.ts';
import type { AnyCalculator, Input } from './types.ts';
import { inSentence } from './text/sentence.ts';
import { listed } from '../maths/numeric/listed.ts';

const seriesOf = (calculator: AnyCalculator, { key }: Field): string =>
  calculator.inputs[key] ? key : key.replace(/-\d+$/, '');

/** Names that are put one by one; what is more is counted, and marked in the form. */
const NAMED = 3;

/** A field's name, with its group where it is there by choice beside another that is called the same. */
function nameOf(calculator: AnyCalculator, field: Field): string {
  const name = inSentence(labelOf(field));
  const key = seriesOf(calculator, field);
  const input = calculator.inputs[key];
  const twice = Object.entries<Input>(calculator.inputs).some(
    ([also, { label, group }]) =>
      also !== key && label === input?.label && group !== undefined && group !== input.group,
  );
  return twice && input?.when && input.group !== undefined
    ? `${name} (${inSentence(input.group)})`
    : name;
}

const numberOf = ({ key }: Field): string => /-(\d+)$/.exec(key)?.[1] ?? '';

/** What the members of one series are called together: "diameter of holes 1 to 5", "top edge of ports 1 and 2". */
function together(calculator: AnyCalculator, members: readonly Field[]): string {
  const [first, last] = [members[0]!, members.at(-1)!];
  const name = nameOf(calculator, first);
  if (members.length === 1 || labelOf(first) === labelOf(last)) return name;
  const series = calculator.inputs[seriesOf(calculator, first)]!;
  const numbered = /^(\D*) \d+$/.exec(name)?.[1];
  const one = numbered ?? inSentence(series.label);
  // What is numbered ends the name of a member, or is what the name of them all says they are of.
  const many = numbered !== undefined || /(^|(of|to) )\p{L}+$/u.test(one) ? `${one}s` : one;
  const joined = members.length === 2 ? 'and' : 'to';
  return `${many} ${numberOf(first)} ${joined} ${numberOf(last)}`;
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
