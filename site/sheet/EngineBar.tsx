import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { LIMITS, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import {
  adopt,
  archive,
  atHand,
  duplicate,
  freeId,
  freeName,
  withEngine,
  type Store,
} from '../../calculators/sheet/store.ts';
import { Archive } from './Archive.tsx';
import { openFile, saveFile } from './files.ts';
import { lastSaved } from './keeper.ts';
import { NameBox } from './NameBox.tsx';
import { Safe } from './Safe.tsx';

interface Props {
  readonly store: Store;
  readonly engine: Engine | undefined;
  readonly change: (edit: (store: Store) => Store) => void;
  readonly edit: (edit: (engine: Engine) => Engine) => void;
}

const started = (store: Store): Store => {
  const engine = newEngine(freeId(store.engines), freeName('My engine', store.engines));
  return { ...withEngine(store, engine), active: engine.id };
};

/** Files and other engines behind one line, shut while an engine is new: its first figure comes first. */
function Fold({
  open,
  children,
}: {
  readonly open: boolean;
  readonly children: ComponentChildren;
}) {
  const [atFirst] = useState(open);
  return (
    <details class="act" open={atFirst}>
      <summary>Files and other engines</summary>
      {children}
    </details>
  );
}

/** What a new engine is called, for as long as it is. */
const EMPTY = 'A new, empty sheet.';

const isNew = ({ figures, log }: Engine): boolean =>
  Object.keys(figures).length === 0 && log.length === 0;

/** Fewer figures than these are typed again in a minute. */
const FEW = 6;

/** Whether there is anything yet whose loss would be one. */
const isWorthSaving = (engine: Engine): boolean =>
  engine.log.length > 0 ||
  Object.keys(engine.figures).length >= FEW ||
  lastSaved(engine) !== undefined;

/** Which engine is in use; new ones, the demo, files in and out. */
export function EngineBar({ store, engine, change, edit }: Props) {
  const [said, setSaid] = useState('');
  const [removed, setRemoved] = useState<Engine>();
  const bar = useRef<HTMLElement>(null);
  /** Set once a new engine was asked for by a key: its name is what is typed first. */
  const begun = useRef(false);
  useLayoutEffect(() => {
    if (begun.current) bar.current?.querySelector<HTMLInputElement>('.engine-name input')?.select();
    begun.current = false;
  }, [engine?.id]);
  const picker = useRef<HTMLInputElement>(null);

  const attempt = (work: () => string): void => {
    try {
      setSaid(work());
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      setSaid(error.message);
    }
  };
  const add = (engines: readonly Engine[], what: string): void =>
    attempt(() => {
      change((before) => adopt(before, engines));
      return what;
    });
  const saveAll = (engines: readonly Engine[]): void =>
    attempt(() => `${saveFile(engines)} saved.`);
  const remove = (gone: Engine): void => {
    setRemoved(gone);
    setSaid(`${gone.name} was taken out of the list.`);
    change((before) => {
      const engines = before.engines.filter(({ id }) => id !== gone.id);
      return { ...before, engines, active: atHand({ engines })[0]?.id };
    });
  };

  const buttons = (
    <div class="bar-buttons">
      <button
        type="button"
        onClick={(event) => {
          if (store.engines.length >= LIMITS.engines) return add([newEngine('x', 'x')], '');
          change(started);
          setSaid(EMPTY);
          // Under a finger the box would bring up the keys over the rest of the page.
          begun.current = event.detail === 0;
        }}
      >
        New engine
      </button>
      <button
        type="button"
        onClick={() =>
          add([demoSheet()], 'The demo is open. It is invented: change what you like.')
        }
      >
        Try the demo
      </button>
      <button type="button" data-picks onClick={() => picker.current?.click()}>
        Open a file
      </button>
      <input
        ref={picker}
        type="file"
        accept="application/json,.json,text/plain,.txt"
        class="picker"
        tabIndex={-1}
        aria-label="Engine sheet file"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void openFile(file, store, change).then(setSaid);
          event.currentTarget.value = '';
        }}
      />
      {engine ? (
        <>
          <button type="button" onClick={() => saveAll([engine])}>
            Save to a file
          </button>
          {store.engines.length > 1 ? (
            <button type="button" onClick={() => saveAll(store.engines)}>
              Save all to a file
            </button>
          ) : null}
          <button
            type="button"
            onClick={() =>
              attempt(() => {
                change((before) => duplicate(before, engine));
                return `A duplicate of ${engine.name} is open, under a name of its own.`;
              })
            }
          >
            Duplicate
          </button>
          <button
            type="button"
            onClick={() => {
              change((before) => archive(before, engine.id, true));
              setSaid(`${engine.name} is in the archive now.`);
            }}
          >
            Put into the archive
          </button>
          <button type="button" onClick={() => remove(engine)}>
            Take out of the list
          </button>
        </>
      ) : null}
      {removed ? (
        <button
          type="button"
          onClick={() => {
            add([removed], `${removed.name} is back.`);
            setRemoved(undefined);
          }}
        >
          Put {removed.name} back
        </button>
      ) : null}
    </div>
  );

  return (
    <section class="engine-bar" ref={bar} aria-label="Engines">
      {engine ? (
        <div class="engine-name">
          {atHand(store).length > 1 ? (
            <label>
              Engine in use
              <select
                value={engine.id}
                onChange={(event) => {
                  const { value } = event.currentTarget;
                  change((before) => ({ ...before, active: value }));
                }}
              >
                {atHand(store).map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
          ) : null}
          <NameBox key={engine.id} engine={engine} edit={edit} />
          {engine.invented ? (
            <p class="invented">Demo: an invented engine. Its figures are nobody’s.</p>
          ) : null}
        </div>
      ) : null}
      {engine ? (
        <Fold key={engine.id} open={!isNew(engine) || removed !== undefined}>
          {buttons}
        </Fold>
      ) : (
        buttons
      )}
      <p class="share-state" role="status">
        {said === EMPTY && engine && !isNew(engine) ? '' : said}
      </p>
      <Archive store={store} change={change} say={setSaid} />
      {engine && isWorthSaving(engine) ? (
        <Safe engine={engine} saveFile={() => saveAll([engine])} />
      ) : null}
    </section>
  );
}
