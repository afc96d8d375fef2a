/** What is done to a calculator itself. */
const TOUCHES = [
  'pointerdown',
  'focusin',
  'keydown',
  'click',
  'input',
  'change',
  'toggle',
] as const;
/** What a reader does before it. */
const SIGNS = ['pointermove', 'pointerdown', 'touchstart', 'keydown', 'wheel', 'scroll'] as const;

/**
 * Calls back at a touch of the place, before the touch reaches what it is meant for, so that
 * nothing of it is lost; and after the paint that follows a reader's first sign of life, in two
 * steps, between which what the reader does next is let in.
 *
 * @param signal Ends it.
 */
export function whenTouched(
  place: HTMLElement,
  prepare: () => void,
  wake: () => void,
  signal: AbortSignal,
): void {
  const soon = (): void =>
    void requestAnimationFrame(() =>
      setTimeout(() => {
        prepare();
        setTimeout(wake);
      }),
    );
  for (const type of TOUCHES) place.addEventListener(type, wake, { capture: true, signal });
  for (const type of SIGNS) {
    document.addEventListener(type, soon, { capture: true, passive: true, once: true, signal });
  }
}
