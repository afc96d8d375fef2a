import { SheetError } from '../../calculators/sheet/errors.ts';
import { LIMITS, type Engine } from '../../calculators/sheet/model.ts';
import { openText, rescue } from '../../calculators/sheet/rescue.ts';
import {
  emptyStore,
  merge,
  readStore,
  storeOf,
  takeBack,
  writeStore,
  type KeptBoth,
  type Store,
} from '../../calculators/sheet/store.ts';
import { alike } from '../../calculators/sheet/three-way.ts';
import { ASIDE, KEY } from '../opening/keeps-sheet.ts';
import { SecondCopy } from './second-copy.ts';

/** Says in a tab's own store that the browser has kept something since the tab was opened. */
const HAS_KEPT = 'gudgeon.sheet.kept';
/** How figures were typed, beside the figures themselves. */
const TYPED = 'gudgeon.typed';

const FORBIDDEN =
  'This browser does not let the page keep anything, so the sheet lasts only as long as this tab. Save it to a file before you close it.';
const FULL =
  'The room that this browser gives the site is full, so the last change is not kept. Save the sheet to a file now, then take engines you no longer need out of the list.';
const LOCKED =
  'What was kept before cannot be read and could not be put aside for want of room, so nothing is written over it. Download it below, remove it, and then go on; until then the sheet lasts only as long as this tab.';

const ELSEWHERE =
  'Another tab has written what this one cannot read, so nothing is written over it and the sheet shown here is not kept. Save it to a file, then reload this page.';

/** What the reader has to be told about the keeping. */
export interface Keeping {
  /** Why the sheet on the screen is not kept. */
  readonly problem?: string;
  /** A damaged or newer store, kept for download. */
  readonly aside?: { readonly texts: readonly string[]; readonly why?: string };
  /** Engines that were written differently here and in another tab at once. */
  readonly both?: readonly KeptBoth[];
  /** The sheet before and after what another tab wrote came into it. */
  readonly came?: Came;
  /** Engines that had been put aside and can be read now. */
  readonly back?: readonly string[];
  /** The store was emptied from outside. */
  readonly cleared?: boolean;
}

export interface Came {
  readonly before: Store;
  readonly after: Store;
}

const cameBetween = (before: Store, after: Store): Pick<Keeping, 'came'> =>
  alike(before.engines, after.engines) ? {} : { came: { before, after } };

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

/** What was kept of how figures were typed; nothing where nothing is or may be kept. */
export function keptTyped(): string | null {
  try {
    return localStorage.getItem(TYPED);
  } catch {
    return null;
  }
}

/** Keeps how figures were typed; without room for it they are written in their home unit. */
export function keepTyped(text: string): void {
  try {
    localStorage.setItem(TYPED, text);
  } catch {
    // Storage is full or forbidden: the figures themselves are kept, or said not to be.
  }
}

/** Where the sheet of each engine was left: the fragment of its address, by engine, the latest last. */
const PLACE = 'gudgeon.sheet.place';

function allPlaces(): (readonly [engine: string, place: string])[] {
  const text = localStorage.getItem(PLACE) ?? '';
  // It was kept of one engine only: its name, a blank, and the place.
  if (!text.startsWith('[')) {
    const [engine = '', place = ''] = text.split(' ');
    return [[engine, place]];
  }
  const read = JSON.parse(text) as unknown[];
  return read.filter(
    (one): one is [string, string] =>
      Array.isArray(one) && one.length === 2 && one.every((part) => typeof part === 'string'),
  );
}

/** Where this engine's sheet was left; nothing where it is not known. */
export function keptPlace(engine: string): string {
  try {
    return allPlaces().find(([id]) => id === engine)?.[1] ?? '';
  } catch {
    return '';
  }
}

export function keepPlace(engine: string, place: string): void {
  let others: ReturnType<typeof allPlaces> = [];
  try {
    others = allPlaces().filter(([id]) => id !== engine && id !== '');
  } catch {
    // What is damaged is written anew.
  }
  try {
    const all = [...others, [engine, place]].slice(-LIMITS.engines);
    localStorage.setItem(PLACE, JSON.stringify(all));
  } catch {
    // The sheet then opens at its beginning.
  }
}

/** When each engine was last saved to a file, and how far its clock had come then. */
const SAVED = 'gudgeon.sheet.saved';

export interface Saved {
  readonly on: string;
  readonly clock: number;
}

function allSaved(): Record<string, Saved> {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(SAVED) ?? '{}');
    if (typeof read !== 'object' || read === null) return {};
    return Object.fromEntries(
      Object.entries(read).filter(
        (entry): entry is [string, Saved] =>
          typeof (entry[1] as Saved | null)?.on === 'string' &&
          typeof (entry[1] as Saved).clock === 'number',
      ),
    );
  } catch {
    return {};
  }
}

/** When an engine was last saved to a file; nothing where it never was. */
export const lastSaved = (engine: Engine): Saved | undefined => allSaved()[engine.id];

/** Remembers that engines were saved to a file. */
export function noteSaved(engines: readonly Engine[], on: string): void {
  const now = engines.map(({ id, clock }) => [id, { on, clock }] as const);
  try {
    localStorage.setItem(SAVED, JSON.stringify({ ...allSaved(), ...Object.fromEntries(now) }));
  } catch {
    // The page then goes on reminding of it.
  }
}

/** Two tabs joined: each stays with its own engine, whichever the other has turned to. */
function mergeTabs(base: Store, mine: Store, theirs: Store): ReturnType<typeof merge> {
  const { store, both } = merge(base, mine, theirs);
  const stays = store.engines.some(({ id, archived }) => id === mine.active && !archived);
  return { store: stays ? { ...store, active: mine.active } : store, both };
}

/** The engines kept in this browser, for a page that only reads them: nothing is moved or written. */
export function keptStore(): Store {
  try {
    const raw = localStorage.getItem(KEY);
    if (raw === null) return emptyStore;
    try {
      return readStore(raw);
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      return storeOf(rescue(raw));
    }
  } catch {
    return emptyStore;
  }
}

/** The engines of a text that is not whole, and the sentence that tells of it. */
function fromDamaged(
  raw: string,
  problem: SheetError,
): { engines: readonly Engine[]; why: string } {
  if (problem.code === 'future-version') {
    return {
      engines: [],
      why: 'What is kept here was written by a newer version of this page. It was put aside untouched, and is taken back by itself as soon as the newer page is here again: reload to get it, or save what was put aside to a file.',
    };
  }
  const said = problem.message.replace(' Nothing was taken from it.', '');
  try {
    const { engines, lost } = openText(raw);
    return {
      engines,
      why: `What is kept here is damaged. It was put aside untouched, and the engines that are whole were taken from it: ${engines.map(({ name }) => name).join(', ')}. Left out: ${lost.join(' ')}`,
    };
  } catch {
    return {
      engines: [],
      why: `What is kept here is damaged (${said}) It was put aside untouched.`,
    };
  }
}

/** Whether this tab has kept something before: what is gone now was removed, and not lost. */
function hasKept(): boolean {
  try {
    return sessionStorage.getItem(HAS_KEPT) !== null;
  } catch {
    return false;
  }
}

function sayKept(): void {
  try {
    sessionStorage.setItem(HAS_KEPT, 'true');
  } catch {
    // Only that a store removed by hand would come back from its copy.
  }
}

/** Keeps the store in this browser, in step with other tabs. */
export class Keeper {
  readonly #copy: Pick<SecondCopy, 'after' | 'write'>;
  /** What was kept when the page came, and what was read from it; none where nothing can be lost. */
  #found: { readonly raw: string | null; readonly store: Store } | undefined;
  /** The store as last read from or written to the browser. */
  #base: Store = emptyStore;
  #raw: string | null = null;
  /** A text that can neither be read nor put aside. */
  #locked: string | undefined;
  /** Why something was put aside by this tab. */
  #why: string | undefined;

  constructor(copy: Pick<SecondCopy, 'after' | 'write'> = new SecondCopy()) {
    this.#copy = copy;
  }

  #aside(): Keeping['aside'] {
    const texts = this.#locked === undefined ? asideTexts() : [...asideTexts(), this.#locked];
    if (texts.length === 0) return undefined;
    return this.#why === undefined ? { texts } : { texts, why: this.#why };
  }

  /** Copies a text that cannot be read out of the way of the next write; says whether there was room. */
  #putAside(raw: string): boolean {
    const texts = asideTexts();
    if (texts.includes(raw)) return true;
    try {
      localStorage.setItem(ASIDE, JSON.stringify([...texts, raw]));
      return true;
    } catch {
      this.#locked = raw;
      return false;
    }
  }

  /** What was put aside and can be read now, as after a newer page has come back. */
  #return(store: Store): Outcome {
    const texts = asideTexts();
    const back: string[] = [];
    const left: string[] = [];
    let joined = store;
    for (const text of texts) {
      try {
        const { engines } = readStore(text);
        joined = takeBack(joined, engines);
        back.push(...engines.map(({ name }) => name));
      } catch (error) {
        if (!(error instanceof SheetError)) throw error;
        left.push(text);
      }
    }
    if (left.length === texts.length) return { store, keeping: {} };
    const saved = this.save(joined);
    if (saved.keeping.problem !== undefined) return { store, keeping: saved.keeping };
    if (left.length === 0) localStorage.removeItem(ASIDE);
    else localStorage.setItem(ASIDE, JSON.stringify(left));
    return { store: saved.store, keeping: back.length === 0 ? {} : { back } };
  }

  /** What is kept now; what cannot be read is put aside, and whole engines in it are kept at once. */
  load(): Outcome {
    let raw: string | null;
    try {
      raw = localStorage.getItem(KEY);
    } catch {
      return { store: this.#base, keeping: { problem: FORBIDDEN } };
    }
    this.#raw = raw;
    this.#base = emptyStore;
    if (raw !== null || !hasKept()) this.#found = { raw, store: emptyStore };
    if (raw === null) return this.#loaded(emptyStore);
    try {
      this.#base = readStore(raw);
      this.#found = { raw, store: this.#base };
      return this.#loaded(this.#base);
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      const { engines, why } = fromDamaged(raw, error);
      const store = storeOf(engines);
      this.#why = why;
      if (!this.#putAside(raw))
        return { store, keeping: { aside: this.#aside(), problem: LOCKED } };
      if (engines.length > 0) return this.save(store);
      localStorage.removeItem(KEY);
      this.#raw = null;
      return { store, keeping: { aside: this.#aside() } };
    }
  }

  /**
   * What a browser that was killed had not yet written to its disk, joined with what is here now;
   * nothing where nothing was lost.
   */
  async recover(now: () => Store): Promise<Outcome | undefined> {
    if (!this.#found) return undefined;
    const { raw, store: was } = this.#found;
    const text = await this.#copy.after(raw);
    if (text === undefined) return undefined;
    try {
      const { store, both } = merge(was, now(), readStore(text));
      const saved = this.save(store);
      const { both: again = [] } = saved.keeping;
      return { store: saved.store, keeping: { ...saved.keeping, both: [...both, ...again] } };
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      return undefined;
    }
  }

  #loaded(store: Store): Outcome {
    const returned = this.#return(store);
    return { store: returned.store, keeping: { ...returned.keeping, aside: this.#aside() } };
  }

  /** Writes the store, joined with whatever another tab wrote meanwhile. */
  save(mine: Store): Outcome {
    const aside = this.#aside();
    if (this.#locked !== undefined) return { store: mine, keeping: { aside, problem: LOCKED } };
    let store = mine;
    let both: readonly KeptBoth[] = [];
    let met = false;
    let raw: string | null;
    try {
      raw = localStorage.getItem(KEY);
      if (raw !== null && raw !== this.#raw) {
        const theirs = readStore(raw);
        ({ store, both } = mergeTabs(this.#base, mine, theirs));
        met = true;
        // What was joined is not joined again, should there be no room to write it.
        this.#base = theirs;
        this.#raw = raw;
      }
    } catch (error) {
      const problem = error instanceof SheetError ? ELSEWHERE : FORBIDDEN;
      return { store, keeping: { aside, problem } };
    }
    const next = { ...store, revision: store.revision + 1 };
    const written = writeStore(next);
    const came = met ? cameBetween(mine, next) : {};
    try {
      localStorage.setItem(KEY, written);
    } catch (error) {
      const full = error instanceof DOMException && error.name === 'QuotaExceededError';
      return { store, keeping: { aside, both, ...came, problem: full ? FULL : FORBIDDEN } };
    }
    this.#base = next;
    this.#raw = written;
    this.#copy.write(written, raw);
    sayKept();
    return { store: next, keeping: { aside, both, ...came } };
  }

  /** What another tab wrote, joined with what is here. */
  join(mine: Store): Outcome {
    let raw: string | null;
    try {
      raw = localStorage.getItem(KEY);
    } catch {
      return { store: mine, keeping: { problem: FORBIDDEN } };
    }
    if (raw === null) return { store: mine, keeping: { aside: this.#aside(), cleared: true } };
    try {
      const theirs = readStore(raw);
      const { store, both } = mergeTabs(this.#base, mine, theirs);
      this.#base = theirs;
      this.#raw = raw;
      return { store, keeping: { aside: this.#aside(), both, ...cameBetween(mine, store) } };
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      return { store: mine, keeping: { aside: this.#aside(), problem: ELSEWHERE } };
    }
  }

  /** Whether the browser keeps something else than what this tab last read or wrote. */
  get overtaken(): boolean {
    try {
      return localStorage.getItem(KEY) !== this.#raw;
    } catch {
      return false;
    }
  }

  /** Removes what was put aside, when the reader says so. */
  dropAside(): void {
    try {
      localStorage.removeItem(ASIDE);
      if (this.#locked !== undefined) localStorage.removeItem(KEY);
      this.#locked = undefined;
      this.#why = undefined;
      this.#raw = localStorage.getItem(KEY);
    } catch {
      // Nothing can be kept, so nothing is left to remove.
    }
  }
}
