import type { TaskName } from '../../calculators/practice/tasks.ts';

const KEY = 'gudgeon.practice';

export interface Best {
  /** Engines on which the task came out right. */
  readonly right: number;
  /** The smallest worst error so far, and the engine it was on; none for a task without one. */
  readonly worst: number;
  readonly engine: number;
}

type Bests = Partial<Record<TaskName, Best>>;

const isBest = (value: unknown): value is Best =>
  typeof value === 'object' &&
  value !== null &&
  ['right', 'worst', 'engine'].every((key) =>
    Number.isFinite((value as Record<string, unknown>)[key]),
  );

/** The best results of this browser. Storage may be forbidden or spoilt; then there are none. */
export function bests(): Bests {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Record<string, unknown>;
    return Object.fromEntries(Object.entries(kept).filter(([, best]) => isBest(best)));
  } catch {
    return {};
  }
}

/** Adds a result that is right. */
export function keepBest(task: TaskName, engine: number, worst: number): void {
  const before = bests();
  const best = before[task];
  const better = best === undefined || worst < best.worst;
  const now: Best = {
    right: (best?.right ?? 0) + 1,
    worst: better ? worst : best.worst,
    engine: better ? engine : best.engine,
  };
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...before, [task]: now }));
  } catch {
    // Storage is full or forbidden: the result stands on the page all the same.
  }
}
