import { useState } from 'preact/hooks';
import { dropEntry, isUntouched, putBack } from '../../calculators/sheet/edit-log.ts';
import type { LogEntry } from '../../calculators/sheet/log-entry.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import type { BoxProps } from './FigureBox.tsx';

interface Taken {
  readonly was: Engine;
  readonly now: Engine;
}

/** Takes entries out of the log, and puts the last one back for as long as nothing was written since. */
export function useTakeOut({ engine, edit }: Pick<BoxProps, 'engine' | 'edit'>) {
  const [taken, setTaken] = useState<Taken>();
  const takeOut = (entry: LogEntry): void =>
    edit((now) => {
      const after = dropEntry(now, entry);
      setTaken({ was: now, now: after });
      return after;
    });
  const isOpen = taken !== undefined && isUntouched(engine, taken.now);
  const back = (): void => {
    if (!taken) return;
    edit((now) => putBack(now, taken.was, taken.now));
    setTaken(undefined);
  };
  const said = (
    <p role="status">
      {taken ? 'The entry was taken out of the log. ' : ''}
      {isOpen ? (
        <button type="button" class="plain" onClick={back}>
          Put back
        </button>
      ) : null}
    </p>
  );
  return { takeOut, said };
}
