import type { TargetedKeyboardEvent } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { isUnread, momentWords, placeOf } from '../../calculators/sheet/box-places.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import {
  isDue,
  nextDue,
  spotFragment,
  spotOf,
  spotsOf,
  type Spot,
} from '../../calculators/sheet/due.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { confirm, confirmOne, setDone, type Manner } from '../../calculators/sheet/set-entry.ts';
import { firedByBox, readAtWords } from '../../calculators/sheet/firing-order.ts';
import { howOf } from '../../calculators/sheet/how-of.ts';
import {
  correctionWords,
  isMoves,
  judge,
  saidOfAll,
  targetOrWanted,
} from '../../calculators/sheet/judge.ts';
import { dayWords, lastDay, readingsAt } from '../../calculators/sheet/log.ts';
import {
  kindWords,
  lastGoodWords,
  readingWords,
  whenWords,
} from '../../calculators/sheet/log-words.ts';
import { boxName, boxesOf, type Engine } from '../../calculators/sheet/model.ts';
import { outdatedAt } from '../../calculators/sheet/outdated.ts';
import { jobOf, progressOf } from '../../calculators/sheet/progress.ts';
import { hasStep, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { Spoken } from '../browser/Spoken.tsx';
import { today } from '../browser/today.ts';
import { Asked } from './Asked.tsx';
import { Doubt } from '../fields/FieldNotes.tsx';
import { FigureBox, written, type BoxProps } from './FigureBox.tsx';
import { HowTo } from './HowTo.tsx';
import { OneBox } from './OneBox.tsx';
import type { Places } from './places.ts';
import { Again, Against, Evenly, Links, Moved, Waits } from './step-parts.tsx';
import { Said } from './Said.tsx';
import { standingText } from './typed.ts';
import { useWakeLock } from './use-wake-lock.ts';

interface Props extends BoxProps {
  readonly spot: Spot;
  readonly places: Places;
}

const goTo = (spot: Spot | undefined): void => {
  location.hash = spot ? spotFragment(spot) : 'order-of-work';
};

/** Where a reading leads on to: what is due after it, or what keeps the engine from being fired. */
function onFrom(engine: Engine, spot: Spot): Spot | undefined {
  const progress = progressOf(engine);
  const [step] = progress[spot.step].against;
  return step === undefined
    ? nextDue(engine, progress, spot)
    : spotOf(engine, progress[step], step);
}

const heldAt = (engine: Engine, { step, index }: Spot): number | null => {
  const { found, left } = readingOf(engine, step);
  return left[index] ?? found[index] ?? null;
};

/** What speaks against the reading that stands, in the words of its box. */
function heldDoubt(engine: Engine, { step, index }: Spot, lengths: LengthDisplay) {
  const { left } = readingOf(engine, step);
  const moment = typeof left[index] === 'number' ? 'left' : 'found';
  const box = { kind: 'reading', step, moment, index } as const;
  const text = standingText(engine, box, written(heldAt(engine, { step, index }) ?? undefined));
  return readNumber(engine, box, text, { lengths }).doubt;
}

/** What a link to a reading says. */
function spotWords({ step, index }: Spot, from: Spot, engine: Engine): string {
  const { title, reading } = steps[step];
  const box = reading ? boxName(reading, index, engine).toLowerCase() : '';
  if (step === from.step) return box;
  return box === '' || index === 0 ? title : `${title}, ${box}`;
}

/** The readings taken at this place before, the last first. */
function Earlier({ engine, spot, lengths }: Pick<Props, 'engine' | 'spot' | 'lengths'>) {
  const { step, index } = spot;
  const entries = [...readingsAt(engine, step, index)].reverse().slice(0, 4);
  if (entries.length === 0) return null;
  return (
    <ul class="one-earlier" aria-label="Readings so far">
      {entries.map((entry, i) => (
        <li key={entries.length - i}>
          <b>{readingWords(step, entry.value, lengths)}</b>{' '}
          {[dayWords(entry.on), kindWords[entry.kind]].filter(Boolean).join(', ')}
        </li>
      ))}
    </ul>
  );
}

interface ReadProps extends Props {
  readonly next: () => void;
}

/** The reading itself: a box while it is taken, the figure once it stands. */
function Reading({ engine, spot, lengths, edit, next, places: _ }: ReadProps) {
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
    row.result === 'fail' || outdatedAt(engine, step).includes(index) ? 'change' : 'check',
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
  const ofBefore = (refused || unread !== undefined) && held !== null;
  // What was asked for stays readable while it is turned, until the next reading is typed.
  const judged = !open || wrote || row.result === 'fail' || isLeftOut || ofBefore;
  const ofAll = saidOfAll(judgement, isUnread(engine, step));
  // What a correction moves is said to who makes one.
  const said =
    ofBefore || ofAll.length === 0
      ? []
      : row.result === 'fail'
        ? correction.rest
        : ofAll.filter((one) => !isMoves(step, one, lengths));
  const passed = row.result === 'pass' && (!stale || wrote);
  const verdict = ofBefore
    ? lastGoodWords(step, held, lengths)
    : row.result === 'pass'
      ? `${passed ? '✓ Pass' : '↻ Passed when read'} ${row.words}`
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
        class={`one-verdict verdict-${judged && !ofBefore ? row.result : 'empty'}`}
        tabIndex={-1}
        ref={told}
      >
        {judged ? verdict : ''}
      </p>
      {judged ? <Said sentences={said} /> : null}
      <div class="bar-buttons">
        {(!open || wrote) && held !== null ? (
          <button
            type="button"
            onClick={() => readAgain(row.result === 'fail' ? 'change' : 'check')}
          >
            {row.result === 'fail' ? 'Corrected: read it again' : 'Read it again'}
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

/** Whether a tick that stands is to be confirmed: nothing keeps it from that. */
function isConfirmed(engine: Engine, id: StepId): boolean {
  const { because, against } = progressOf(engine)[id];
  const isTick = steps[id].reading === undefined && readingOf(engine, id).done;
  return isTick && because.length > 0 && against.length === 0;
}

/** A step that is ticked, with the figures that belong to it. */
function Tick({ engine, spot, edit, lengths, next }: ReadProps) {
  const { step } = spot;
  const { done } = readingOf(engine, step);
  const day = dayWords(lastDay(engine, step));
  const { because, against } = progressOf(engine)[step];
  const isHeld = against.length > 0;
  return (
    <>
      {(steps[step].figures ?? []).map((key) => (
        <FigureBox key={`${engine.id} ${key}`} figure={key} {...{ engine, edit, lengths }} />
      ))}
      {done ? (
        <p class="one-held">
          <b>{isHeld ? 'Ticked, not done' : because.length > 0 ? '↻ Done before' : '✓ Done'}</b>{' '}
          <span>{day}</span>
        </p>
      ) : null}
      <div class="bar-buttons">
        {isConfirmed(engine, step) ? (
          <button
            type="button"
            class="one-done"
            onClick={() => {
              edit((now) => confirm(now, step, today()));
              next();
            }}
          >
            Checked again, still right
          </button>
        ) : null}
        <button
          type="button"
          class={done || isHeld ? undefined : 'one-done'}
          onClick={() => {
            edit((now) => setDone(now, step, !done, today()));
            if (!done) next();
          }}
        >
          {done ? 'Take the tick away' : isHeld ? 'Tick it all the same' : 'Done'}
        </button>
      </div>
    </>
  );
}

/** Figures that a reading cannot be judged without: their boxes stay while they are typed. */
function Wanted({ id, engine, edit, lengths }: BoxProps & { readonly id: StepId }) {
  const { missing } = judge(engine, id, lengths);
  const [wanted] = useState(missing);
  if (wanted.length === 0) return null;
  return (
    <div class="one-missing">
      <p>To be judged it needs of the sheet (what is read has its own box, above):</p>
      {wanted.map((key) => (
        <FigureBox key={key} figure={key} {...{ engine, edit, lengths }} />
      ))}
      <Evenly missing={missing} {...{ engine, edit, lengths }} />
    </div>
  );
}

/** What can hurt at a step, before what is to be done. */
function Caution({ id, lengths }: { readonly id: StepId } & Pick<Props, 'lengths'>) {
  const { caution } = steps[id];
  return caution === undefined ? null : (
    <div class="caution">
      <p class="caution-title">Take care</p>
      <p>{proseIn(caution, lengths)}</p>
    </div>
  );
}

function Awake() {
  const { there, wanted, want, said } = useWakeLock();
  if (!there) return null;
  return (
    <>
      <label class="option">
        <input
          type="checkbox"
          checked={wanted}
          onChange={(event) => want(event.currentTarget.checked)}
        />
        <span>Keep the screen on</span>
      </label>
      <p role="status">{said}</p>
    </>
  );
}

/**
 * The key that ends a figure of the sheet leads to the next box, and the last one back to the reading,
 * which stands first: no thumb has to leave its pad.
 */
function toNextBox({ key, target, currentTarget }: TargetedKeyboardEvent<HTMLElement>): void {
  if (key !== 'Enter' || !(target instanceof HTMLInputElement)) return;
  const boxes = [...currentTarget.querySelectorAll<HTMLInputElement>('input[type="text"]')];
  if (target.id.startsWith('figure-'))
    (boxes[boxes.indexOf(target) + 1] ?? document.getElementById('one-box'))?.focus();
}

/** One reading of the job on a screen of its own: what to read, to what, the box, the verdict, and on. */
export function OneReading(props: Props) {
  const { engine, spot, lengths, places, edit } = props;
  const { step: id, index } = spot;
  const step = steps[id];
  const progress = progressOf(engine);
  const heading = useRef<HTMLHeadingElement>(null);
  const came = useRef<Spot>();
  const { missing } = judge(engine, id, lengths);
  const isHad = hasStep(engine.figures, id);
  const following = onFrom(engine, spot);
  const spots = spotsOf(engine);
  const at = spots.findIndex((other) => spotFragment(other) === spotFragment(spot));
  const previous = spots[at - 1];
  const fired = step.reading ? firedByBox(step.reading, index, engine) : undefined;
  // Figures that stand in boxes of their own on this screen are not said a second time.
  const target =
    step.reading || !step.figures ? targetOrWanted(engine, id, lengths, index) : undefined;

  // Within a step the box is what the hand goes on with; a new step is read first, from its top,
  // wherever the list was left that stood here before. Before it is painted, since a key pressed
  // at once is meant for what is seen.
  useLayoutEffect(() => {
    const box = document.getElementById('one-box');
    const first = came.current?.step === id && box ? box : heading.current;
    first?.focus({ preventScroll: true });
    scrollTo(0, 0);
    came.current = spot;
  }, [id, index]);
  useLayoutEffect(() => {
    document.documentElement.dataset.one = '';
    return () => {
      delete document.documentElement.dataset.one;
    };
  }, []);

  // A tick leads on by itself: the link beside it is for leaving it.
  const isLeft =
    isHad &&
    step.reading === undefined &&
    !readingOf(engine, id).done &&
    progress[id].against.length === 0;
  const next = (): void => goTo(onFrom(engine, spot));
  return (
    <section
      class="one"
      aria-labelledby="one-title"
      data-spot={spotFragment(spot)}
      onKeyDown={toNextBox}
    >
      <nav class="one-bar" aria-label="Readings">
        <a href={`#step-${id}`}>List of steps</a>
        <span>
          {engine.name},{' '}
          {isHad
            ? `step ${String(jobOf(engine).indexOf(id) + 1)} of ${String(jobOf(engine).length)}`
            : 'a step that it has not'}
        </span>
      </nav>
      <h2 id="one-title" tabIndex={-1} ref={heading}>
        {step.title}
      </h2>
      <Waits progress={progress[id]} place={(other) => spotFragment({ step: other, index: 0 })} />
      <p class="one-target">
        {step.reading && isHad ? (
          <span class="one-place">
            {boxName(step.reading, index, engine)}
            {boxesOf(engine, id) > 1 ? ` of ${String(boxesOf(engine, id))}` : ''}
            {fired === undefined
              ? ''
              : ` (cylinders ${fired.join(', ')})${readAtWords(step.reading, fired)}`}
          </span>
        ) : null}
        {target === undefined || missing.length > 0 || !isHad ? null : step.reading?.judging ===
          'noted' ? (
          <span>only written down, as found</span>
        ) : (
          <span>
            to <b>{target}</b>
          </span>
        )}
      </p>
      <p class="one-what">
        {step.reading ? `${step.reading.label}. ` : ''}With: {proseIn(step.tool, lengths)}.
      </p>
      <Against id={id} progress={progress[id]} {...{ engine, lengths }} />
      {!isHad ? (
        <p class="one-verdict">Left out, by what the sheet says: {step.fallsAway!.why}.</p>
      ) : step.reading ? (
        <Reading key={`${engine.id} ${spotFragment(spot)}`} {...props} next={next} />
      ) : (
        <Tick {...props} next={next} />
      )}
      {isHad ? <Wanted key={`${engine.id} ${id}`} id={id} {...{ engine, edit, lengths }} /> : null}
      <nav class="one-on" aria-label="On and back">
        {previous ? <a href={`#${spotFragment(previous)}`}>Back</a> : <span />}
        <a
          class={isLeft ? 'one-later' : 'one-next'}
          href={following ? `#${spotFragment(following)}` : '#order-of-work'}
        >
          {following
            ? `${isLeft ? 'Not now; next' : 'Next'}: ${spotWords(following, spot, engine)}`
            : 'Nothing else is due: to the list'}
        </a>
      </nav>
      <Asked engine={engine} id={id} lengths={lengths} />
      <Earlier engine={engine} spot={spot} lengths={lengths} />
      <Again
        id={id}
        progress={progress[id]}
        isSettledElsewhere={isConfirmed(engine, id)}
        {...{ engine, lengths, edit }}
      />
      <Caution id={id} lengths={lengths} />
      <p class="task-why">{proseIn(step.why, lengths)}</p>
      <HowTo how={howOf(engine, id)} lengths={lengths} />
      <Awake />
      <Links id={id} engine={engine} places={places} />
    </section>
  );
}
