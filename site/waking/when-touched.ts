import { TOUCHES } from '../browser/touches.ts';
import { onSigns } from '../opening/signs.ts';

/**
 * Calls back at a touch of the place, before the touch reaches what it is meant for, so that
 * nothing of it is lost; and after the paint that follows a reader's first sign of life, in two
 * steps, between which what the reader does next is let in.
 *
 * @param stirred Whether the first sign has been seen.
 * @param signal Ends it.
 */
export function whenTouched(
  place: HTMLElement,
  prepare: () => void,
  wake: () => void,
  stirred: boolean,
  signal: AbortSignal,
): void {
  let coming = false;
  const soon = (): void => {
    if (coming) return;
    coming = true;
    requestAnimationFrame(() =>
      setTimeout(() => {
        prepare();
        setTimeout(wake);
      }),
    );
  };
  for (const type of TOUCHES) place.addEventListener(type, wake, { capture: true, signal });
  if (stirred) soon();
  onSigns(soon, signal);
}
