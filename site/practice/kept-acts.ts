import type { Asked } from './address.ts';

const KEY = 'gudgeon.bench';

/** What the work belongs to: engine, task, and how the bench stood at first. */
export type Work = Pick<Asked, 'engine' | 'task' | 'done'>;

const named = ({ engine, task, done }: Work): string => `${engine} ${task} ${done}`;

interface Kept {
  readonly work: string;
  readonly acts: string;
}

/** What was done on this bench before the page was loaded again, in words; nothing if nothing was. */
export function keptActs(work: Work): string {
  try {
    const kept = JSON.parse(sessionStorage.getItem(KEY) ?? '{}') as Partial<Kept>;
    return kept.work === named(work) && typeof kept.acts === 'string' ? kept.acts : '';
  } catch {
    return '';
  }
}

/** Keeps what was done until the tab is closed. Storage may be forbidden; then a reload begins anew. */
export function keepActs(work: Work, acts: string): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ work: named(work), acts } satisfies Kept));
  } catch {
    // The work stands on the page all the same.
  }
}
