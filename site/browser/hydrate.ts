import { hydrate, type ComponentChild } from 'preact';

/**
 * Takes what the server rendered into use where it stands. Preact would set the whole before a blank
 * that leads it, and what is moved is laid out anew, loses the focus, and the press that woke it.
 */
export function hydrateInPlace(whole: ComponentChild, place: HTMLElement): void {
  for (const child of [...place.childNodes]) if (child instanceof Text) child.remove();
  hydrate(whole, place);
}
