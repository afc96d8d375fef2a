import type { LengthDisplay } from '../../calculators/frame/text/units.ts';

/** Where the choice is kept. The page's guard reads it too, before anything is painted. */
export const KEY = 'gudgeon.lengths';
const CHANGED = 'gudgeon:lengths';

/** A choice that the browser did not keep: it holds for this page. */
let unkept: LengthDisplay | undefined;

/** The remembered length display. Storage may be forbidden; then what was chosen on this page, or mm. */
export function rememberedLengths(): LengthDisplay {
  if (unkept !== undefined) return unkept;
  try {
    return localStorage.getItem(KEY) === 'in' ? 'in' : 'mm';
  } catch {
    return 'mm';
  }
}

/** Whether somebody has chosen on this device. */
export function hasChosenLengths(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}

/** For what no script draws anew: the style sheet shows it in the page's lengths. */
function markPage(lengths: LengthDisplay): void {
  document.documentElement.dataset.lengths = lengths;
}

/** Marks a page of text, which no guard has marked before it was painted, and keeps it marked. */
export function followLengths(): void {
  markPage(rememberedLengths());
  watchLengths(markPage);
}

/** Remembers the choice and tells every calculator on the page. */
export function rememberLengths(lengths: LengthDisplay): void {
  try {
    localStorage.setItem(KEY, lengths);
    unkept = undefined;
  } catch {
    unkept = lengths;
  }
  markPage(lengths);
  window.dispatchEvent(new CustomEvent<LengthDisplay>(CHANGED, { detail: lengths }));
}

/** Calls back when the choice changes here or in another tab. Returns the way to stop. */
export function watchLengths(callback: (lengths: LengthDisplay) => void): () => void {
  const here = (event: Event): void => {
    callback((event as CustomEvent<LengthDisplay>).detail);
  };
  const elsewhere = (event: StorageEvent): void => {
    if (event.key !== KEY) return;
    unkept = undefined;
    markPage(rememberedLengths());
    callback(rememberedLengths());
  };
  // A page that the back button takes out of a browser's memory was told of nothing meanwhile.
  const again = ({ persisted }: PageTransitionEvent): void => {
    if (!persisted) return;
    markPage(rememberedLengths());
    callback(rememberedLengths());
  };
  window.addEventListener(CHANGED, here);
  window.addEventListener('storage', elsewhere);
  window.addEventListener('pageshow', again);
  return () => {
    window.removeEventListener('pageshow', again);
    window.removeEventListener(CHANGED, here);
    window.removeEventListener('storage', elsewhere);
  };
}
