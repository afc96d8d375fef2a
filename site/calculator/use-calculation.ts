import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { carriedOver } from '../../calculators/frame/carry.ts';
import {
  allFrom,
  evaluate,
  type Evaluation,
  type Origins,
  type Texts,
} from '../../calculators/frame/evaluate.ts';
import type { Field, Held } from '../../calculators/frame/field/fields.ts';
import { lastPossible, numberAt } from '../../calculators/frame/last-possible.ts';
import { onRoundStep } from '../../calculators/frame/field/round-steps.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { rememberedLengths, watchLengths } from '../opening/preferences.ts';
import { lastGood, letGo } from './last-good.ts';
import type { Now, State } from './state.ts';
import { useSums } from './use-sums.ts';

/** Texts, whose they are, and what the fields held before them, as far as one thing follows another. */
export interface Given {
  readonly texts: Texts;
  readonly origins: Origins;
  readonly held: { current: Readonly<Record<string, Held>> };
}

/** Texts that follow from nothing before: a link, the sheet, the example. */
export const anew = (texts: Texts, origins: Origins): Given => ({
  texts,
  origins,
  held: { current: {} },
});

/** Texts that an example was given, which are nobody's. */
export const anExample = (texts: Texts): Given => anew(texts, allFrom(texts, 'example'));

/** The same with something typed. */
const typedOver = ({ texts, origins, held }: Given, typed: Texts): Given => ({
  texts: { ...texts, ...typed },
  origins: { ...origins, ...allFrom(typed, 'yours') },
  held,
});

const isHeldOver = ({ heldOver }: Field): boolean => heldOver;

/** A number as a text that a field can hold. */
const written = (value: number): string => String(Number(value.toFixed(6)));

/** What was worked out to see whether a handle may go where it is dragged. */
interface Tried {
  readonly of: Given;
  readonly by: (given: Given) => Evaluation;
  readonly evaluation: Evaluation;
}

interface Beginning {
  /** What it begins with, which the server rendered; the same at every call. */
  readonly begin: Given;
  /** What comes of that, where it has been worked out beforehand. */
  readonly first?: Evaluation | undefined;
  /** What the visitor typed before the script came. */
  readonly typed?: Texts | undefined;
  /** What stood in boxes and could not be read when the page was left. */
  readonly refused?: () => Texts;
  /** What stands in the place of the beginning once the page is there, such as a link's figures. */
  readonly instead?: () => Given | undefined;
  /** Whether it stands in an article to show something. */
  readonly demonstration: boolean;
  /** Whether the reader keeps an engine of their own. */
  readonly ownEngine: boolean;
}

/** A calculator's state in use: what was given, what comes of it, and the ways to change it. */
export function useCalculation(calculator: AnyCalculator, beginning: Beginning) {
  const { begin, first, typed, refused, instead, demonstration, ownEngine } = beginning;
  const [given, setGiven] = useState<Given>(begin);
  const [lengths, setLengths] = useState<LengthDisplay>('mm');
  const byHand = useRef(false);
  const [dragged, setDragged] = useState(false);
  const [sums, readSumsOf] = useSums();
  /** The field that is being typed into. */
  const typing = useRef<string>();

  const evaluated = useCallback(
    ({ texts, origins, held }: Given): Evaluation =>
      evaluate(calculator, texts, {
        lengths,
        origins,
        held: held.current,
        sums,
        demonstration,
        ownEngine,
      }),
    [calculator, demonstration, ownEngine, lengths, sums],
  );
  const tried = useRef<Tried>();
  const evaluation = useMemo(() => {
    if (first && given === begin && lengths === 'mm' && !ownEngine) return first;
    const { current: done } = tried;
    return done?.of === given && done.by === evaluated ? done.evaluation : evaluated(given);
  }, [evaluated, given, first, begin, lengths, ownEngine]);

  useLayoutEffect(() => {
    setLengths(rememberedLengths());
    const left = refused?.() ?? {};
    const already = { ...left, ...typed };
    byHand.current = Object.keys(already).length > 0;
    const other = instead?.();
    // What the server rendered stands as it is when nothing was given.
    if (other || byHand.current) {
      const before = other ?? begin;
      // What is typed over a figure that was shown leaves that figure standing while it cannot be read.
      if (byHand.current) {
        before.held.current = lastGood(evaluated(before), {});
        before.held.current = letGo(evaluated(typedOver(before, left)), before.held.current);
      }
      setGiven(byHand.current ? typedOver(before, already) : before);
    }
    return watchLengths(setLengths);
  }, [typed]);

  useEffect(() => readSumsOf(evaluation), [evaluation]);

  useLayoutEffect(() => {
    given.held.current = lastGood(evaluation, given.held.current, typing.current);
  }, [evaluation, given]);

  const state = useMemo((): State => ({ evaluation, lengths }), [evaluation, lengths]);
  const latest = useRef(state);
  latest.current = state;
  const now: Now = useCallback(() => latest.current, []);
  const asked = useRef(given);
  asked.current = given;

  const onText = useCallback(
    (key: string, text: string) => {
      const carried = carriedOver(calculator, latest.current.evaluation, key, text);
      byHand.current = true;
      typing.current = key;
      setDragged(false);
      setGiven((before) => {
        const after = typedOver(before, { [key]: text });
        return {
          ...after,
          texts: { ...after.texts, ...carried.texts },
          origins: { ...after.origins, ...carried.origins },
        };
      });
    },
    [calculator],
  );
  /** A handle stops where the figures would become impossible. */
  const onSet = useCallback(
    (key: string, moved: number) => {
      const { evaluation: shown } = latest.current;
      const from = shown.computed ? numberAt(calculator, shown, key) : undefined;
      const field = shown.fields.find((each) => each.key === key);
      const value =
        field?.kind === 'figure' ? onRoundStep(moved, from, field.spec, lengths) : moved;
      const base = asked.current;
      byHand.current = true;
      setDragged(true);
      // Most steps of a drag leave a figure where its round step is.
      if (base.origins[key] === 'yours' && base.texts[key] === written(value)) return;
      const movedTo = (to: number): Given => typedOver(base, { [key]: written(to) });
      let good: (Tried & { readonly at: number }) | undefined;
      const possible = (at: number): boolean => {
        const of = movedTo(at);
        const found = evaluated(of);
        if (found.computed) good = { at, of, by: evaluated, evaluation: found };
        return found.computed;
      };
      const held = from === undefined ? value : lastPossible(from, value, possible);
      const after = good?.at === held ? good.of : movedTo(held);
      tried.current = good;
      asked.current = after;
      setGiven((before) => (before === base ? after : typedOver(before, { [key]: written(held) })));
    },
    [calculator, evaluated, lengths],
  );
  /** The typing is over: what can be read is held, and on what cannot be read nothing rests any more. */
  const onTyped = useCallback(() => {
    typing.current = undefined;
    const { evaluation: shown } = latest.current;
    const { held } = asked.current;
    held.current = lastGood(shown, held.current);
    if (shown.fields.some(isHeldOver) || shown.errorFields.some(isHeldOver)) {
      setGiven((before) => ({ ...before, held: { current: letGo(shown, held.current) } }));
    }
  }, []);
  /** The picture is let go. */
  const onEnd = useCallback(() => setDragged(false), []);

  return { state, now, given, setGiven, byHand, dragged, onText, onTyped, onSet, onEnd };
}
