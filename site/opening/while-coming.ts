/** What is worked by hand. */
const HANDLE = '[role="slider"]';
const WORKED = `${HANDLE}, button`;
/** The keys that move a handle, and would else move the page. */
const MOVES = /^(?:Arrow|Page|Home|End)/;
/** The keys that step or confirm the figure in a box, which keeps by itself what is typed in it. */
const STEPS = /^(?:ArrowUp|ArrowDown|Enter)$/;
const BOX = 'input[inputmode="decimal"]';

const under = ({ target }: Event, what: string): boolean =>
  target instanceof Element && target.closest(what) !== null;

/** The keys that do something to what an event is meant for. */
function keysOf(event: Event): RegExp | undefined {
  if (under(event, HANDLE)) return MOVES;
  return under(event, BOX) ? STEPS : undefined;
}

/** The same event once more, for a place that answers by now. */
function again(event: Event): Event {
  if (event instanceof KeyboardEvent) return new KeyboardEvent(event.type, event);
  if (event instanceof PointerEvent) return new PointerEvent(event.type, event);
  return new MouseEvent(event.type, event);
}

/**
 * Keeps what a reader does to the handles and buttons of a figure whose script has not come: keys, presses,
 * and a handle that is still held when the script comes.
 *
 * @param signal Ends it.
 * @returns Has it done, one after another, each once what came before it is drawn.
 */
export function keepDeeds(place: HTMLElement, signal: AbortSignal): () => Promise<void> {
  let deeds: Event[] = [];
  const listen = (type: string, keep: (event: Event) => boolean): void =>
    place.addEventListener(type, (event) => keep(event) && deeds.push(event), { signal });
  listen('pointerdown', (event) => under(event, HANDLE));
  listen('click', (event) => under(event, WORKED) && !under(event, HANDLE));
  for (const type of ['keydown', 'keyup']) {
    listen(type, (event) => {
      if (!keysOf(event)?.test((event as KeyboardEvent).key)) return false;
      event.preventDefault();
      return true;
    });
  }
  // What is typed after a step takes its place.
  place.addEventListener(
    'input',
    ({ target }) => {
      deeds = deeds.filter((deed) => deed.target !== target);
    },
    { signal },
  );
  // Enter in a box would send the form away.
  place.addEventListener('submit', (event) => event.preventDefault(), { signal });
  // A handle let go too early stands where it was.
  for (const type of ['pointerup', 'pointercancel'] as const) {
    document.addEventListener(
      type,
      ({ pointerId }) => {
        deeds = deeds.filter(
          (deed) => deed.type !== 'pointerdown' || (deed as PointerEvent).pointerId !== pointerId,
        );
      },
      { signal },
    );
  }
  for (const handle of place.querySelectorAll(HANDLE)) {
    handle.addEventListener('touchmove', (event) => event.preventDefault(), {
      passive: false,
      signal,
    });
  }
  return async () => {
    for (const deed of deeds) {
      deed.target?.dispatchEvent(again(deed));
      await undefined;
    }
  };
}

/**
 * Calls back when a reader sets about a place: by the keyboard, by a tap, by taking hold of something
 * in it, or with a mouse over it. A finger that only pushes the page past it does not.
 *
 * @param signal Ends it.
 */
export function whenSetAbout(place: HTMLElement, begin: () => void, signal: AbortSignal): void {
  for (const type of ['focusin', 'click'] as const) place.addEventListener(type, begin, { signal });
  place.addEventListener('pointerdown', (event) => under(event, WORKED) && begin(), { signal });
  place.addEventListener('pointerenter', (event) => event.pointerType === 'mouse' && begin(), {
    signal,
  });
}
