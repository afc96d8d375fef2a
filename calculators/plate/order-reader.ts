import { listed } from '../maths/numeric/listed.ts';
import { MOST_CYLINDERS } from '../maths/limits/cylinder-count.ts';
import type { OrderReader } from '../frame/field/fields.ts';
import { quote } from '../frame/field/parse.ts';
import { firedByEach, orderText } from '../frame/text/order.ts';

/** What may stand between the numbers: blanks, commas, dots, strokes, arrows and dashes of any kind. */
const BETWEEN = /(?:[\s,;:.·•/|→⇒⟶>−]|\p{Pd})+/u;

/** Between cylinders that fire together. */
const TOGETHER = /\s*[+&]\s*/g;

/**
 * The cylinders of a firing order as typed, in groups of those that fire together: `1-3-2-4`,
 * `1, 3, 2, 4`, `1 3 2 4`, `1.3.2.4`, `1324`, and where several share a set, `1+4-2+3` or `14-23`.
 */
function orderGroups(text: string, isShared: boolean): string[][] {
  const pieces = text
    .replace(TOGETHER, '+')
    .split(BETWEEN)
    .filter((piece) => piece !== '');
  const runTogether = (piece: string): boolean => /^\d{2,}$/.test(piece);
  // There are no more than eight cylinders, so that figures run together are one cylinder each.
  if (pieces.length === 1 && runTogether(pieces[0]!)) return [...pieces[0]!].map((one) => [one]);
  return pieces.map((piece) => (isShared && runTogether(piece) ? [...piece] : piece.split('+')));
}

/** The cylinders of a firing order as typed, one after the other. */
const orderParts = (text: string, isShared = false): string[] => orderGroups(text, isShared).flat();

const joined =
  'Join those that one set fires by +, such as 1+2, and set a dash between one set and the next.';

/** What is wrong with how its cylinders are said to fire together; nothing where it is right. */
function togetherProblem(
  groups: readonly (readonly string[])[],
  cylinders: number,
  sets: number | undefined,
): string | undefined {
  const several = groups.find((group) => group.length > 1);
  if (several === undefined) {
    const shared = sets === undefined ? 1 : firedByEach(cylinders, sets);
    // By one set all are fired, in whatever order they are named.
    return shared === 1 || sets === 1
      ? undefined
      : `${quote(groups.join('-'))} names one cylinder after the other, but ${String(sets)} sets of points fire ${String(cylinders)} cylinders here, ${String(shared)} each, and it does not say which share a set. ${joined}`;
  }
  const named = quote(several.join('+'));
  if (sets === undefined) {
    return `${named} stands for cylinders that fire together, and this order takes one after the other. Leave it empty, and give each its angle instead.`;
  }
  const each = firedByEach(cylinders, sets);
  if (each === 1) {
    return `${named} stands for cylinders that fire together from one set. Say first under “Sets of points”, among what the engine has, how many sets there are: here it is one to each cylinder.`;
  }
  return groups.every((group) => group.length === each)
    ? undefined
    : `${named} cannot be so: ${String(sets)} ${sets === 1 ? 'set of points fires' : 'sets of points fire'} ${String(cylinders)} cylinders, ${String(each)} each. ${joined}`;
}

/**
 * What is wrong with a firing order of so many cylinders as typed; nothing where they name each once.
 *
 * @param sets Sets of points that fire them, where that can be said: fewer where several cylinders fire together.
 */
function orderProblem(text: string, cylinders: number, sets?: number): string | undefined {
  const groups = orderGroups(text, (sets ?? cylinders) < cylinders);
  const parts = groups.flat();
  const all = Array.from({ length: cylinders }, (_, i) => i + 1);
  const example = orderText(all, firedByEach(cylinders, sets ?? cylinders));
  const remedy = `Type each number from 1 to ${String(cylinders)} once, such as ${example}, or change the number of cylinders.`;
  const odd = parts.find((part) => !/^\d$/.test(part));
  if (odd !== undefined) {
    return `${quote(text)} cannot be read as a firing order: ${quote(odd === '' ? '+' : odd)} is no cylinder number. They are counted from 1, and there are no more than ${String(MOST_CYLINDERS)}. ${remedy}`;
  }
  const numbers = parts.map(Number);
  const beyond = numbers.find((number) => number < 1 || number > cylinders);
  if (beyond !== undefined) {
    return `The firing order names cylinder ${String(beyond)}, and ${cylinders === 1 ? 'there is one cylinder' : `cylinders are counted from 1 to ${String(cylinders)} here`}. ${remedy}`;
  }
  const twice = numbers.find((number, i) => numbers.indexOf(number) !== i);
  if (twice !== undefined) {
    return `The firing order names cylinder ${String(twice)} more than once. ${remedy}`;
  }
  const missing = all.filter((number) => !numbers.includes(number));
  return missing.length === 0
    ? togetherProblem(groups, cylinders, sets)
    : `The firing order leaves out cylinder${missing.length === 1 ? '' : 's'} ${listed(missing)}. ${remedy}`;
}

/** Reads a firing order in any common way of writing it; an empty text is none. */
export const readOrder: OrderReader = (typed, cylinders, sets) => {
  if (typed.trim() === '') return { order: [] };
  const problem = orderProblem(typed, cylinders, sets);
  return problem === undefined
    ? { order: orderParts(typed, (sets ?? cylinders) < cylinders).map(Number) }
    : { problem };
};
