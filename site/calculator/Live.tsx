import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { fromQuery, toQuery } from '../../calculators/frame/address.ts';
import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import { remarksOf } from '../../calculators/frame/summary.ts';
import type { AnyCalculator, AnyValue } from '../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { Downloads } from './Downloads.tsx';
import { Fields } from './Fields.tsx';
import { LengthsChoice } from './LengthsChoice.tsx';
import { rememberedLengths, watchLengths } from './preferences.ts';
import { Problems } from './Problems.tsx';
import { Leads, Others, Tables } from './Results.tsx';
import { SendToSheet } from './SendToSheet.tsx';
import { Share } from './Share.tsx';
import { useAddress } from './use-address.ts';
import { useConverter } from './use-converter.ts';
import { useOwnSheet } from './use-own-sheet.ts';

export interface LiveProps {
  readonly calculator: AnyCalculator;
  /** Inputs other than the defaults, for a calculator set inside an article. */
  readonly set?: Texts;
  /** Whether it is the page's own calculator and keeps its state in the address. */
  readonly ownsAddress: boolean;
  /** What the visitor typed before the script came. */
  readonly typed?: Texts;
  readonly idPrefix: string;
}

/** Values that were read well, kept for when one cannot be read. */
function lastGood(
  evaluation: Evaluation,
  before: Readonly<Record<string, AnyValue>>,
): Record<string, AnyValue> {
  const wrong = new Set(evaluation.problems.flatMap(({ key }) => key ?? []));
  const good: Record<string, AnyValue> = { ...before };
  for (const [key, value] of Object.entries(evaluation.values)) {
    const faulty =
      wrong.has(key) ||
      (Array.isArray(value) && value.some((_, i) => wrong.has(`${key}-${i + 1}`)));
    if (!faulty) good[key] = value;
  }
  return good;
}

/** A calculator in use. The server renders the same with the defaults. */
export function Live({ calculator, set, ownsAddress, typed, idPrefix }: LiveProps) {
  const [texts, setTexts] = useState<Texts>(set ?? {});
  const [lengths, setLengths] = useState<LengthDisplay>('mm');
  const [needed, setNeeded] = useState(false);
  const { converter, failure } = useConverter(needed);
  const held = useRef<Record<string, AnyValue>>({});
  const byHand = useRef(false);
  const own = useOwnSheet(calculator, ownsAddress);

  const evaluation = useMemo(
    () =>
      evaluate(calculator, texts, {
        lengths,
        held: held.current,
        ...(converter ? { converter } : {}),
      }),
    [calculator, texts, lengths, converter],
  );

  const back = useCallback((query: string) => {
    byHand.current = false;
    held.current = {};
    setTexts(fromQuery(query));
  }, []);
  const { write, commit } = useAddress(ownsAddress, back);

  useLayoutEffect(() => {
    setLengths(rememberedLengths());
    const linked = ownsAddress ? fromQuery(location.search) : {};
    byHand.current = Object.keys(typed ?? {}).length > 0;
    setTexts((before) => ({ ...before, ...linked, ...typed }));
    return watchLengths(setLengths);
  }, [ownsAddress, typed]);

  // Before the next event, so that an edit that ends at once is written whole.
  useLayoutEffect(() => {
    if (evaluation.pending) setNeeded(true);
    else held.current = lastGood(evaluation, held.current);
    if (byHand.current) write(toQuery(evaluation));
  }, [evaluation, write]);

  useEffect(() => {
    if (own && !byHand.current) setTexts(own.texts);
  }, [own]);

  const onText = useCallback((key: string, text: string) => {
    byHand.current = true;
    setTexts((before) => ({ ...before, [key]: text }));
  }, []);
  const onSet = useCallback(
    (key: string, value: number) => {
      onText(key, String(Number(value.toFixed(6))));
    },
    [onText],
  );
  const defaults = (): void => {
    byHand.current = true;
    setTexts({});
  };
  const link = (): string => {
    const page = new URL(
      ownsAddress ? '.' : pageOf(`calculators/${calculator.slug}/`),
      location.href.split(/[?#]/)[0],
    );
    return `${page.href}?${toQuery(evaluation)}`;
  };

  const { picture: Picture, cautions = [] } = calculator;
  const remarks = remarksOf(calculator, evaluation);
  const shared = { calculator, evaluation, lengths };
  const fromSheet = own && {
    name: own.name,
    keys: evaluation.fields
      .map(({ key }) => key)
      .filter((key) => own.texts[key] !== undefined && own.texts[key] === texts[key]),
  };
  const handlers = { lengths, idPrefix, fromSheet, onText, onCommit: commit };
  const { values, results, spreads } = evaluation;

  return (
    <div class="calc">
      <div class="calc-answer">
        <Leads {...shared} />
      </div>
      <Problems evaluation={evaluation} idPrefix={idPrefix} failure={failure} />
      <form
        class="calc-form"
        aria-label={`Figures for: ${calculator.title}`}
        onSubmit={(event) => event.preventDefault()}
      >
        <LengthsChoice lengths={lengths} idPrefix={idPrefix} />
        {fromSheet && fromSheet.keys.length > 0 ? (
          <div class="from-sheet">
            <p>
              {fromSheet.keys.length === 1
                ? 'One figure is'
                : `${fromSheet.keys.length} figures are`}{' '}
              from your sheet: {fromSheet.name}. Type over any of them; the sheet stays as it is.
            </p>
            <button type="button" onClick={defaults}>
              Use the defaults instead
            </button>
          </div>
        ) : null}
        <Fields fields={evaluation.fields} folded={calculator.folded} {...handlers} />
        {evaluation.errorFields.length === 0 ? null : (
          <details class="errors">
            <summary>How exact are your readings?</summary>
            <p>
              Each ± below is carried through to the results: readings are taken as independent and
              combined as the root of the sum of their squares.
            </p>
            <Fields fields={evaluation.errorFields} {...handlers} />
          </details>
        )}
      </form>
      <div class={`calc-picture${evaluation.computed ? '' : ' stale'}`}>
        {evaluation.computed ? (
          <Picture
            values={values}
            results={results}
            spreads={spreads}
            lengths={lengths}
            idPrefix={idPrefix}
            set={onSet}
            commit={commit}
          />
        ) : (
          <p class="no-picture">There is nothing to draw until the figures are put right.</p>
        )}
      </div>
      <div class="calc-more">
        {remarks.length === 0 ? null : (
          <ul class="remarks">
            {remarks.map((remark) => (
              <li key={remark}>{remark}</li>
            ))}
          </ul>
        )}
        <Tables {...shared} />
        <Others {...shared} />
        {cautions.length === 0 ? null : (
          <div class="caution">
            <p class="caution-title">Take care</p>
            <ul>
              {(cautions as readonly string[]).map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
          </div>
        )}
        <Downloads calculator={calculator} evaluation={evaluation} />
        <Share {...shared} idPrefix={idPrefix} link={link} />
        {ownsAddress ? (
          <SendToSheet
            {...shared}
            query={() => toQuery(evaluation)}
            sheetAddress={typeof document === 'undefined' ? '' : pageOf('sheet/')}
          />
        ) : null}
      </div>
    </div>
  );
}

/** A page of the site, from the home page that this page names. */
function pageOf(path: string): string {
  const here = document.querySelector<HTMLLinkElement>('link[rel="start"]');
  return new URL(path, here?.href ?? location.origin).href;
}
