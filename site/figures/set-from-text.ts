import { WANTED, type Wanted } from '../opening/wanted.ts';

/** A press that is meant for the page itself, and not for another tab. */
const plain = (event: MouseEvent): boolean =>
  event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);

/** Whether the picture of a figure can be seen, at least for the most part. */
function inSight(place: HTMLElement): boolean {
  const { top, bottom } = (place.firstElementChild ?? place).getBoundingClientRect();
  return top >= 0 && (top + bottom) / 2 < innerHeight;
}

/** Sets the figure that a value of the text is about. It is fetched first where it has not come. */
function setFigure(link: HTMLAnchorElement, place: HTMLElement): void {
  const wanted: Wanted = {
    texts: JSON.parse(link.dataset.set!) as Wanted['texts'],
    words: link.textContent,
  };
  place.dataset.wanted = JSON.stringify(wanted);
  // What fetches a figure and wakes it when it is entered does so here; the other tells one in use.
  place.dispatchEvent(new FocusEvent('focusin'));
  place.dispatchEvent(new Event(WANTED));
  if (!inSight(place)) place.scrollIntoView({ block: 'nearest' });
}

const placeOf = (link: HTMLAnchorElement): HTMLElement | null =>
  document.getElementById(link.dataset.figure!);

for (const link of document.querySelectorAll<HTMLAnchorElement>('a.set-figure')) {
  const place = placeOf(link);
  if (!place) continue;
  // With a script it does what a button does.
  link.setAttribute('role', 'button');
  link.addEventListener('click', (event) => {
    // One that could not be fetched leaves the link what it is.
    if (!plain(event) || place.dataset.failed !== undefined) return;
    event.preventDefault();
    setFigure(link, place);
  });
  link.addEventListener('keydown', (event) => {
    if (event.key !== ' ') return;
    event.preventDefault();
    link.click();
  });
}
