import { useCallback, useEffect, useRef } from 'preact/hooks';

/** Long enough that a drag or a run of keys writes once: browsers bar an address written too often. */
const WRITE_AFTER_MS = 400;
const EDIT_ENDS_AFTER_MS = 1500;

interface Timers {
  write?: number;
  end?: number;
}

/**
 * Keeps the address in step with the state. One edit (a word typed, a drag, a run of key presses)
 * is one step of the browser's back button.
 */
export function useAddress(active: boolean, onBack: (query: string) => void) {
  const editing = useRef(false);
  const waiting = useRef<() => string>();
  const timers = useRef<Timers>({});

  const flush = useCallback(() => {
    clearTimeout(timers.current.write);
    const query = waiting.current?.();
    waiting.current = undefined;
    if (query === undefined || query === location.search.slice(1)) return;
    const address = `${location.pathname}?${query}${location.hash}`;
    if (editing.current) history.replaceState(null, '', address);
    else history.pushState(null, '', address);
    editing.current = true;
  }, []);

  /** The state has changed to the one whose query this gives. */
  const write = useCallback(
    (query: () => string) => {
      if (!active) return;
      waiting.current = query;
      clearTimeout(timers.current.write);
      clearTimeout(timers.current.end);
      timers.current.write = window.setTimeout(flush, WRITE_AFTER_MS);
      timers.current.end = window.setTimeout(() => {
        editing.current = false;
      }, EDIT_ENDS_AFTER_MS);
    },
    [active, flush],
  );

  /** The edit is over: the next change is a new step. */
  const commit = useCallback(() => {
    if (!active) return;
    // The state that this event brings is drawn first, and is part of the edit.
    queueMicrotask(() => {
      flush();
      editing.current = false;
    });
  }, [active, flush]);

  useEffect(() => {
    if (!active) return undefined;
    const back = (): void => {
      clearTimeout(timers.current.write);
      waiting.current = undefined;
      editing.current = false;
      onBack(location.search);
    };
    window.addEventListener('popstate', back);
    window.addEventListener('pagehide', flush);
    return () => {
      window.removeEventListener('popstate', back);
      window.removeEventListener('pagehide', flush);
    };
  }, [active, flush, onBack]);

  return { write, commit };
}
