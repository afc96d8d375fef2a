import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { againstWords } from '../../calculators/sheet/against.ts';
import { momentHeads } from '../../calculators/sheet/box-places.ts';
import { spotFragment } from '../../calculators/sheet/due.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { confirm } from '../../calculators/sheet/set-entry.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { queryFor } from '../../calculators/sheet/fill.ts';
import { changeWords } from '../../calculators/sheet/log-words.ts';
import { boxName, boxesOf, setsOf, type Engine } from '../../calculators/sheet/model.ts';
import { isLeftFull, type Progress } from '../../calculators/sheet/progress.ts';
import { setOffers } from '../../calculators/sheet/set-offers.ts';
import { setKeys } from '../../calculators/sheet/sets.ts';
import { needsReading, reopening, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { keepUnmoved, movedOrNot, setsWords } from '../../calculators/sheet/unmoved.ts';
import { siteAddress } from '../browser/site-address.ts';
import { today } from '../browser/today.ts';
import type { BoxProps } from './FigureBox.tsx';
import type { Places } from './places.ts';

interface AgainProps extends BoxProps {
  readonly id: StepId;
  readonly progress: Progress;
  /** Set where the button that settles it stands elsewhere. */
  readonly isSettledElsewhere?: boolean;
}

/** Why a step is to be checked again: what was changed, at which cylinder, by how much and when. */
export function Again(props: AgainProps) {
  const { id, engine, progress, lengths, edit, isSettledElsewhere = false } = props;
  if (progress.because.length === 0) return null;
  const anew = needsReading(id, progress.because);
  const { reading } = steps[id];
  const all = progress.stale.length === boxesOf(engine, id);
  const which =
    reading && !all
      ? `: ${progress.stale.map((i) => boxName(reading, i, engine).toLowerCase()).join(', ')}`
      : '';
  const left = isLeftFull(engine, id);
  const since = (other: StepId): string => {
    const words = changeWords(engine, other, id, progress.stale, lengths);
    return words === '' ? '' : `: ${words}`;
  };
  return (
    <div class="again">
      <p class="again-title">To be checked again{which}</p>
      <ul>
        {progress.because.map((other) => (
          <li key={other}>
            <b>{steps[other].title}</b> was changed since{since(other)}.{' '}
            {proseIn((other === id ? reading?.movesAll : reopening(id, other)) ?? '', lengths)}
          </li>
        ))}
      </ul>
      {anew && !left ? (
        <p>
          Measure it again and write what you read, also where it is the same: in the list, under “
          {momentHeads.left}”.
        </p>
      ) : isSettledElsewhere ? null : (
        <button
          type="button"
          class="plain"
          onClick={() => edit((now) => confirm(now, id, today()))}
        >
          {anew ? 'Measured again: it reads the same' : 'Checked again, still right'}
        </button>
      )}
    </div>
  );
}

interface MovedProps extends BoxProps {
  readonly id: StepId;
  /** Told when what was read before is said to stand. */
  readonly then?: () => void;
}

/** Asks what was moved where one was read anew alone: the plate with all its sets, or that set. */
export function Moved({ id, engine, edit, then }: MovedProps) {
  const moved = movedOrNot(engine, id);
  if (moved === undefined) return null;
  const { changed, before } = moved;
  const reading = steps[id].reading!;
  const others = before.map((i) => boxName(reading, i, engine).toLowerCase()).join(', ');
  const sets = setsWords(changed);
  return (
    <div class="again moved">
      <p class="again-title">What did you move?</p>
      <p>
        After {others} was read, a change was written at {sets}.
      </p>
      <div class="bar-buttons">
        <button
          type="button"
          onClick={() => {
            edit((now) => keepUnmoved(now, id, today()));
            then?.();
          }}
        >
          Only {sets}: the rest stays as read
        </button>
        <a class="button" href={`#${spotFragment({ step: id, index: before[0]! })}`}>
          The plate: read {others} again
        </a>
      </div>
    </div>
  );
}

interface AgainstProps {
  readonly id: StepId;
  readonly engine: Engine;
  readonly progress: Progress;
  readonly lengths: LengthDisplay;
}

/** What is to be corrected or proved before the engine is fired, each with what it asks for and the way to it. */
export function Against({ id, engine, progress: { against }, lengths }: AgainstProps) {
  if (against.length === 0) return null;
  return (
    <div class="again">
      <p class="again-title">Do not fire it yet</p>
      <ul>
        {againstWords(engine, against, lengths).map(({ spot, title, asks }) => (
          <li key={title}>
            ✕ <a href={`#${spotFragment(spot)}`}>{title}</a>: {asks}
          </li>
        ))}
      </ul>
      {readingOf(engine, id).done ? (
        <p>It is ticked, but counts as not done until that is put right.</p>
      ) : null}
    </div>
  );
}

interface WaitsProps {
  readonly progress: Progress;
  /** Where a step is gone to on this page. */
  readonly place: (id: StepId) => string;
}

/** What comes before a step and is not done yet: one line, however many they are. */
export function Waits({ progress: { waits, because }, place }: WaitsProps) {
  if (waits.length === 0 || because.length > 0) return null;
  return (
    <details class="waits">
      <summary>
        {waits.length === 1
          ? 'Comes after 1 step that is open'
          : `Comes after ${String(waits.length)} steps that are open`}
      </summary>
      <ul>
        {waits.map((other) => (
          <li key={other}>
            <a href={`#${place(other)}`}>{steps[other].title}</a>
          </li>
        ))}
      </ul>
    </details>
  );
}

interface EvenlyProps extends BoxProps {
  /** Figures that a step cannot be judged without. */
  readonly missing: readonly FigureKey[];
}

/** Asks how the pistons come to the top, where the sheet does not say where the sets belong. */
export function Evenly({ missing, engine, lengths, edit }: EvenlyProps) {
  const sets = setKeys(setsOf(engine));
  if (!missing.some((key) => sets.includes(key))) return null;
  return (
    <>
      {setOffers(engine, lengths).map(({ ask, answer, take }) => (
        <p key={answer} class="missing">
          {ask}{' '}
          <button type="button" class="plain" onClick={() => edit(take)}>
            {answer}
          </button>
        </p>
      ))}
    </>
  );
}

interface LinksProps {
  readonly id: StepId;
  readonly engine: Engine;
  readonly places: Places;
  readonly copyStep?: (id: StepId) => void;
}

/** Where a step leads: its calculators with the sheet's figures, its articles, its copy. */
export function Links({ id, engine, places, copyStep }: LinksProps) {
  const { calculators, articles, list, reading } = steps[id];
  const known = calculators.filter((slug) => Object.hasOwn(places.calculators, slug));
  const read = articles.filter((slug) => Object.hasOwn(places.articles, slug));
  return (
    <p class="task-links">
      {known.map((slug) => {
        const calculator = places.calculators[slug]!;
        const query = queryFor(engine, slug, calculator);
        return (
          <a
            key={slug}
            href={siteAddress(`calculators/${slug}/${query === '' ? '' : `?${query}`}`)}
          >
            {calculator.title}
          </a>
        );
      })}
      {read.map((slug) => (
        <a key={slug} href={siteAddress(`articles/${slug}/`)}>
          Why: {places.articles[slug]}
        </a>
      ))}
      {list ? <a href={siteAddress('first-start/')}>The list of the first start</a> : null}
      {reading && copyStep ? (
        <button type="button" class="plain" onClick={() => copyStep(id)}>
          Copy with its link
        </button>
      ) : null}
    </p>
  );
}
