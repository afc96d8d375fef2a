import type { Engine } from './model.ts';

/** The order in which the cylinders fire, begun at cylinder 1, as sets and leads are counted. */
export function fromFirst(order: readonly number[]): readonly number[] {
  const at = order.indexOf(1);
  return [...order.slice(at), ...order.slice(0, at)];
}

/** Which lead goes where, in the order of firing; nothing while that order is not known. */
export function leadWords(engine: Engine): string | undefined {
  if (engine.firingOrder.length === 0) return undefined;
  const leads = engine.firingOrder.map((n) => `coil ${String(n)} to plug ${String(n)}`);
  return `Leads in firing order: ${leads.join(', ')}`;
}
