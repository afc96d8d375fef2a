import { keepsLast } from '../opening/keeps-last.ts';
import { keepsSheet } from '../opening/keeps-sheet.ts';
import { rememberedLengths, watchLengths } from '../opening/preferences.ts';
import { isAtWork } from '../opening/typed-before.ts';
import { onSigns } from '../opening/signs.ts';

const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;

/** Whether a page has something to show that the server did not render, or its scripts lie on this device. */
const hasReason = (place: HTMLElement): boolean =>
  location.search !== '' ||
  rememberedLengths() !== 'mm' ||
  keepsSheet() ||
  keepsLast(place.dataset.calculator ?? '') ||
  workers?.controller != null ||
  isAtWork(place);

/**
 * Calls back when the page's own calculator is needed: at once where there is a reason; else at the
 * reader's first sign of life, or once there is one.
 *
 * @param begin Is told whether the reader stirred.
 * @param signal Ends it.
 */
export function whenStirred(
  place: HTMLElement,
  begin: (stirred: boolean) => void,
  signal: AbortSignal,
): void {
  const options = { capture: true, passive: true, signal };
  const sign = (): void => begin(true);
  onSigns(sign, signal);
  // Something else than a keyboard or a pointer may fill in a figure.
  for (const type of ['focusin', 'input', 'change'] as const) {
    place.addEventListener(type, sign, options);
  }
  const ifReason = (): void => {
    if (hasReason(place)) begin(false);
  };
  // By the first, a browser that keeps what was typed in a form has put it back.
  for (const type of ['pageshow', 'popstate'] as const) addEventListener(type, ifReason, options);
  workers?.addEventListener('controllerchange', ifReason, options);
  signal.addEventListener('abort', watchLengths(ifReason));
  ifReason();
}
