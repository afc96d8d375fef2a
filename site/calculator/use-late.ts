import { useEffect, useRef, useState } from 'preact/hooks';

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

  useEffect(() => {
    if (shown.current === value) return;
    const show = (): void => {
      clearTimeout(timer.current);
      timer.current = undefined;
      if (shown.current === latest.current) return;
      shown.current = latest.current;
      redraw({});
    };
    // An effect runs after the paint.
    if (typeof wait === 'number') timer.current ??= window.setTimeout(show, wait);
    else show();
  }, [value, wait]);
  useEffect(() => () => clearTimeout(timer.current), []);
  return shown.current;
}
