import { SheetError } from '../../calculators/sheet/errors.ts';
import {
  emptyStore,
  merge,
  readStore,
  rescue,
  writeStore,
  type Store,
} from '../../calculators/sheet/store.ts';

export const KEY = 'gudgeon.sheet';
export const ASIDE = 'gudgeon.sheet.aside';

const FORBIDDEN =
  'This browser does not let the page keep anything, so the sheet lasts only as long as this tab. Save it to a file before you close it.';
const FULL =
  'The room that this browser gives the site is full, so the last change is not kept. Save the sheet to a file now, then take engines you no longer need out of the list.';
const LOCKED =
  'What was kept before cannot be read and could not be put aside for want of room, so nothing is written over it. Download it below, remove it, and then go on; until then the sheet lasts only as long as this tab.';

/** What the reader has to be told about the keeping. */
export interface Keeping {
  /** Why the sheet on the screen is not kept. */
  readonly problem?: string;
  /** A damaged or newer store, kept for download. */
  readonly aside?: { readonly texts: readonly string[]; readonly why?: string };
  /** Engines that were changed here and in another tab. */
  readonly both?: readonly string[];
  /** The store was emptied from outside. */
  readonly cleared?: boolean;
}

interface Outcome {
  readonly store: Store;
  readonly keeping: Keeping;
}

function asideTexts(): readonly string[] {
  try {
    const source = localStorage.getItem(ASIDE);
    if (source === null) return [];
    try {
      const texts: unknown = JSON.parse(source);
      if (Array.isArray(texts) && texts.every((text) => typeof text === 'string')) return texts;
    } catch {
      // Not a list: it is itself what was put aside.
    }
    return [source];
  } catch {
    return [];
  }
}

/** Keeps the store in this browser, in step with other tabs. */
export class Keeper {
  /** The store as last read from or written to the browser. */
  #base: Store = emptyStore;
  #raw: string | null = null;
  #locked: { readonly text: string; readonly why: string } | undefined;

  #aside(why?: string): Keeping['aside'] {
    const texts = this.#locked ? [...asideTexts(), this.#locked.text] : asideTexts();
    if (texts.length === 0) return undefined;
    return why === undefined ? { texts } : { texts, why };
  }

  /** Puts a text that cannot be read out of the way of the next write. */
  #putAside(raw: string, why: string): void {
    try {
      localStorage.removeItem(KEY);
      localStorage.setItem(ASIDE, JSON.stringify([...asideTexts(), raw]));
      this.#raw = null;
    } catch {
      localStorage.setItem(KEY, raw);
      this.#locked = { text: raw, why };
    }
  }

  /** What is kept now. */
  load(): Outcome {
    let raw: string | null;
    try {
      raw = localStorage.getItem(KEY);
    } catch {
      return { store: this.#base, keeping: { problem: FORBIDDEN } };
    }
    this.#raw = raw;
    if (raw === null) {
      this.#base = emptyStore;
      return { store: emptyStore, keeping: { aside: this.#aside() } };
    }
    try {
      this.#base = readStore(raw);
      return { store: this.#base, keeping: { aside: this.#aside() } };
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      const engines = rescue(raw);
      const why =
        error.code === 'future-version'
          ? 'What is kept here was written by a newer version of this page. It was put aside untouched; reload to get the newer page, or download it.'
          : `What is kept here is damaged (${error.message}) It was put aside untouched${engines.length > 0 ? `, and ${String(engines.length)} engines that are whole were taken from it` : ''}.`;
      this.#putAside(raw, why);
      this.#base = emptyStore;
      return {
        store: { engines, active: engines[0]?.id, revision: 0 },
        keeping: {
          aside: this.#aside(why),
          ...(this.#locked ? { problem: LOCKED } : {}),
        },
      };
    }
  }

  /** Writes the store, joined with whatever another tab wrote meanwhile. */
  save(mine: Store): Outcome {
    const aside = this.#aside(this.#locked?.why);
    if (this.#locked) return { store: mine, keeping: { aside, problem: LOCKED } };
    let store = mine;
    let both: readonly string[] = [];
    try {
      const raw = localStorage.getItem(KEY);
      if (raw !== null && raw !== this.#raw) {
        const joined = merge(this.#base, mine, readStore(raw));
        store = joined.store;
        both = joined.both;
      }
    } catch (error) {
      if (!(error instanceof SheetError)) return { store, keeping: { problem: FORBIDDEN } };
      return { store, keeping: { aside, problem: LOCKED } };
    }
    const next = { ...store, revision: store.revision + 1 };
    const written = writeStore(next);
    try {
      localStorage.setItem(KEY, written);
    } catch (error) {
      const full = error instanceof DOMException && error.name === 'QuotaExceededError';
      return { store, keeping: { aside, both, problem: full ? FULL : FORBIDDEN } };
    }
    this.#base = next;
    this.#raw = written;
    return { store: next, keeping: { aside, both } };
  }

  /** What another tab wrote, joined with what is here. */
  join(mine: Store): Outcome {
    const raw = localStorage.getItem(KEY);
    if (raw === this.#raw) return { store: mine, keeping: { aside: this.#aside() } };
    if (raw === null) return { store: mine, keeping: { aside: this.#aside(), cleared: true } };
    try {
      const theirs = readStore(raw);
      const { store, both } = merge(this.#base, mine, theirs);
      this.#base = theirs;
      this.#raw = raw;
      return { store, keeping: { aside: this.#aside(), both } };
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      return { store: mine, keeping: { aside: this.#aside(), problem: error.message } };
    }
  }

  /** Removes what was put aside, when the reader says so. */
  dropAside(): void {
    localStorage.removeItem(ASIDE);
    if (this.#locked) localStorage.removeItem(KEY);
    this.#locked = undefined;
    this.#raw = localStorage.getItem(KEY);
  }
}
