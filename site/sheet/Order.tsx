import { useEffect, useState } from 'preact/hooks';
import { stages } from '../../calculators/frame/stages.ts';
import { nextDue, spotFragment, spotOf } from '../../calculators/sheet/due.ts';
import { jobOf, nextStep, progressOf, stateWords } from '../../calculators/sheet/progress.ts';
import { sheetFigures } from '../../calculators/sheet/figures.ts';
import { isStepId, order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import type { Copied } from '../browser/copy.ts';
import type { BoxProps } from './FigureBox.tsx';
import type { Places } from './places.ts';
import { marks, StepCard } from './StepCard.tsx';

interface Props extends BoxProps {
  readonly places: Places;
  readonly copyStep: (id: StepId) => void;
  /** How the last copy of a step went, and which it was. */
  readonly copied: { readonly id: StepId; readonly copied: Copied } | undefined;
}

/** The step an address points to: `#step-gap`. */
function stepInAddress(): StepId | undefined {
  const id = /^#step-([a-z-]+)$/.exec(location.hash)?.[1];
  return id !== undefined && isStepId(id) ? id : undefined;
}

/** Goes to the step, or to the list, that the address points to; what follows is a key away. */
function goToPlace(): void {
  if (location.hash === '#order-of-work') document.getElementById('order-of-work')?.focus();
  const id = stepInAddress();
  const card = id === undefined ? null : document.getElementById(`step-${id}`);
  if (card instanceof HTMLDetailsElement) {
    card.open = true;
    card.querySelector('summary')?.focus();
  }
  card?.scrollIntoView();
}

/** The steps that the engine has not, each with the answer of the sheet that says so. */
function LeftOut({ job }: { readonly job: readonly StepId[] }) {
  const out = order.filter((id) => !job.includes(id));
  if (out.length === 0) return null;
  return (
    <div class="left-out">
      <p>Left out, by what the sheet says:</p>
      <ul>
        {out.map((id) => {
          const { by, why } = steps[id].fallsAway!;
          return (
            <li key={id} id={`step-${id}`}>
              {steps[id].title}: {why}.{' '}
              <a class="as-link" href={`#figure-${by}`}>
                {sheetFigures[by].label}
              </a>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** The job in order, with what is done, to correct, and to be checked again. */
export function Order({ copied, ...props }: Props) {
  const progress = progressOf(props.engine);
  /** The step that stands open is the one that was next when the engine was opened. */
  const [opened] = useState(() => nextStep(progress));
  useEffect(() => {
    goToPlace();
    window.addEventListener('hashchange', goToPlace);
    return () => window.removeEventListener('hashchange', goToPlace);
  }, []);
  const job = jobOf(props.engine);
  const passed = job.filter((id) => progress[id].state === 'pass').length;
  const again = job.filter((id) => progress[id].state === 'again');
  const next = nextStep(progress);
  const due = nextDue(props.engine, progress);
  return (
    <section class="order" aria-labelledby="order-of-work">
      <h2 id="order-of-work" tabIndex={-1}>
        Order of work
      </h2>
      <p class="order-state">
        <b>
          {passed} of {job.length}
        </b>{' '}
        steps done.
        {again.length > 0 ? (
          <>
            {' '}
            {stateWords.again}:{' '}
            {again.map((id, i) => (
              <span key={id}>
                {i === 0 ? '' : '; '}
                <a href={`#${spotFragment(spotOf(props.engine, progress[id], id))}`}>
                  {steps[id].title.toLowerCase()}
                </a>
              </span>
            ))}
            .
          </>
        ) : null}
        {next ? null : ' The sheet is complete.'}
      </p>
      {next ? (
        <p>
          <a
            class="one-next"
            href={`#${spotFragment(due ?? spotOf(props.engine, progress[next], next))}`}
          >
            Next: {steps[due?.step ?? next].title.toLowerCase()}
          </a>
        </p>
      ) : (
        <p>
          <a class="one-next" href="#share-the-sheet">
            Next: print it, or send it
          </a>
        </p>
      )}
      <p class="legend" aria-hidden="true">
        {(Object.keys(marks) as (keyof typeof marks)[]).map((state) => (
          <span key={state}>
            {marks[state]} {stateWords[state].toLowerCase()}
          </span>
        ))}
      </p>
      <ol class="tasks">
        {job.map((id, i) => (
          <li key={id}>
            {i === 0 || steps[job[i - 1]!].stage !== steps[id].stage ? (
              <h3>{stages[steps[id].stage].title}</h3>
            ) : null}
            <StepCard
              id={id}
              number={i + 1}
              progress={progress[id]}
              next={id === opened}
              copied={copied?.id === id ? copied.copied : undefined}
              {...props}
            />
          </li>
        ))}
      </ol>
      <LeftOut job={job} />
    </section>
  );
}
