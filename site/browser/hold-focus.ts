const REACHED = 'a[href], button:not([disabled]), summary, select, input[type="checkbox"]';

/** What within a place can be gone to without a keyboard on the screen, in order. */
const reached = (place: Element): HTMLElement[] =>
  [...place.querySelectorAll<HTMLElement>(REACHED)].filter(
    (element) => element.checkVisibility?.() ?? true,
  );

/**
 * Keeps the focus within a place: when what had it is taken out of the page (a button that has
 * done its work, a form that was sent), what stands where it stood gets it, and not the page.
 * Gives back how to end that.
 */
export function holdFocus(root: HTMLElement): () => void {
  let last: HTMLElement | undefined;
  /** Where it stands in each place around it, from the nearest out. */
  let around: (readonly [place: Element, index: number])[] = [];

  const entered = ({ target }: FocusEvent): void => {
    if (!(target instanceof HTMLElement)) return;
    last = target;
    around = [];
    for (let place = target.parentElement; place; place = place.parentElement) {
      around.push([place, reached(place).indexOf(target)]);
      if (place === root) break;
    }
  };
  const pressed = ({ target }: Event): void => {
    if (!(target instanceof Node) || !last?.contains(target)) last = undefined;
  };
  const changed = (): void => {
    if (!last || last.isConnected) return;
    last = undefined;
    const { activeElement } = document;
    if (activeElement && activeElement !== document.body) return;
    for (const [place, index] of around) {
      if (!place.isConnected) continue;
      const others = reached(place);
      const next = others[Math.min(Math.max(index, 0), others.length - 1)];
      if (next) {
        next.focus({ preventScroll: true });
        return;
      }
    }
  };

  const watch = new MutationObserver(changed);
  watch.observe(root, { childList: true, subtree: true });
  root.addEventListener('focusin', entered);
  document.addEventListener('pointerdown', pressed, true);
  return () => {
    watch.disconnect();
    root.removeEventListener('focusin', entered);
    document.removeEventListener('pointerdown', pressed, true);
  };
}
