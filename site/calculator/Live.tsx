import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { fromQuery, toQuery } from '../../calculators/frame/address.ts';
import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator, AnyValue } from '../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { Figures } from './Figures.tsx';
import { lastGood } from './last-good.ts';
import { More } from './More.tsx';
import { rememberedLengths, watchLengths } from './preferences.ts';
import type { State } from './state.ts';
import { useAddress } from './use-address.ts';
import { useLate } from './use-late.ts';
import { useOwnSheet } from './use-own-sheet.ts';

export interface LiveProps {
  readonly calculator: AnyCalculator;
  /** Inputs other than the defaults, for a calculator set inside an article. */
  readonly set?: Texts;
  /** Whether it is the page's own calculator and keeps its state in the address. */
  readonly ownsAddress: boolean;
  /** What comes of them, where it has been worked out beforehand. */
  readonly first?: Evaluation;
  /** What the visitor typed before the script came. */
  readonly typed?: Texts;
  readonly idPrefix: string;
}

/** While the picture is dragged, the figures follow at a pace that can be read, and leave the frames to it. */
const FOLLOW_MS = 150;

/** A calculator in use. The server renders the same with the defaults. */
export function Live({ calculator, set, first, ownsAddress, typed, idPrefix }: LiveProps) {
  const untouched = useRef(set ?? {}).current;
  const [texts, setTexts] = useState<Texts>(untouched);
  const [lengths, setLengths] = useState<LengthDisplay>('mm');
  const held = useRef<Record<string, AnyValue>>({});
  const byHand = useRef(false);
  const [dragged, setDragged] = useState(false);
  const own = useOwnSheet(calculator, ownsAddress);

  const evaluation = useMemo(
    () =>
      first && texts === untouched && lengths === 'mm'
        ? first
        : evaluate(calculator, texts, { lengths, held: held.current }),
    [calculator, texts, untouched, first, lengths],
  );

  const back = useCallback((query: string) => {
    byHand.current = false;
    held.current = {};
    setTexts(fromQuery(query));
  }, []);
  const { write, commit } = useAddress(ownsAddress, back);
  const end = useCallback(() => {
    setDragged(false);
    commit();
  }, [commit]);

  useLayoutEffect(() => {
    setLengths(rememberedLengths());
    const linked = ownsAddress ? fromQuery(location.search) : {};
    byHand.current = Object.keys(typed ?? {}).length > 0;
    const given = { ...linked, ...typed };
    // What the server rendered stands as it is when nothing was given.
    if (Object.keys(given).length > 0) setTexts((before) => ({ ...before, ...given }));
    return watchLengths(setLengths);
  }, [ownsAddress, typed]);

  // Before the next event, so that an edit that ends at once is written whole.
  useLayoutEffect(() => {
    held.current = lastGood(evaluation, held.current);
    if (byHand.current) write(() => toQuery(evaluation));
  }, [evaluation, write]);

  useEffect(() => {
    if (own && !byHand.current) setTexts(own.texts);
  }, [own]);

  const change = useCallback((key: string, text: string, byPicture: boolean) => {
    byHand.current = true;
    setDragged(byPicture);
    setTexts((before) => ({ ...before, [key]: text }));
  }, []);
  const onText = useCallback((key: string, text: string) => change(key, text, false), [change]);
  const onSet = useCallback(
    (key: string, value: number) => change(key, String(Number(value.toFixed(6))), true),
    [change],
  );
  const onDefaults = useCallback(() => {
    byHand.current = true;
    setTexts({});
  }, []);

  // The answer comes first. The picture is painted with it, and before it, when it is what moves.
  const state = useMemo((): State => ({ evaluation, lengths }), [evaluation, lengths]);
  const latest = useRef(state);
  latest.current = state;
  const now = useCallback(() => latest.current, []);
  const drawn = useLate(state, dragged ? 'none' : 'paint');
  const figured = useLate(state, dragged ? FOLLOW_MS : 'none');
  const told = useLate(figured, dragged ? 'none' : 'paint');
  const { picture: Picture } = calculator;
  const picture = useMemo(() => {
    const { computed, values, results } = drawn.evaluation;
    if (!computed) {
      return <p class="no-picture">There is nothing to draw until the figures are put right.</p>;
    }
    // The ± of a figure hardly changes along a drag, and costs more than the figure itself.
    const spreads = () => (dragged ? figured : drawn).evaluation.spreads;
    const known = { values, results, spreads, lengths: drawn.lengths };
    return <Picture {...known} idPrefix={idPrefix} set={onSet} commit={end} />;
  }, [Picture, drawn, dragged, idPrefix, onSet, end]);
  const more = useMemo(
    () => <More {...told} {...{ calculator, now, idPrefix, ownsAddress }} />,
    [calculator, told, now, idPrefix, ownsAddress],
  );
  const figures = useMemo(() => {
    const fromSheet = own && {
      name: own.name,
      keys: figured.evaluation.fields
        .filter(({ key, text, given }) => given && own.texts[key] === text)
        .map(({ key }) => key),
    };
    const handlers = { idPrefix, fromSheet, onText, onCommit: commit, onDefaults };
    return <Figures {...figured} {...handlers} calculator={calculator} />;
  }, [calculator, figured, own, idPrefix, onText, commit, onDefaults]);

  return (
    <div class="calc">
      {figures}
      <div class={`calc-picture${drawn.evaluation.computed ? '' : ' stale'}`}>{picture}</div>
      {more}
    </div>
  );
}
