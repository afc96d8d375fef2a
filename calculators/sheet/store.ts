import { SheetError } from './errors.ts';
import { join } from './join.ts';
import { isRecord } from './migrate.ts';
import { documentOf, LIMITS, type Engine } from './model.ts';
import { alike as same } from './three-way.ts';
import { readDocument } from './validate.ts';

/** All that is kept in the browser: the engines, and which of them is in use. */
export interface Store {
  readonly engines: readonly Engine[];
  readonly active: string | undefined;
  /** Raised with each write, so that a newer write from elsewhere is seen. */
  readonly revision: number;
}

export const emptyStore: Store = { engines: [], active: undefined, revision: 0 };

/** The engines to choose from: those that are not laid aside. */
export const atHand = ({ engines }: Pick<Store, 'engines'>): Engine[] =>
  engines.filter(({ archived }) => !archived);

export const activeEngine = (store: Store): Engine | undefined =>
  atHand(store).find(({ id }) => id === store.active) ?? atHand(store)[0];

export const withEngine = (store: Store, engine: Engine): Store => ({
  ...store,
  engines: store.engines.some(({ id }) => id === engine.id)
    ? store.engines.map((other) => (other.id === engine.id ? engine : other))
    : [...store.engines, engine],
});

export const writeStore = ({ engines, active, revision }: Store): string =>
  JSON.stringify({ revision, active: active ?? null, sheet: documentOf(engines) });

/** The store out of its text; throws a SheetError when it is damaged or of a newer version. */
export function readStore(source: string): Store {
  let value: unknown;
  try {
    value = JSON.parse(source);
  } catch {
    throw new SheetError('damaged-store', 'What is kept in this browser is not complete.');
  }
  if (!isRecord(value)) {
    throw new SheetError('damaged-store', 'What is kept in this browser is no engine sheet.');
  }
  const { engines } = readDocument(value.sheet);
  const revision = Number.isSafeInteger(value.revision) ? (value.revision as number) : 0;
  const active = engines.find(({ id }) => id === value.active)?.id ?? engines[0]?.id;
  return { engines, active, revision };
}

/** A store of engines from a text that was not whole: each under an id of its own. */
export function storeOf(engines: readonly Engine[]): Store {
  const own: Engine[] = [];
  for (const engine of engines) {
    const taken = own.some(({ id }) => id === engine.id);
    own.push(taken ? { ...engine, id: freeId([...own, ...engines]) } : engine);
  }
  return { engines: own, active: own[0]?.id, revision: 0 };
}

/** A name that no other engine has: "Triple", "Triple (2)". */
export function freeName(name: string, taken: readonly Engine[]): string {
  const names = new Set(taken.map((engine) => engine.name));
  if (!names.has(name)) return name;
  for (let n = 2; ; n += 1) {
    const ending = ` (${String(n)})`;
    const next = [...name].slice(0, LIMITS.name - ending.length).join('') + ending;
    if (!names.has(next)) return next;
  }
}

/** An id like `e-7`, that no other engine has. */
export function freeId(taken: readonly Engine[]): string {
  const ids = new Set(taken.map(({ id }) => id));
  for (let n = 1; ; n += 1) if (!ids.has(`e-${String(n)}`)) return `e-${String(n)}`;
}

/** An engine that was written differently here and elsewhere at once, and was kept both ways. */
export interface KeptBoth {
  readonly name: string;
  /** What the other one is called now. */
  readonly other: string;
  /** The places where they differ, in words; empty where the whole does. */
  readonly apart: readonly string[];
}

export interface Merged {
  readonly store: Store;
  readonly both: readonly KeptBoth[];
}

/**
 * Joins what is here with what another tab wrote since `base`, the store both started from. An
 * engine changed on both sides is joined entry by entry; it is kept twice where both wrote one place
 * differently, or where each made an engine of its own under the same id.
 */
export function merge(base: Store, mine: Store, theirs: Store): Merged {
  const find = (store: Store, id: string): Engine | undefined =>
    store.engines.find((engine) => engine.id === id);
  const engines: Engine[] = [];
  const both: KeptBoth[] = [];
  const ids = [...theirs.engines, ...mine.engines].map(({ id }) => id);
  const copies: {
    readonly of: Engine;
    readonly copy: Engine;
    readonly apart: readonly string[];
  }[] = [];
  for (const id of new Set(ids)) {
    const [was, here, there] = [find(base, id), find(mine, id), find(theirs, id)];
    if (same(here, there) || same(there, was)) {
      if (here) engines.push(here);
    } else if (same(here, was)) {
      if (there) engines.push(there);
    } else if (here && there) {
      const { engine, other, apart } = was
        ? join(was, here, there)
        : { engine: here, other: there, apart: [] };
      engines.push(engine);
      if (other) copies.push({ of: engine, copy: other, apart });
    } else engines.push((here ?? there)!);
  }
  for (const { of, copy, apart } of copies) {
    const name = freeName(copy.name, engines);
    engines.push({ ...copy, id: freeId(engines), name });
    both.push({ name: of.name, other: name, apart });
  }
  const active = mine.active === base.active ? theirs.active : mine.active;
  return {
    store: {
      engines,
      active: engines.some(({ id }) => id === active) ? active : engines[0]?.id,
      revision: Math.max(mine.revision, theirs.revision),
    },
    both,
  };
}

/** Takes engines back that were put aside: those that are not in the store as they were. */
export function takeBack(store: Store, engines: readonly Engine[]): Store {
  const missing = engines.filter(
    (engine) =>
      !same(
        engine,
        store.engines.find(({ id }) => id === engine.id),
      ),
  );
  return { ...adopt(store, missing), active: store.active ?? engines[0]?.id };
}

/** The store with one more engine that holds what another does, to be tried or kept as it is now. */
export const duplicate = (store: Store, engine: Engine): Store =>
  adopt(store, [{ ...engine, archived: false }]);

/** Lays an engine aside, or takes it back among those to choose from. */
export function archive(store: Store, id: string, archived: boolean): Store {
  const engines = store.engines.map((engine) =>
    engine.id === id ? { ...engine, archived } : engine,
  );
  return { ...store, engines, active: archived ? atHand({ engines })[0]?.id : id };
}

/** Adds engines from a file or link under ids and names of their own. */
export function adopt(store: Store, source: readonly Engine[]): Store {
  if (store.engines.length + source.length > LIMITS.engines) {
    throw new SheetError(
      'too-many',
      `There is room for ${String(LIMITS.engines)} engines, and with these there would be ${String(store.engines.length + source.length)}. Save some to a file and take them out of the list first.`,
    );
  }
  let next = store;
  for (const engine of source) {
    const own = {
      ...engine,
      id: freeId(next.engines),
      name: freeName(engine.name, next.engines),
    };
    next = { ...withEngine(next, own), active: own.id };
  }
  return next;
}
