import { firedBySet, inTurn } from './firing-order.ts';
import type { Engine } from './model.ts';
import { orderAgainstSets } from './sets.ts';

/**
 * Which lead goes where, in the order of firing; nothing while that order is not known. While the sets
 * speak against it, that is said instead.
 */
export function leadWords(engine: Engine): string | undefined {
  if (engine.firingOrder.length === 0) return undefined;
  const odds = orderAgainstSets(engine);
  if (odds !== undefined) return `No leads are told yet. ${odds}`;
  const fired = firedBySet(engine);
  if (fired === undefined || fired.length === engine.firingOrder.length) {
    const leads = engine.firingOrder.map((n) => `coil ${String(n)} to plug ${String(n)}`);
    return `Leads in firing order: ${leads.join(', ')}`;
  }
  const leads = inTurn(engine, fired).map(
    (set) => `set ${String(set)} fires plugs ${fired[set - 1]!.join(' and ')}`,
  );
  return `Leads in firing order: ${leads.join(', ')}`;
}
