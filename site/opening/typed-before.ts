import type { Texts } from '../../calculators/frame/evaluate.ts';

/**
 * What a visitor has already changed in a form that the server rendered, by key: on a slow
 * connection a figure may be typed before the script that answers it has come.
 */
export function typedBefore(place: HTMLElement, idPrefix: string): Texts {
  const texts: Record<string, string> = {};
  for (const input of place.querySelectorAll<HTMLInputElement>('.calc-form input')) {
    const key = input.type === 'radio' ? input.name.slice(idPrefix.length) : input.name;
    const changed =
      input.type === 'radio'
        ? input.checked && !input.defaultChecked && key !== 'lengths'
        : input.value !== input.defaultValue;
    if (changed) texts[key] = input.value;
  }
  return texts;
}

/** Whether a reader is at work in a calculator: its focus is in it, or something in it was typed. */
export const isAtWork = (place: HTMLElement): boolean =>
  place.contains(document.activeElement) ||
  Object.keys(typedBefore(place, place.dataset.prefix ?? '')).length > 0;
