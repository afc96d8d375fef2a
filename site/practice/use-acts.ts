import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { readActs, writeActs, type Words } from '../../calculators/practice/acts.ts';
import { keepActs, keptActs, type Work } from './kept-acts.ts';

/** A drag is many acts: they are kept when it rests. */
const PAUSE_MS = 300;

interface Doing<Bench, Act> {
  readonly work: Work;
  readonly words: Words;
  /** The bench as it comes. */
  readonly setUp: () => Bench;
  /** The bench after an act; nothing where there is nothing on this bench that it could be done to. */
  readonly after: (bench: Bench, act: Act) => Bench | undefined;
  /** What was to be done beforehand cannot be read. */
  readonly onUnread: () => void;
}

/**
 * A bench and what is done on it. It begins with what the address says was done, and what was done
 * in this tab before it was loaded again is done anew.
 */
export function useActs<Bench, Act extends { readonly act: string }>(
  doing: Doing<Bench, Act>,
): readonly [bench: Bench, act: (act: Act) => Bench, now: () => Bench] {
  const { work, words, setUp, after, onUnread } = doing;
  const [begun] = useState(() => {
    const run = (text: string, from: Bench): Bench | undefined =>
      readActs<Act>(words, text)?.reduce<Bench | undefined>(
        (bench, act) => (bench === undefined ? undefined : after(bench, act)),
        from,
      );
    const given = run(work.done, setUp());
    const stands = given ?? setUp();
    const kept = keptActs(work);
    const again = run(kept, stands);
    return { bench: again ?? stands, acts: again ? kept : '', unread: given === undefined };
  });
  const [bench, setBench] = useState(begun.bench);
  const latest = useRef(bench);
  const acts = useRef(begun.acts);
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const { engine, task, done } = work;

  const keep = useCallback((): void => {
    clearTimeout(timer.current);
    if (timer.current !== undefined) keepActs({ engine, task, done }, acts.current);
    timer.current = undefined;
  }, [engine, task, done]);
  useEffect(() => {
    addEventListener('pagehide', keep);
    return () => {
      removeEventListener('pagehide', keep);
      clearTimeout(timer.current);
    };
  }, [keep]);

  useEffect(() => {
    if (begun.unread) onUnread();
  }, []);

  const act = (what: Act): Bench => {
    const next = after(latest.current, what) ?? latest.current;
    latest.current = next;
    acts.current += `${acts.current === '' ? '' : ','}${writeActs(words, [what])}`;
    clearTimeout(timer.current);
    timer.current = setTimeout(keep, PAUSE_MS);
    setBench(next);
    return next;
  };
  return [bench, act, () => latest.current];
}
