const FIGURE = '.calc-form input[type="text"]';

/**
 * A tap into a figure's box picks the whole figure, so that the next key takes its place: a thumb finds
 * no caret between two digits. A second tap sets the caret. Also before a calculator's script has come.
 */
export function selectOnTap(): void {
  let fresh: HTMLInputElement | undefined;
  document.addEventListener('pointerdown', ({ target, pointerType }) => {
    const box = target instanceof HTMLInputElement && target.matches(FIGURE) ? target : undefined;
    fresh = pointerType === 'touch' && box !== document.activeElement ? box : undefined;
  });
  // What comes with the focus may move the box from under the finger: the click is then of what holds it.
  document.addEventListener('click', () => {
    if (fresh !== undefined && fresh === document.activeElement) fresh.select();
    fresh = undefined;
  });
}
