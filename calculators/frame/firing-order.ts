import { MOST_CYLINDERS } from '../maths/crank/firing-order.ts';
import { quote } from './parse.ts';

/** What may stand between the numbers: blanks, commas, dots, strokes, arrows and dashes of any kind. */
const BETWEEN = /(?:[\s,;:.·•/|→⇒⟶>−]|\p{Pd})+/u;

/** The parts of a firing order as typed: `1-3-2-4`, `1, 3, 2, 4`, `1 3 2 4`, `1.3.2.4` or `1324`. */
export function orderParts(text: string): string[] {
  const parts = text.split(BETWEEN).filter((part) => part !== '');
  // There are no more than eight cylinders, so that figures run together are one cylinder each.
  return parts.length === 1 && /^\d{2,}$/.test(parts[0]!) ? [...parts[0]!] : parts;
}

/** The one form in which a firing order is shown: `1-3-2-4`. */
export const orderText = (order: readonly number[]): string => order.join('-');

const inWords = (numbers: readonly number[]): string =>
  numbers.length < 2
    ? String(numbers[0])
    : `${numbers.slice(0, -1).join(', ')} and ${String(numbers.at(-1))}`;

/** What is wrong with a firing order of so many cylinders as typed; nothing where they name each once. */
export function orderProblem(text: string, cylinders: number): string | undefined {
  const parts = orderParts(text);
  const all = Array.from({ length: cylinders }, (_, i) => i + 1);
  const remedy = `Type each number from 1 to ${String(cylinders)} once, such as ${orderText(all)}, or change the number of cylinders.`;
  const odd = parts.find((part) => !/^\d$/.test(part));
  if (odd !== undefined) {
    return `${quote(text)} cannot be read as a firing order: ${quote(odd)} is no cylinder number. They are counted from 1, and there are no more than ${String(MOST_CYLINDERS)}. ${remedy}`;
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
    ? undefined
    : `The firing order leaves out cylinder${missing.length === 1 ? '' : 's'} ${inWords(missing)}. ${remedy}`;
}
