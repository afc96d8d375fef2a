import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/**
 * Keeps the height that a part has until it is whole: while it is drawn piece by piece, what follows it must
 * not come up, nor a page that is loaded again lose the place where it was left.
 */
export function useHeight(place: RefObject<HTMLElement>, isWhole: boolean): void {
  useLayoutEffect(() => {
    if (isWhole) return undefined;
    const { style, offsetHeight } = place.current!;
    style.minHeight = `${String(offsetHeight)}px`;
    return () => {
      style.minHeight = '';
    };
  }, [isWhole]);
}
