import { MOST_CYLINDERS } from './figures.ts';
import type { Engine } from './model.ts';

/** What may stand between the numbers: blanks, commas, dots, strokes, arrows and dashes of any kind. */
const BETWEEN = /(?:[\s,;:.·•/|→⇒⟶>−]|\p{Pd})+/u;

/** The parts of a firing order as typed: `1-3-2-4`, `1, 3, 2, 4`, `1 3 2 4`, `1.3.2.4` or `1324`. */
export function orderParts(text: string): string[] {
  const parts = text.split(BETWEEN).filter((part) => part !== '');
  // No sheet has more than eight cylinders, so that figures run together are one cylinder each.
  return parts.length === 1 && /^\d{2,}$/.test(parts[0]!) ? [...parts[0]!] : parts;
}

/** The one form in which a firing order is shown: `1-3-2-4`. */
export const orderText = (order: readonly number[]): string => order.join('-');

/** The order in which the cylinders fire, begun at cylinder 1, as sets and leads are counted. */
export function fromFirst(order: readonly number[]): readonly number[] {
  const at = order.indexOf(1);
  return [...order.slice(at), ...order.slice(0, at)];
}

const inWords = (numbers: readonly number[]): string =>
  numbers.length < 2
    ? String(numbers[0])
    : `${numbers.slice(0, -1).join(', ')} and ${String(numbers.at(-1))}`;

/** What is wrong with the parts of a firing order of so many cylinders; nothing where they name each once. */
export function orderProblem(parts: readonly string[], cylinders: number): string | undefined {
  const remedy = `Type each number from 1 to ${String(cylinders)} once, such as ${orderText(
    Array.from({ length: cylinders }, (_, i) => i + 1),
  )}, or change the number of cylinders.`;
  const odd = parts.find((part) => !/^\d$/.test(part));
  if (odd !== undefined) {
    return `“${odd.slice(0, 20)}” in the firing order is no cylinder number: cylinders are counted from 1, and the sheet has boxes for no more than ${String(MOST_CYLINDERS)}. ${remedy}`;
  }
  const numbers = parts.map(Number);
  const beyond = numbers.find((number) => number < 1 || number > cylinders);
  if (beyond !== undefined) {
    return `The firing order names cylinder ${String(beyond)}, and the sheet has ${cylinders === 1 ? 'one cylinder' : `cylinders 1 to ${String(cylinders)}`}. ${remedy}`;
  }
  const twice = numbers.find((number, i) => numbers.indexOf(number) !== i);
  if (twice !== undefined) {
    return `The firing order names cylinder ${String(twice)} more than once. ${remedy}`;
  }
  const missing = Array.from({ length: cylinders }, (_, i) => i + 1).filter(
    (number) => !numbers.includes(number),
  );
  return missing.length === 0
    ? undefined
    : `The firing order leaves out cylinder${missing.length === 1 ? '' : 's'} ${inWords(missing)}. ${remedy}`;
}

/** Which lead goes where, in the order of firing; nothing while that order is not known. */
export function leadWords(engine: Engine): string | undefined {
  if (engine.firingOrder.length === 0) return undefined;
  const leads = engine.firingOrder.map((n) => `coil ${String(n)} to plug ${String(n)}`);
  return `Leads in firing order: ${leads.join(', ')}`;
}
