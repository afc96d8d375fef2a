import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Engine } from '../../calculators/sheet/model.ts';
import { activeEngine, emptyStore, withEngine, type Store } from '../../calculators/sheet/store.ts';
import { Keeper, KEY, type Keeping } from './keeper.ts';

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
}

const unread: SheetState = { store: emptyStore, keeping: {}, ready: false };

/** The sheet in use: read from the browser, written with every change, in step with other tabs. */
export function useSheet(): Sheet {
  const [state, setState] = useState<SheetState>(unread);
  const keeper = useRef<Keeper>();
  const now = useRef(state);

  const show = useCallback((next: SheetState) => {
    now.current = next;
    setState(next);
  }, []);

  const change = useCallback(
    (edit: (store: Store) => Store) => {
      const { store } = now.current;
      const next = edit(store);
      if (next === store || !keeper.current) return;
      show({ ...keeper.current.save(next), ready: true });
    },
    [show],
  );

  const edit = useCallback(
    (alter: (engine: Engine) => Engine) => {
      change((store) => {
        const engine = activeEngine(store);
        if (!engine) return store;
        const altered = alter(engine);
        return altered === engine ? store : withEngine(store, altered);
      });
    },
    [change],
  );

  const dropAside = useCallback(() => {
    if (!keeper.current) return;
    keeper.current.dropAside();
    show({ ...keeper.current.save(now.current.store), ready: true });
  }, [show]);

  useEffect(() => {
    keeper.current = new Keeper();
    show({ ...keeper.current.load(), ready: true });
    const join = (): void => {
      if (keeper.current) show({ ...keeper.current.join(now.current.store), ready: true });
    };
    const elsewhere = (event: StorageEvent): void => {
      if (event.key === KEY || event.key === null) join();
    };
    const shownAgain = (event: PageTransitionEvent): void => {
      if (event.persisted) join();
    };
    window.addEventListener('storage', elsewhere);
    window.addEventListener('pageshow', shownAgain);
    return () => {
      window.removeEventListener('storage', elsewhere);
      window.removeEventListener('pageshow', shownAgain);
    };
  }, [show]);

  return { ...state, engine: activeEngine(state.store), change, edit, dropAside };
}
