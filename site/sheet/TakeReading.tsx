import { useRef, useState } from 'preact/hooks';
import { isUnread, momentWords, placeOf } from '../../calculators/sheet/box-places.ts';
import { isDue, spotFragment, type Spot } from '../../calculators/sheet/due.ts';
import {
  correctionWords,
  isMoves,
  judge,
  ofBefore,
  passMark,
  saidOfAll,
} from '../../calculators/sheet/judge.ts';
import { lastGoodWords, readingWords, whenWords } from '../../calculators/sheet/log-words.ts';
import { boxName } from '../../calculators/sheet/model.ts';
import { outdatedAt } from '../../calculators/sheet/outdated.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { confirmOne, type Manner } from '../../calculators/sheet/set-entry.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import { Spoken } from '../browser/Spoken.tsx';
import { today } from '../browser/today.ts';
import { Doubt } from '../fields/FieldNotes.tsx';
import type { BoxProps } from './FigureBox.tsx';
import { figureLinks } from './figure-links.tsx';
import { heldAt, heldDoubt } from './held.ts';
import { OneBox } from './OneBox.tsx';
import { Said } from './Said.tsx';
import { Moved } from './step-parts.tsx';

interface Props extends BoxProps {
  readonly spot: Spot;
  /** Goes on to what is due. */
  readonly next: () => void;
}

/** The reading itself: a box while it is taken, the figure once it stands. */
export function TakeReading({ engine, spot, lengths, edit, next }: Props) {
  const { step, index } = spot;
  const reading = steps[step].reading!;
  const progress = progressOf(engine);
  const held = heldAt(engine, spot);
  const stale = progress[step].stale.includes(index);
  const judgement = judge(engine, step, lengths);
  const { rows } = judgement;
  const row = rows[index]!;
  const correction = correctionWords(judgement, index, boxName(reading, index, engine));
  /** What is said of a reading that is not judged: why, and what to do. */
  const isLeftOut = row.result === 'unjudged' && row.words !== '';
  const unread = (['found', 'left'] as const).find(
    (moment) => placeOf({ kind: 'reading', step, moment, index }) in engine.unread,
  );
  const [session, setSession] = useState(() => ({
    number: 0,
    open: isDue(engine, progress[step], spot) || held === null || unread !== undefined,
    moment: unread ?? (held === null ? ('found' as const) : ('left' as const)),
  }));
  const [kind, setKind] = useState<Exclude<Manner['kind'], undefined>>(
    (row.result === 'fail' && !stale) || outdatedAt(engine, step).includes(index)
      ? 'change'
      : 'check',
  );
  const [wrote, setWrote] = useState(false);
  /** What stands in the box is refused, so that the verdict is about what was read before it. */
  const [refused, setRefused] = useState(false);
  const told = useRef<HTMLParagraphElement>(null);
  const { open, moment, number } = session;
  const readAgain = (as: 'change' | 'check'): void => {
    setKind(as);
    setWrote(false);
    setRefused(false);
    setSession({ number: number + 1, open: true, moment: 'left' });
    requestAnimationFrame(() => document.getElementById('one-box')?.focus());
  };
  const isLastGood = (refused || unread !== undefined) && held !== null;
  const past = stale && !wrote ? ofBefore(row) : undefined;
  // What was asked for stays readable while it is turned, until the next reading is typed.
  const judged = !open || wrote || row.result === 'fail' || isLeftOut || isLastGood;
  const ofAll = saidOfAll(judgement, isUnread(engine, step));
  // What a correction moves is said to who makes one.
  const said =
    isLastGood || past || ofAll.length === 0
      ? []
      : row.result === 'fail'
        ? correction.rest
        : ofAll.filter((one) => !isMoves(step, one, lengths));
  const isOut = row.result === 'fail' && !past;
  const verdict = isLastGood
    ? lastGoodWords(step, held, lengths)
    : past
      ? `${past.mark} ${past.words}`.trim()
      : row.result === 'pass'
        ? `${passMark(row.words)} ${row.words}`
        : row.result === 'fail'
          ? `✕ To correct: ${correction.words}`
          : row.words;
  return (
    <>
      {open ? (
        <>
          {moment === 'left' ? (
            <fieldset class="one-kind">
              <legend class="spoken">How it is read</legend>
              {(['change', 'check'] as const).map((way) => (
                <label key={way} class="option">
                  <input
                    type="radio"
                    name="one-kind"
                    checked={kind === way}
                    onChange={() => setKind(way)}
                  />
                  <span>{way === 'change' ? 'After a change' : 'Only a check'}</span>
                </label>
              ))}
            </fieldset>
          ) : (
            <p class="one-moment">{momentWords.found}</p>
          )}
          <OneBox
            key={`${engine.id} ${spotFragment(spot)} ${String(number)}`}
            {...{ engine, spot, lengths, edit, moment }}
            kind={moment === 'found' ? undefined : kind}
            wrote={setWrote}
            refused={setRefused}
            onEnter={() => {
              // What is out is read first: the way on is a key further.
              if (judged && row.result === 'fail') told.current?.focus();
              else next();
            }}
          />
        </>
      ) : (
        <>
          <p class="one-held">
            <b>{readingWords(step, held, lengths)}</b> <span>{whenWords(engine, step, index)}</span>
          </p>
          <Doubt id="held" doubt={heldDoubt(engine, spot, lengths)} />
        </>
      )}
      <p
        class={`one-verdict verdict-${judged && !isLastGood ? row.result : 'empty'}`}
        tabIndex={-1}
        ref={told}
      >
        {figureLinks(judged ? verdict : '')}
      </p>
      {judged ? <Said sentences={said} /> : null}
      <div class="bar-buttons">
        {(!open || wrote) && held !== null ? (
          <button type="button" onClick={() => readAgain(isOut ? 'change' : 'check')}>
            {isOut ? 'Corrected: read it again' : 'Read it again'}
          </button>
        ) : null}
        {open && !wrote && held !== null ? (
          <button
            type="button"
            onClick={() => {
              edit((now) => confirmOne(now, step, index, today()));
              // What was due and is still right leads on by itself; any other verdict is read first.
              if (stale && row.result === 'pass') next();
              else setSession({ ...session, open: false });
            }}
          >
            It reads {readingWords(step, held, lengths)} as before
          </button>
        ) : null}
      </div>
      <Moved
        id={step}
        {...{ engine, lengths, edit }}
        then={() => setSession({ ...session, open: false })}
      />
      <Spoken
        lines={
          judged && verdict !== ''
            ? [`${boxName(reading, index, engine)}: ${verdict}`, ...said]
            : []
        }
      />
    </>
  );
}
