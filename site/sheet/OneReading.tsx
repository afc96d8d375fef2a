import type { TargetedKeyboardEvent } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { nextDue, spotFragment, spotOf, spotsOf, type Spot } from '../../calculators/sheet/due.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { firedByBox, readAtWords } from '../../calculators/sheet/firing-order.ts';
import { howOf } from '../../calculators/sheet/how-of.ts';
import { judge, targetOrWanted } from '../../calculators/sheet/judge.ts';
import { boxName, boxesOf, type Engine } from '../../calculators/sheet/model.ts';
import { jobOf, progressOf } from '../../calculators/sheet/progress.ts';
import { hasStep, steps } from '../../calculators/sheet/steps.ts';
import { Asked } from './Asked.tsx';
import { Awake } from './Awake.tsx';
import { Earlier } from './Earlier.tsx';
import type { BoxProps } from './FigureBox.tsx';
import { HowTo } from './HowTo.tsx';
import { isConfirmed, OneTick } from './OneTick.tsx';
import type { Places } from './places.ts';
import { Again, Against, Links, Waits } from './step-parts.tsx';
import { StepCaution } from './StepCaution.tsx';
import { TakeReading } from './TakeReading.tsx';
import { Wanted } from './Wanted.tsx';

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

/** What a link to a reading says. */
function spotWords({ step, index }: Spot, from: Spot, engine: Engine): string {
  const { title, reading } = steps[step];
  const box = reading ? boxName(reading, index, engine).toLowerCase() : '';
  if (step === from.step) return box;
  return box === '' || index === 0 ? title : `${title}, ${box}`;
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
        <>
          <TakeReading key={`${engine.id} ${spotFragment(spot)}`} {...props} next={next} />
          {/* Below the box, which has to stand clear of a phone's keys with its verdict. */}
          <StepCaution id={id} lengths={lengths} />
        </>
      ) : (
        <>
          <StepCaution id={id} lengths={lengths} />
          <OneTick {...props} next={next} />
        </>
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
      <p class="task-why">{proseIn(step.why, lengths)}</p>
      <HowTo how={howOf(engine, id)} lengths={lengths} />
      <Awake />
      <Links id={id} engine={engine} places={places} />
    </section>
  );
}
