/** How high the sheet stood when its page was last left, in this tab. */
const KEY = 'gudgeon.sheet-height';

/** A height holds for a width, and for what the address shows. */
const asSeen = (): string => `${String(innerWidth)} ${location.hash}`;

function lastHeight(): number {
  try {
    const [height, seen] = JSON.parse(sessionStorage.getItem(KEY) ?? '[]') as unknown[];
    return typeof height === 'number' && seen === asSeen() ? height : 0;
  } catch {
    return 0;
  }
}

/**
 * Gives a sheet the height that it had, before it is drawn: what follows it must not come up meanwhile, nor a
 * page that is loaded again lose the place where it was left.
 */
export function holdHeight(place: HTMLElement): void {
  place.style.minHeight = `${String(Math.max(lastHeight(), place.offsetHeight))}px`;
}

/** Lets it be as high as what is drawn, and has its height kept when the page is left. */
export function letHeightGo(place: HTMLElement): void {
  place.style.minHeight = '';
  const keep = (): void => {
    try {
      sessionStorage.setItem(KEY, JSON.stringify([place.offsetHeight, asSeen()]));
    } catch {
      // The page then opens at its beginning.
    }
  };
  addEventListener('pagehide', keep);
  // A tab put away may be ended without another word.
  document.addEventListener('visibilitychange', keep);
}
