import { dayWords, lastDay } from '../../calculators/sheet/log.ts';
import type { Spot } from '../../calculators/sheet/due.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { confirm, setDone } from '../../calculators/sheet/set-entry.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import { today } from '../browser/today.ts';
import { FigureBox, type BoxProps } from './FigureBox.tsx';

interface Props extends BoxProps {
  readonly spot: Spot;
  /** Goes on to what is due. */
  readonly next: () => void;
}

/** Whether a tick that stands is to be confirmed: nothing keeps it from that. */
export function isConfirmed(engine: Engine, id: StepId): boolean {
  const { because, against } = progressOf(engine)[id];
  const isTick = steps[id].reading === undefined && readingOf(engine, id).done;
  return isTick && because.length > 0 && against.length === 0;
}

/** A step that is ticked, with the figures that belong to it. */
export function OneTick({ engine, spot, edit, lengths, next }: Props) {
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
