import { firedByEach, inGroups, orderText } from '../frame/text/order.ts';
import { boxName, cylindersOf, perOf, setsOf, sharesSets, turnsOf, type Engine } from './model.ts';
import { steps, type StepId, type StepReading } from './steps.ts';

/** The order in which the cylinders fire, begun at cylinder 1, as sets and leads are counted. */
export function fromFirst(order: readonly number[]): readonly number[] {
  const at = order.indexOf(1);
  return [...order.slice(at), ...order.slice(0, at)];
}

/** How many cylinders fire at once. */
const togetherOn = (engine: Engine): number =>
  firedByEach(cylindersOf(engine), setsOf(engine)) / turnsOf(engine);

/** The firing order in words: `1-3-2-4`, or `1+4-2+3` where a set fires two at once. */
export const orderWords = (engine: Engine, order: readonly number[] = engine.firingOrder): string =>
  orderText(order, order.length === cylindersOf(engine) ? togetherOn(engine) : 1);

/**
 * The cylinders that each set fires, by the set's number: sets are numbered as the lowest of their
 * cylinders are. Nothing where the sheet does not say.
 */
export function firedBySet(engine: Engine): readonly (readonly number[])[] | undefined {
  const { firingOrder } = engine;
  const cylinders = cylindersOf(engine);
  const sets = setsOf(engine);
  const times = inGroups(firingOrder, togetherOn(engine));
  if (firingOrder.length !== cylinders || times.length !== sets * turnsOf(engine)) return undefined;
  return Array.from({ length: sets }, (_, i) =>
    times
      .filter((_time, at) => at % sets === i)
      .flat()
      .sort((a, b) => a - b),
  ).sort(([a], [b]) => a! - b!);
}

const allOf = (engine: Engine): readonly number[] =>
  Array.from({ length: cylindersOf(engine) }, (_, i) => i + 1);

/** The same, where one set fires all of them, in whatever order. */
export const groupsOf = (engine: Engine): readonly (readonly number[])[] | undefined =>
  setsOf(engine) === 1 ? [allOf(engine)] : firedBySet(engine);

/** The cylinders that a box of a set stands for, where one set fires several and the sheet says which. */
export function firedByBox(
  reading: StepReading,
  index: number,
  engine: Engine,
): readonly number[] | undefined {
  if (perOf(reading, engine) !== 'Set' || !sharesSets(engine)) return undefined;
  return groupsOf(engine)?.[index];
}

/** At which of the cylinders that a set fires the piston is read, which comes to each of their tops. */
export const readAtWords = ({ judging }: StepReading, fired: readonly number[]): string =>
  judging === 'timing' ? `, read at cylinder ${String(fired[0]!)}` : '';

/**
 * The box of another step that stands for the same part as a box of a step: the set that fires a
 * cylinder, or the cylinder at which a set is read.
 */
export function sameBox(engine: Engine, id: StepId, index: number, other: StepId): number {
  const bySet = (step: StepId): boolean => perOf(steps[step].reading!, engine) === 'Set';
  if (!sharesSets(engine) || bySet(id) === bySet(other)) return index;
  const fired = groupsOf(engine) ?? [];
  const there = bySet(id)
    ? (fired[index]?.[0] ?? 0) - 1
    : fired.findIndex((group) => group.includes(index + 1));
  return there < 0 ? index : there;
}

/** A box with the cylinders that it stands for: "Set 1 (cylinders 1, 4)". */
export function boxTitle(reading: StepReading, index: number, engine: Engine): string {
  const fired = firedByBox(reading, index, engine);
  const name = boxName(reading, index, engine);
  return fired === undefined ? name : `${name} (cylinders ${fired.join(', ')})`;
}

/** Which sets fire in turn until the first fires again, by the cylinders that each fires. */
export const inTurn = (engine: Engine, fired: readonly (readonly number[])[]): readonly number[] =>
  inGroups(engine.firingOrder, togetherOn(engine))
    .slice(0, fired.length)
    .map(([first]) => fired.findIndex((group) => group.includes(first!)) + 1);

/** The numbers of the sets in the order in which they fire; nothing where the sheet does not say. */
export function setOrderOf(engine: Engine): readonly number[] | undefined {
  const fired = firedBySet(engine);
  return fired && inTurn(engine, fired);
}
