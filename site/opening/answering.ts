const page = document.documentElement.dataset;

/** The page answers: nothing has failed that still stands in its way. */
export function pageAnswers(): void {
  page.ready = '';
  delete page.failed;
}

/** A part of the page that it cannot do without did not come. */
export function pageFailed(): void {
  page.failed = '';
}

/** Steps of painting in which a calculator draws what it was given: answer, picture, tables. */
const STEPS = 3;

/** The address has been read: what the page shows is of it, once that has been painted. */
export function addressRead(): void {
  if (page.asked === undefined) return;
  const after = (steps: number): void => {
    if (steps === 0) delete page.asked;
    else requestAnimationFrame(() => setTimeout(() => after(steps - 1)));
  };
  after(STEPS);
}
