import { useCallback, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { wound } from '../../calculators/sheet/clock.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { activeEngine, emptyStore, withEngine, type Store } from '../../calculators/sheet/store.ts';
import { secondsNow } from '../browser/today.ts';
import { KEY } from '../opening/keeps-sheet.ts';
import { Keeper, type Came, type Keeping } from './keeper.ts';

export interface SheetState {
  readonly store: Store;
  readonly keeping: Keeping;
  /** Whether the browser has been asked yet; never so on the server. */
  readonly ready: boolean;
}

export interface Sheet extends SheetState {
  readonly engine: Engine | undefined;
  readonly change: (edit: (store: Store) => Store) => void;
  /** Changes the engine in use. */
  readonly edit: (edit: (engine: Engine) => Engine) => void;
  readonly dropAside: () => void;
  /** The reader has seen what the tabs changed at once. */
  readonly seen: () => void;
}

const unread: SheetState = { store: emptyStore, keeping: {}, ready: false };

/** What has come from another tab since this one was last written in. */
const cameSince = (told: Came | undefined, now: Came | undefined): Came | undefined =>
  told && now && told.after === now.before
    ? { before: told.before, after: now.after }
    : (now ?? told);

/** Takes a place of the sheet out of the address: another engine has its own. */
function leavePlace(): void {
  if (!/^#(?:read|step)-/.test(location.hash)) return;
  history.replaceState(null, '', `${location.pathname}${location.search}`);
  window.dispatchEvent(new HashChangeEvent('hashchange'));
}

/** The sheet in use: read from the browser, written with every change, in step with other tabs. */
export function useSheet(): Sheet {
  const [state, setState] = useState<SheetState>(unread);
  const keeper = useRef<Keeper>();
  const now = useRef(state);

  const show = useCallback(({ store, keeping }: Pick<SheetState, 'store' | 'keeping'>) => {
    const { both = [], back = [], came } = now.current.keeping;
    // What happened to the engines stays said until the reader has seen it.
    const told = {
      both: [...both, ...(keeping.both ?? [])],
      back: [...new Set([...back, ...(keeping.back ?? [])])],
      came: cameSince(came, keeping.came),
    };
    now.current = { store, keeping: { ...keeping, ...told }, ready: true };
    setState(now.current);
  }, []);

  const change = useCallback(
    (edit: (store: Store) => Store) => {
      const { store } = now.current;
      const next = edit(store);
      if (next === store || !keeper.current) return;
      if (next.active !== store.active) leavePlace();
      show(keeper.current.save(next));
    },
    [show],
  );

  const edit = useCallback(
    (alter: (engine: Engine) => Engine) => {
      change((store) => {
        const engine = activeEngine(store);
        if (!engine) return store;
        const now = wound(engine, secondsNow());
        const altered = alter(now);
        return altered === now ? store : withEngine(store, altered);
      });
    },
    [change],
  );

  const dropAside = useCallback(() => {
    if (!keeper.current) return;
    keeper.current.dropAside();
    show(keeper.current.save(now.current.store));
  }, [show]);

  const seen = useCallback(() => {
    const { store, keeping } = now.current;
    now.current = {
      store,
      keeping: { ...keeping, both: [], back: [], came: undefined },
      ready: true,
    };
    setState(now.current);
  }, []);

  // Before anything is painted or pressed.
  useLayoutEffect(() => {
    const keeping = new Keeper();
    keeper.current = keeping;
    show(keeping.load());
    void keeping.recover(() => now.current.store).then((recovered) => recovered && show(recovered));
    const join = (): void => {
      if (keeper.current?.overtaken) show(keeper.current.join(now.current.store));
    };
    const elsewhere = (event: StorageEvent): void => {
      if (event.key === KEY || event.key === null) join();
    };
    // A tab that slept may never have been told: it looks again as it is shown.
    window.addEventListener('storage', elsewhere);
    window.addEventListener('pageshow', join);
    window.addEventListener('focus', join);
    document.addEventListener('visibilitychange', join);
    return () => {
      window.removeEventListener('storage', elsewhere);
      window.removeEventListener('pageshow', join);
      window.removeEventListener('focus', join);
      document.removeEventListener('visibilitychange', join);
    };
  }, [show]);

  return { ...state, engine: activeEngine(state.store), change, edit, dropAside, seen };
}
