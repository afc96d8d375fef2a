import { useEffect, useState } from 'preact/hooks';
import { dayWords, leastMissed, NEARLY_FULL } from '../../calculators/sheet/log.ts';
import { LIMITS, type Engine } from '../../calculators/sheet/model.ts';
import { lastSaved } from './keeper.ts';

interface Props {
  readonly engine: Engine;
  readonly saveFile: () => void;
}

/** Entries of the log after which it is time to save a file. */
const MANY = 12;

type Persistence = 'unknown' | 'granted' | 'refused' | 'not-asked';

const persistenceWords: Readonly<Record<Persistence, string>> = {
  unknown: '',
  granted: 'This browser keeps the sheet until you remove it yourself.',
  refused:
    'This browser did not promise to keep the sheet: short of room, or unused for weeks, it may clear it. A file is safe.',
  'not-asked': 'Short of room, or unused for weeks, a browser may clear what it keeps.',
};

/** What becomes of a log that is full, before it is, and whether a file has what will go. */
function Room({ engine }: Pick<Props, 'engine'>) {
  const { log } = engine;
  if (log.length < NEARLY_FULL) return null;
  const saved = lastSaved(engine);
  const next = log[leastMissed(log)]!;
  const held = saved !== undefined && next.clock <= saved.clock;
  const room = LIMITS.log - log.length;
  return (
    <p class="care" role="status">
      {room === 0
        ? `The log is full with ${String(LIMITS.log)} entries: each new one takes the place of the oldest reading that was taken again since.`
        : `The log holds ${String(log.length)} entries and has room for ${String(room)} more. Then each new one takes the place of the oldest reading that was taken again since.`}{' '}
      {held
        ? `The file of ${dayWords(saved.on)} holds those that go next.`
        : 'Save it to a file before: a file keeps them all.'}
    </p>
  );
}

/** How safe the sheet is: whether the browser keeps it for good, and when it was last saved to a file. */
export function Safe({ engine, saveFile }: Props) {
  const [kept, setKept] = useState<Persistence>('unknown');
  useEffect(() => {
    const storage = navigator.storage as StorageManager | undefined;
    storage?.persisted?.().then(
      (granted) => setKept(granted ? 'granted' : 'not-asked'),
      () => undefined,
    );
  }, []);
  const ask = (): void => {
    navigator.storage.persist().then(
      (granted) => setKept(granted ? 'granted' : 'refused'),
      () => setKept('refused'),
    );
  };
  const saved = lastSaved(engine);
  const since = engine.log.filter(({ clock }) => clock > (saved?.clock ?? -1)).length;
  const entries = `${String(since)} ${since === 1 ? 'entry' : 'entries'}`;
  return (
    <div class="safe">
      <p>
        {saved === undefined
          ? `Not saved to a file yet${since === 0 ? '' : `: ${entries} of the log`}.`
          : `Last saved to a file on ${dayWords(saved.on)}${since === 0 ? '' : `; ${entries} since`}.`}{' '}
        {persistenceWords[kept]}
      </p>
      <Room engine={engine} />
      <div class="bar-buttons">
        {since >= MANY && !engine.invented ? (
          <button type="button" class="safe-now" onClick={saveFile}>
            Time to save: do it now
          </button>
        ) : null}
        {kept === 'not-asked' ? (
          <button type="button" onClick={ask}>
            Ask the browser to keep it
          </button>
        ) : null}
      </div>
    </div>
  );
}
