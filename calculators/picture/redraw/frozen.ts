import { useEffect, useRef, useState } from 'preact/hooks';

/** Whether a handle is held; one pointer drags at a time. */
let held = false;
const waiting = new Set<() => void>();
const ENDS = ['pointerup', 'pointercancel'] as const;

function letGo(): void {
  for (const end of ENDS) removeEventListener(end, letGo);
  held = false;
  for (const redraw of waiting) redraw();
}

/** A handle has been taken hold of; it is let go when the pointer is, wherever that happens. */
export function hold(): void {
  held = true;
  for (const end of ENDS) addEventListener(end, letGo);
}

/** What is worked out while no handle is held; what was found last stands meanwhile. */
export function useAtRest<T>(find: () => T): T {
  const kept = useRef<{ readonly found: T }>();
  const [, redraw] = useState({});
  useEffect(() => {
    const anew = (): void => redraw({});
    waiting.add(anew);
    return () => {
      waiting.delete(anew);
    };
  }, []);
  if (!held || !kept.current) kept.current = { found: find() };
  return kept.current.found;
}

/**
 * A figure that a picture's scale hangs on. While a handle is held it stays as it was: a scale that
 * moved with the working point would take the point from under the finger.
 */
export const useFrozen = <T>(next: T): T => useAtRest(() => next);
