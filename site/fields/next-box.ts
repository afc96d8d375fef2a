/** A folded group is laid out in some browsers, and its boxes take no focus. */
const isInSight = (box: HTMLInputElement): boolean =>
  box.checkVisibility?.() ?? box.getClientRects().length > 0;

/**
 * Goes on from a box to the next in sight, whose figure is picked, so that a row of readings is typed
 * without a hand leaving the keys. From the last the focus is let go, and a phone's keys go down.
 */
export function toNextBox(box: HTMLInputElement): void {
  const boxes = box
    .closest('[data-calculator]')
    ?.querySelectorAll<HTMLInputElement>('input[type="text"]');
  const inSight = [...(boxes ?? [])].filter(isInSight);
  const next = inSight[inSight.indexOf(box) + 1];
  if (!next) {
    box.blur();
    return;
  }
  next.focus();
  next.select();
}
