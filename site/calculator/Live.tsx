import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { fromQuery, originsIn, toQuery } from '../../calculators/frame/address.ts';
import {
  allFrom,
  evaluate,
  type Evaluation,
  type Origins,
  type Texts,
} from '../../calculators/frame/evaluate.ts';
import type { Held } from '../../calculators/frame/fields.ts';
import { carriedOver } from '../../calculators/frame/carry.ts';
import { lastPossible, numberAt } from '../../calculators/frame/last-possible.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { Answer } from './Answer.tsx';
import { Form } from './Form.tsx';
import { lastGood } from './last-good.ts';
import { More } from './More.tsx';
import { Notes } from './Notes.tsx';
import { PictureGuard } from './PictureGuard.tsx';
import { rememberedLengths, watchLengths } from '../browser/preferences.ts';
import type { State } from './state.ts';
import { useAddress } from './use-address.ts';
import { useLate } from './use-late.ts';
import { useSums } from './use-sums.ts';
import { takeOwnSheet, useOwnSheet } from './use-own-sheet.ts';
import { failureWords } from '../browser/load-failure.ts';

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

/** Texts, whose they are, and what the fields held before them, as far as one thing follows another. */
interface Given {
  readonly texts: Texts;
  readonly origins: Origins;
  readonly held: { current: Readonly<Record<string, Held>> };
}

/** Texts that follow from nothing before: a link, the sheet, the example. */
const anew = (texts: Texts, origins: Origins): Given => ({ texts, origins, held: { current: {} } });

const fromAddress = (query: string): Given => anew(fromQuery(query), originsIn(query));

/** The same with something typed. */
const typedOver = ({ texts, origins, held }: Given, typed: Texts): Given => ({
  texts: { ...texts, ...typed },
  origins: { ...origins, ...allFrom(typed, 'yours') },
  held,
});

/** A number as a text that a field can hold. */
const written = (value: number): string => String(Number(value.toFixed(6)));

/** While the picture is dragged, the figures follow at a pace that can be read, and leave the frames to it. */
const FOLLOW_MS = 150;

/** A calculator in use. The server renders the same with the defaults. */
export function Live({ calculator, set, first, ownsAddress, typed, idPrefix }: LiveProps) {
  const untouched = useRef<Given>();
  untouched.current ??= anew(set ?? {}, allFrom(set ?? {}, 'example'));
  const [given, setGiven] = useState<Given>(untouched.current);
  const [lengths, setLengths] = useState<LengthDisplay>('mm');
  const byHand = useRef(false);
  const [dragged, setDragged] = useState(false);
  const [own, setOwn] = useOwnSheet(calculator, ownsAddress);

  const ownEngine = own?.own ?? false;
  const [sums, readSumsOf] = useSums();

  const evaluated = useCallback(
    ({ texts, origins, held }: Given): Evaluation =>
      evaluate(calculator, texts, {
        lengths,
        origins,
        held: held.current,
        sums,
        demonstration: !ownsAddress,
        ownEngine,
      }),
    [calculator, ownsAddress, ownEngine, lengths, sums],
  );
  const evaluation = useMemo(
    () =>
      first && given === untouched.current && lengths === 'mm' && !ownEngine
        ? first
        : evaluated(given),
    [evaluated, given, first, lengths, ownEngine],
  );

  const sheet = useRef(own);
  sheet.current = own;
  const back = useCallback((query: string) => {
    byHand.current = false;
    const filled = query === '' ? sheet.current : undefined;
    setGiven(filled ? anew(filled.texts, filled.origins) : fromAddress(query));
  }, []);
  const { write, commit } = useAddress(ownsAddress, back);
  const end = useCallback(() => {
    setDragged(false);
    commit();
  }, [commit]);

  useLayoutEffect(() => {
    setLengths(rememberedLengths());
    const already = typed ?? {};
    byHand.current = Object.keys(already).length > 0;
    const linked = ownsAddress && Object.keys(fromQuery(location.search)).length > 0;
    // What the server rendered stands as it is when nothing was given.
    if (linked || byHand.current) {
      const before = linked ? fromAddress(location.search) : untouched.current!;
      // What is typed over a figure that was shown leaves that figure standing while it cannot be read.
      if (byHand.current) before.held.current = lastGood(evaluated(before), {});
      setGiven(byHand.current ? typedOver(before, already) : before);
    }
    return watchLengths(setLengths);
  }, [ownsAddress, typed]);

  useEffect(() => readSumsOf(evaluation), [evaluation]);

  // Before the next event, so that an edit that ends at once is written whole.
  useLayoutEffect(() => {
    given.held.current = lastGood(evaluation, given.held.current);
    if (byHand.current) write(() => toQuery(evaluation), dragged);
  }, [evaluation, given, write, dragged]);

  useEffect(() => {
    if (!own || Object.keys(own.texts).length === 0) return;
    setGiven((before) => ({
      texts: { ...own.texts, ...(byHand.current ? before.texts : {}) },
      origins: { ...own.origins, ...(byHand.current ? before.origins : {}) },
      held: byHand.current ? before.held : { current: {} },
    }));
  }, [own]);

  const state = useMemo((): State => ({ evaluation, lengths }), [evaluation, lengths]);
  const latest = useRef(state);
  latest.current = state;
  const now = useCallback(() => latest.current, []);
  const asked = useRef(given);
  asked.current = given;
  const change = useCallback((key: string, text: string, byPicture: boolean) => {
    byHand.current = true;
    setDragged(byPicture);
    setGiven((before) => typedOver(before, { [key]: text }));
  }, []);
  const onText = useCallback(
    (key: string, text: string) => {
      const carried = carriedOver(calculator, latest.current.evaluation, key, text);
      byHand.current = true;
      setDragged(false);
      setGiven((before) => {
        const after = typedOver(before, { [key]: text });
        return {
          ...after,
          texts: { ...after.texts, ...carried.texts },
          origins: { ...after.origins, ...carried.originsOf(after.origins) },
        };
      });
    },
    [calculator],
  );
  /** A handle stops where the figures would become impossible. */
  const onSet = useCallback(
    (key: string, value: number) => {
      const { evaluation: shown } = latest.current;
      const from = shown.computed ? numberAt(calculator, shown, key) : undefined;
      const base = asked.current;
      const possible = (each: number): boolean =>
        evaluated(typedOver(base, { [key]: written(each) })).computed;
      const held = from === undefined ? value : lastPossible(from, value, possible);
      change(key, written(held), true);
    },
    [calculator, change, evaluated],
  );
  const onDefaults = useCallback(() => {
    byHand.current = true;
    setGiven(anew({}, {}));
  }, []);

  /** Puts the reader's own engine in place of what the page holds; says why where it cannot. */
  const onOwn = useCallback(async (): Promise<string | undefined> => {
    const filled = await takeOwnSheet(calculator).catch(failureWords);
    if (typeof filled === 'string') return filled;
    if (!filled) return 'Your sheet holds no figure that this page asks for.';
    byHand.current = true;
    setOwn(filled);
    setGiven(({ texts, origins, held }) => ({
      texts: { ...texts, ...filled.texts },
      origins: { ...origins, ...filled.origins },
      held,
    }));
    return undefined;
  }, [calculator, setOwn]);

  // The answer comes first. The picture is painted with it, and before it, when it is what moves.
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
    return (
      <PictureGuard>
        <Picture {...known} idPrefix={idPrefix} set={onSet} commit={end} />
      </PictureGuard>
    );
  }, [Picture, drawn, dragged, idPrefix, onSet, end]);
  const more = useMemo(
    () => <More {...told} {...{ calculator, now, idPrefix, ownsAddress }} />,
    [calculator, told, now, idPrefix, ownsAddress],
  );
  const answer = useMemo(
    () => (
      <>
        <Answer {...figured} {...{ calculator, now }} />
        <Notes {...figured} {...{ calculator, ownsAddress, onDefaults, onOwn }} sheet={own?.name} />
      </>
    ),
    [calculator, figured, own, ownsAddress, now, onDefaults, onOwn],
  );
  const form = useMemo(
    () => <Form {...figured} {...{ calculator, idPrefix, onText, onCommit: commit }} />,
    [calculator, figured, idPrefix, onText, commit],
  );

  return (
    <div class="calc">
      {answer}
      <div data-part="picture" class={`calc-picture${drawn.evaluation.computed ? '' : ' stale'}`}>
        {picture}
      </div>
      {form}
      {more}
    </div>
  );
}
