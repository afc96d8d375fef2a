import type { Engine } from './model.ts';

/** A group without one of its keys. */
export const without = <R extends Readonly<Record<string, unknown>>>(group: R, key: string): R =>
  Object.fromEntries(Object.entries(group).filter(([other]) => other !== key)) as R;

/** Forgets a text that could not be read. */
export const forget = (engine: Engine, place: string): Engine =>
  Object.hasOwn(engine.unread, place)
    ? { ...engine, unread: without(engine.unread, place) }
    : engine;
