import { useLayoutEffect, useRef, useState } from 'preact/hooks';

type Wait = 'none' | 'paint' | number;

/** Calls back after the next paint, or in so many milliseconds; what it returns calls it off. */
function later(wait: 'paint' | number, then: () => void): () => void {
  let frame = 0;
  let timer = 0;
  const soon = (ms: number): void => {
    timer = window.setTimeout(then, ms);
  };
  if (wait === 'paint') frame = requestAnimationFrame(() => soon(0));
  else soon(wait);
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}

/**
 * A value that may come later than the rest of the page, so that what the reader looks at is
 * painted first: at once, after the next paint, or at most once in so many milliseconds. What comes
 * while one waits is shown in its stead, and does not put the showing off.
 */
export function useLate<T>(value: T, wait: Wait): T {
  const latest = useRef(value);
  const shown = useRef(value);
  const callOff = useRef<() => void>();
  const [, redraw] = useState({});
  latest.current = value;
  if (wait === 'none') shown.current = value;

  useLayoutEffect(
    () => () => {
      callOff.current?.();
      callOff.current = undefined;
    },
    [wait],
  );
  // No effect of the framework's after the paint: where the next key comes before it, it is run
  // within that key, and where the paint is late, before it.
  useLayoutEffect(() => {
    if (wait === 'none' || shown.current === value) return;
    callOff.current ??= later(wait, () => {
      callOff.current = undefined;
      if (shown.current === latest.current) return;
      shown.current = latest.current;
      redraw({});
    });
  }, [value, wait]);
  return shown.current;
}
