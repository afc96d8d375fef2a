import { useCallback, useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { fromQuery, originsIn, ownIn, toQuery, withOwn } from '../../calculators/frame/address.ts';
import type { Evaluation, Origins, Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import '../browser/one-line.ts';
import type { Filled } from '../sheet/for-calculator.ts';
import { failureWords } from '../opening/load-failure.ts';
import { Answer } from './Answer.tsx';
import { CopyLink } from './CopyLink.tsx';
import { Form } from './Form.tsx';
import { LookHere } from './LookHere.tsx';
import { More } from './More.tsx';
import { Notes } from './Notes.tsx';
import { refusedIn } from './last-good.ts';
import { useLast } from './last-time.ts';
import { ownHere, refusedHere, useAddress } from './use-address.ts';
import { anew, anExample, useCalculation, type Given } from './use-calculation.ts';
import { givesFigures, takeOwnSheet, useOwnSheet } from './use-own-sheet.ts';
import { usePicture } from './use-picture.tsx';

export interface LiveProps {
  readonly calculator: AnyCalculator;
  /** Inputs other than the defaults. */
  readonly set?: Texts;
  /** What comes of them, where it has been worked out beforehand. */
  readonly first?: Evaluation;
  /** What the visitor typed before the script came. */
  readonly typed?: Texts;
  readonly idPrefix: string;
}

/** The figures of the open entry of the history: a link's, but for those that were given here. */
const fromAddress = (query: string): Given =>
  anew(fromQuery(query), withOwn(originsIn(query), ownHere()));

/** The figures of the page's address, where it holds any. */
const linked = (): Given | undefined =>
  Object.keys(fromQuery(location.search)).length > 0 ? fromAddress(location.search) : undefined;

/** Origins of which none is the sheet's unless the engine in use holds that very text. */
function stillTheSheets({ texts, origins }: Given, { holds }: Filled): Origins {
  return Object.fromEntries(
    Object.entries(origins).map(([key, origin]) => [
      key,
      origin === 'sheet' && texts[key] !== holds[key] ? 'link' : origin,
    ]),
  );
}

/** The figures of the engine in use, with what was given beside them. */
const beside = ({ texts, origins }: Filled, given: Given): Given =>
  anew({ ...texts, ...given.texts }, { ...origins, ...given.origins });

/** A page's own calculator in use, which keeps its state in the address. The server renders the same with the defaults. */
export function Live({ calculator, set, first, typed, idPrefix }: LiveProps) {
  const untouched = useRef<Given>();
  untouched.current ??= anExample(set ?? {});
  const [own, setOwn] = useOwnSheet(calculator);
  const { state, now, given, setGiven, byHand, dragged, onText, onTyped, onSet, onEnd } =
    useCalculation(calculator, {
      begin: untouched.current,
      first,
      typed,
      refused: refusedHere,
      instead: linked,
      demonstration: false,
      ownEngine: own?.own ?? false,
    });
  const { evaluation } = state;

  const sheet = useRef(own);
  sheet.current = own;
  const back = useCallback(
    (query: string) => {
      byHand.current = false;
      const asked = fromAddress(query);
      const filled = givesFigures(calculator, query) ? undefined : sheet.current;
      setGiven(filled ? beside(filled, asked) : asked);
    },
    [calculator],
  );
  const { write, commit } = useAddress(back);
  const end = useCallback(() => {
    onEnd();
    commit();
  }, [onEnd, commit]);
  const endTyping = useCallback(() => {
    onTyped();
    commit();
  }, [onTyped, commit]);

  // Before the next event, so that an edit that ends at once is written whole.
  useLayoutEffect(() => {
    if (byHand.current)
      write(
        () => ({
          query: toQuery(evaluation),
          own: ownIn(evaluation),
          refused: refusedIn(evaluation),
        }),
        dragged,
      );
  }, [evaluation, given, write, dragged]);

  useEffect(() => {
    if (!own) return;
    if (Object.keys(own.texts).length === 0) {
      // What came from the sheet before a reload is the sheet's no more where that holds another.
      setGiven((before) => ({ ...before, origins: stillTheSheets(before, own) }));
      return;
    }
    setGiven((before) => ({
      ...beside(own, before === untouched.current ? anew({}, {}) : before),
      held: byHand.current ? before.held : { current: {} },
    }));
  }, [own]);

  const onDefaults = useCallback(() => {
    byHand.current = true;
    setGiven(anew({}, {}));
  }, []);

  const onLast = useLast(
    calculator.slug,
    useCallback(({ texts, origins }) => {
      byHand.current = true;
      setGiven(anew(texts, origins));
    }, []),
  );

  /** Puts the reader's own engine in place of what the page holds; says why where it cannot. */
  const onOwn = useCallback(async (): Promise<string | undefined> => {
    const filled = await takeOwnSheet(calculator).catch(failureWords);
    if (typeof filled === 'string') return filled;
    if (!filled || Object.keys(filled.texts).length === 0) {
      return 'Your sheet holds no figure that this page asks for.';
    }
    byHand.current = true;
    setOwn(filled);
    setGiven(({ texts, origins, held }) => ({
      texts: { ...texts, ...filled.texts },
      origins: { ...origins, ...filled.origins },
      held,
    }));
    return undefined;
  }, [calculator, setOwn]);

  const { figured, answered, told, picture } = usePicture({
    calculator,
    state,
    dragged,
    idPrefix,
    onSet,
    onEnd: end,
  });
  const more = useMemo(
    () => <More {...told} {...{ calculator, now, idPrefix }} />,
    [calculator, told, now, idPrefix],
  );
  const answer = useMemo(
    () => (
      <Answer {...answered} calculator={calculator}>
        <CopyLink calculator={calculator} now={now} />
      </Answer>
    ),
    [calculator, answered, now],
  );
  const lookHere = useMemo(
    () => <LookHere {...told} {...{ calculator, idPrefix }} />,
    [calculator, told, idPrefix],
  );
  const notes = useMemo(
    () => (
      <Notes {...figured} {...{ calculator, onDefaults, onOwn, onLast }} engine={own}>
        {lookHere}
      </Notes>
    ),
    [calculator, figured, lookHere, own, onDefaults, onOwn, onLast],
  );
  const form = useMemo(
    () => <Form {...figured} {...{ calculator, idPrefix, onText, onCommit: endTyping }} />,
    [calculator, figured, idPrefix, onText, endTyping],
  );

  return (
    <div class="calc">
      {answer}
      {notes}
      <div class="calc-pair">
        {picture}
        {form}
      </div>
      {more}
    </div>
  );
}
