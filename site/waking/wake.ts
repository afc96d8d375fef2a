import { h } from 'preact';
import {
  allFrom,
  evaluate,
  type Evaluation,
  type Texts,
} from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { addressRead, pageAnswers } from '../browser/answering.ts';
import { Live, type LiveProps } from '../calculator/Live.tsx';
import { rememberedLengths, watchLengths } from '../browser/preferences.ts';
import { hydrateInPlace } from '../browser/hydrate.ts';
import { typedBefore } from '../browser/typed-before.ts';
import { keepsSheet } from '../calculator/use-own-sheet.ts';
import { whenTouched } from './when-touched.ts';

const whenIdle = globalThis.requestIdleCallback as typeof requestIdleCallback | undefined;

/**
 * Makes a calculator answer. What the server rendered stands until it is touched: on a slow phone
 * waking takes a third of a second, which a reader who only reads need not pay.
 */
export function ready(place: HTMLElement, calculator: AnyCalculator, kept?: Texts): void {
  const { set: ofServer, prefix: idPrefix = '', owns } = place.dataset;
  const ownsAddress = owns === 'true';
  const set = ofServer === undefined ? {} : (JSON.parse(ofServer) as Texts);
  /** Whether there is anything to show that the server did not render. */
  const differs = (): boolean =>
    rememberedLengths() !== 'mm' ||
    (ownsAddress && (location.search !== '' || keepsSheet())) ||
    place.contains(document.activeElement) ||
    Object.keys(typedBefore(place, idPrefix)).length > 0;

  let first: Evaluation | undefined;
  const asleep = new AbortController();
  const { signal } = asleep;
  const figure = (): void => {
    if (signal.aborted) return;
    first ??= evaluate(calculator, set, {
      lengths: 'mm',
      origins: allFrom(set, 'example'),
      demonstration: !ownsAddress,
    });
  };
  const prepare = (): void => {
    figure();
    void first?.spreads;
  };
  const now = (): void => {
    if (signal.aborted) return;
    asleep.abort();
    const typed = { ...kept, ...typedBefore(place, idPrefix) };
    const given: LiveProps = { calculator, set, idPrefix, ownsAddress, typed };
    hydrateInPlace(h(Live, first ? { ...given, first } : given), place);
    place.dataset.awake = 'true';
    if (ownsAddress) addressRead();
  };
  if (kept || differs()) now();
  else {
    whenTouched(place, prepare, now, signal);
    // Where the browser says when it rests, a third of the waking is done then.
    whenIdle?.(() => {
      figure();
      whenIdle(prepare);
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
