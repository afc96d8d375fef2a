import { useCallback, useLayoutEffect, useRef } from 'preact/hooks';
import type { Origins, Texts } from '../../calculators/frame/evaluate.ts';

/** Long enough that a drag writes once: browsers bar an address written too often. */
const WRITE_AFTER_MS = 400;
/** After the answer is painted, and before a hand can reload: a key pressed is not lost by it. */
const WRITE_TYPED_AFTER_MS = 30;
/** So many typed edits are written at once within so long; Safari takes 100 in 30 s and no more. */
const MOST_AT_ONCE = 60;
const COUNTED_FOR_MS = 30_000;
const EDIT_ENDS_AFTER_MS = 1500;

/**
 * What an entry of the browser's history holds: the query, whose figures are in it, and the texts
 * of boxes that cannot be read, which the query does not take.
 */
export interface Written {
  readonly query: string;
  readonly own: Origins;
  readonly refused: Texts;
}

interface Entry {
  readonly own?: unknown;
  readonly refused?: unknown;
}

/** Whose figures stand in the entry of the history that is open, which a reload keeps and a link lacks. */
export const ownHere = (): unknown => (history.state as Entry | null)?.own;

/** The texts that could not be read when the entry of the history that is open was written. */
export function refusedHere(): Texts {
  const refused = (history.state as Entry | null)?.refused;
  if (typeof refused !== 'object' || refused === null) return {};
  return Object.fromEntries(
    Object.entries(refused).filter((pair): pair is [string, string] => typeof pair[1] === 'string'),
  );
}

/**
 * Keeps the address in step with the state. One edit (a word typed, a drag, a run of key presses)
 * is one step of the browser's back button.
 */
export function useAddress(onBack: (query: string) => void) {
  const editing = useRef(false);
  const waiting = useRef<() => Written>();
  const timer = useRef<number>();
  const changed = useRef(0);
  const last = useRef<Written>();
  const written = useRef<number[]>([]);

  const flush = useCallback(() => {
    clearTimeout(timer.current);
    const next = waiting.current?.();
    waiting.current = undefined;
    if (next === undefined) return;
    last.current = next;
    const { query, ...entry } = next;
    const address = `${location.pathname}?${query}${location.hash}`;
    if (query === location.search.slice(1)) {
      if (JSON.stringify(history.state) !== JSON.stringify(entry))
        history.replaceState(entry, '', address);
      return;
    }
    if (editing.current) history.replaceState(entry, '', address);
    else history.pushState(entry, '', address);
    editing.current = true;
  }, []);

  /** The state has changed to the one that this writes, by typing or along a drag. */
  const write = useCallback(
    (entry: () => Written, dragged: boolean) => {
      waiting.current = entry;
      clearTimeout(timer.current);
      const now = performance.now();
      if (now - changed.current > EDIT_ENDS_AFTER_MS) editing.current = false;
      changed.current = now;
      const lately = written.current.filter((at) => now - at < COUNTED_FOR_MS);
      const atOnce = !dragged && lately.length < MOST_AT_ONCE;
      written.current = atOnce ? [...lately, now] : lately;
      timer.current = window.setTimeout(flush, atOnce ? WRITE_TYPED_AFTER_MS : WRITE_AFTER_MS);
    },
    [flush],
  );

  /** The edit is over: the next change is a new step. */
  const commit = useCallback(() => {
    // The state that this event brings is drawn first, and is part of the edit.
    queueMicrotask(() => {
      flush();
      editing.current = false;
    });
  }, [flush]);

  // From the moment it is drawn: a step back right after that is not missed.
  useLayoutEffect(() => {
    const back = (): void => {
      clearTimeout(timer.current);
      waiting.current = undefined;
      editing.current = false;
      const { current } = last;
      if (current !== undefined && current.query === location.search.slice(1)) {
        // Another place of the same page: the figures are what they were.
        const { query: _, ...entry } = current;
        history.replaceState(entry, '');
        return;
      }
      last.current = undefined;
      onBack(location.search);
    };
    window.addEventListener('popstate', back);
    window.addEventListener('pagehide', flush);
    // A tab put away may be ended without another word.
    document.addEventListener('visibilitychange', flush);
    return () => {
      window.removeEventListener('popstate', back);
      window.removeEventListener('pagehide', flush);
      document.removeEventListener('visibilitychange', flush);
    };
  }, [flush, onBack]);

  return { write, commit };
}
