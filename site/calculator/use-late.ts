import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';

/**
 * A value that may come later than the rest of the page, so that what the reader looks at is
 * painted first: at once, after the next paint, or at most once in so many milliseconds.
 */
export function useLate<T>(value: T, wait: 'none' | 'paint' | number): T {
  const latest = useRef(value);
  const shown = useRef(value);
  const timer = useRef<number>();
  const [, redraw] = useState({});
  latest.current = value;
  if (wait === 'none') shown.current = value;

  const show = (): void => {
    clearTimeout(timer.current);
    timer.current = undefined;
    if (shown.current === latest.current) return;
    shown.current = latest.current;
    redraw({});
  };
  useLayoutEffect(() => {
    if (typeof wait === 'number' && shown.current !== value) {
      timer.current ??= window.setTimeout(show, wait);
    }
  }, [value, wait]);
  // An effect runs after the paint, and is asked for only where it is needed: it costs two tasks.
  useEffect(() => {
    if (wait === 'paint') show();
  }, [wait === 'paint' ? value : undefined, wait]);
  useEffect(() => () => clearTimeout(timer.current), []);
  return shown.current;
}
