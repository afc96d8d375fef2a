/** How high the sheet stood when its page was last left, in this tab, and how far down it was read. */
const KEY = 'gudgeon.sheet-height';

/** A height holds for a width, and for what the address shows. */
const asSeen = (): string => `${String(innerWidth)} ${location.hash}`;

interface Left {
  readonly height: number;
  readonly top: number;
}

function lastLeft(): Left {
  try {
    const [height, seen, top] = JSON.parse(sessionStorage.getItem(KEY) ?? '[]') as unknown[];
    return seen === asSeen() && typeof height === 'number' && typeof top === 'number'
      ? { height, top }
      : { height: 0, top: 0 };
  } catch {
    return { height: 0, top: 0 };
  }
}

/** Whether the page is come back to, by a reload or by the way back, and not opened anew. */
const isReturn = (): boolean =>
  performance.getEntriesByType('navigation').some((entry) => {
    const { type } = entry as PerformanceNavigationTiming;
    return type === 'reload' || type === 'back_forward';
  });

/**
 * Gives a sheet the height that it had, before it is drawn, and a page that is come back to its place:
 * what follows the sheet must not come up meanwhile.
 */
export function holdHeight(place: HTMLElement): void {
  const { height, top } = lastLeft();
  place.style.minHeight = `${String(Math.max(height, place.offsetHeight))}px`;
  if (top > 0 && isReturn() && (scrollY === 0 || location.hash !== '')) scrollTo(0, top);
}

/** Lets it be as high as what is drawn, and has its height and its place kept when the page is left. */
export function letHeightGo(place: HTMLElement): void {
  place.style.minHeight = '';
  /** From place to place within the page the browser finds its own way. */
  const stay = (): void => {
    history.scrollRestoration = 'auto';
  };
  const keep = (): void => {
    try {
      sessionStorage.setItem(KEY, JSON.stringify([place.offsetHeight, asSeen(), scrollY]));
      // A browser would look for what stood at the edge among what is served, which stands elsewhere.
      history.scrollRestoration = 'manual';
    } catch {
      // The page then opens where the browser puts it.
    }
  };
  stay();
  addEventListener('pageshow', stay);
  addEventListener('pagehide', keep);
  // A tab put away may be ended without another word.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') keep();
    else stay();
  });
}
