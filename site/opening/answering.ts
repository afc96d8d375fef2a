/** How long a page waits for the scripts that it has asked for before it says that they are late. */
export const LATE_MS = 8000;

const marks = (): DOMStringMap => document.documentElement.dataset;

/** The page answers: nothing has failed that still stands in its way. */
export function pageAnswers(): void {
  const page = marks();
  page.ready = '';
  delete page.failed;
}

/** A part of the page that it cannot do without did not come. */
export function pageFailed(): void {
  const page = marks();
  page.failed = '';
}

/** Steps of painting in which a calculator draws what it was given: answer, picture, tables. */
const STEPS = 3;

/** Shows what was held back until it has been painted anew; guard.ts says what is. */
const showOnce = (held: 'asked' | 'kept') => (): void => {
  const page = marks();
  if (page[held] === undefined) return;
  const after = (steps: number): void => {
    if (steps === 0) document.documentElement.removeAttribute(`data-${held}`);
    else requestAnimationFrame(() => setTimeout(() => after(steps - 1)));
  };
  after(STEPS);
};

/** The address has been read: what the page shows is of it. */
export const addressRead = showOnce('asked');

/** The reader's own sheet has been read, or cannot be. */
export const sheetRead = showOnce('kept');
