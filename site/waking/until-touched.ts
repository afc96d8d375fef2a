import type { ComponentChild } from 'preact';
import {
  allFrom,
  evaluate,
  type Evaluation,
  type Texts,
} from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { pageAnswers } from '../opening/answering.ts';
import { hydrateInPlace } from '../browser/hydrate.ts';
import { rememberedLengths, watchLengths } from '../opening/preferences.ts';
import { isAtWork, typedBefore } from '../opening/typed-before.ts';
import { whenTouched } from './when-touched.ts';

const whenIdle = globalThis.requestIdleCallback as typeof requestIdleCallback | undefined;

/** What is known of a calculator when it is taken into use. */
export interface Waking {
  readonly calculator: AnyCalculator;
  readonly set: Texts;
  readonly idPrefix: string;
  readonly typed: Texts;
  /** What comes of `set`, where there was time to work it out. */
  readonly first?: Evaluation;
}

interface Sleeper {
  readonly calculator: AnyCalculator;
  /** Whether it stands in an article to show something. */
  readonly demonstration: boolean;
  /** What was typed in it before the page was loaded again. */
  readonly kept: Texts | undefined;
  /** Whether there is anything of its own to show that the server did not render. */
  readonly differs: () => boolean;
  /** Whether its script has come because the reader stirred. */
  readonly stirred: boolean;
  readonly draw: (waking: Waking) => ComponentChild;
  /** What is to be done once it is in use. */
  readonly awake?: () => void;
}

/**
 * Makes a calculator answer. What the server rendered stands until it is touched: on a slow phone
 * waking takes a third of a second, which a reader who only reads need not pay.
 */
export function answerWhenTouched(place: HTMLElement, sleeper: Sleeper): void {
  const { calculator, demonstration, kept, stirred, draw } = sleeper;
  const { set: ofServer, prefix: idPrefix = '' } = place.dataset;
  const set = ofServer === undefined ? {} : (JSON.parse(ofServer) as Texts);
  /** Whether there is anything to show that the server did not render. */
  const differs = (): boolean =>
    rememberedLengths() !== 'mm' || sleeper.differs() || isAtWork(place);

  let first: Evaluation | undefined;
  const asleep = new AbortController();
  const { signal } = asleep;
  const figure = (): void => {
    if (signal.aborted) return;
    first ??= evaluate(calculator, set, {
      lengths: 'mm',
      origins: allFrom(set, 'example'),
      demonstration,
    });
  };
  const now = (): void => {
    if (signal.aborted) return;
    asleep.abort();
    const typed = { ...kept, ...typedBefore(place, idPrefix) };
    const waking: Waking = { calculator, set, idPrefix, typed };
    hydrateInPlace(draw(first ? { ...waking, first } : waking), place);
    place.dataset.awake = 'true';
    sleeper.awake?.();
  };
  if (kept || differs()) now();
  else {
    whenTouched(place, figure, now, stirred, signal);
    // Where the browser says when it rests, a third of the waking is done then.
    whenIdle?.(() => {
      figure();
      whenIdle(() => void first?.spreads);
    });
    signal.addEventListener('abort', watchLengths(now));
    // By the first, a browser that keeps what was typed in a form has put it back.
    for (const type of ['pageshow', 'popstate'] as const) {
      addEventListener(type, () => differs() && now(), { signal });
    }
  }
  place.dataset.ready = 'true';
  pageAnswers();
}
