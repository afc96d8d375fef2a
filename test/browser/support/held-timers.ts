import type { Page } from 'playwright-core';

/** Shorter ones are the framework's own, between a change and its paint. */
const LEAST_MS = 50;

interface Held {
  /** Lets so much time pass for the timers that are held. */
  readonly pass: (ms: number) => void;
}

/**
 * From now on the page's timers of some length wait until `pass` is told that their time has come:
 * what a page does after a pause is tried without one, however busy the machine is.
 */
export const holdTimers = (page: Page): Promise<void> =>
  page.evaluate((least) => {
    const [set, clear] = [window.setTimeout.bind(window), window.clearTimeout.bind(window)];
    const waiting = new Map<number, { readonly at: number; readonly run: () => void }>();
    let [now, last] = [0, 1e9];
    window.setTimeout = ((run: () => void, ms = 0, ...given: unknown[]) => {
      if (ms < least) return set(run, ms, ...given);
      last += 1;
      waiting.set(last, { at: now + ms, run });
      return last;
    }) as typeof window.setTimeout;
    window.clearTimeout = ((timer: number) => {
      if (!waiting.delete(timer)) clear(timer);
    }) as typeof window.clearTimeout;
    const pass = (ms: number): void => {
      now += ms;
      for (const [timer, { at, run }] of waiting) {
        if (at > now) continue;
        waiting.delete(timer);
        run();
      }
    };
    Object.assign(window, { pass });
  }, LEAST_MS);

export const pass = (page: Page, ms: number): Promise<void> =>
  page.evaluate(
    async ([time, least]) => {
      // What a change has yet to set about after its paint sets its timer first.
      await new Promise((done) => setTimeout(() => setTimeout(done), least - 1));
      (window as unknown as Held).pass(time);
    },
    [ms, LEAST_MS] as const,
  );
