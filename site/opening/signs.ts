/** What a reader does anywhere on a page who is about to use it. */
const SIGNS = ['pointermove', 'pointerdown', 'touchstart', 'keydown', 'wheel', 'scroll'] as const;

/** A browser tells of a mouse at rest too, when the page is laid out under it. */
const atRest = (event: Event): boolean =>
  event instanceof PointerEvent &&
  event.type === 'pointermove' &&
  event.movementX === 0 &&
  event.movementY === 0;

/**
 * Calls back at each sign of life of a reader.
 *
 * @param signal Ends it.
 */
export function onSigns(stirred: () => void, signal: AbortSignal): void {
  const options = { capture: true, passive: true, signal };
  for (const type of SIGNS) {
    document.addEventListener(type, (event) => !atRest(event) && stirred(), options);
  }
}
