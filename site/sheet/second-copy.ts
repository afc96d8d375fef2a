import { DATABASE, hasDatabase } from '../opening/keeps-sheet.ts';

const SHELF = 'sheet';
const RECORD = 'copy';
/** More than a quick hand writes while a browser keeps its store from the disk. */
const MOST_BEFORE = 500;
/** A database may keep a page waiting without end, as where another version of it is open. */
const PATIENCE_MS = 2000;

interface Copy {
  readonly text: string;
  /** Marks of the texts that this one was written over, the latest last. */
  readonly before: readonly string[];
}

/** Tells texts apart that one browser has kept; `none` where nothing was kept yet. */
function markOf(text: string | null): string {
  if (text === null) return 'none';
  let sum = 0;
  for (let at = 0; at < text.length; at += 1) sum = (Math.imul(sum, 31) + text.charCodeAt(at)) | 0;
  return `${text.length}.${sum}`;
}

const open = (): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const asked = indexedDB.open(DATABASE, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(SHELF);
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error!);
  });

const patiently = <T>(work: Promise<T>): Promise<T | undefined> =>
  Promise.race([
    work,
    new Promise<undefined>((resolve) => {
      setTimeout(resolve, PATIENCE_MS, undefined);
    }),
  ]);

/**
 * Browsers write `localStorage` to the disk seconds late, so one that is killed comes back with an
 * older text. This holds the text a second time, in a database that is on the disk at once, together
 * with what it was written over: only such a text is one that the browser has fallen back to.
 */
export class SecondCopy {
  #opened: Promise<IDBDatabase> | undefined;
  /** The copy as this page found it. */
  readonly #found = this.#read();
  #next: string | undefined;
  #over: string[] = [];
  #writing = false;

  constructor() {
    // Where there is no database the sheet is kept as before, and a browser must not be killed.
    this.#found.catch(() => undefined);
  }

  /** Made with the first text that is held: that it is there says that something may be in it. */
  #database(): Promise<IDBDatabase> {
    return (this.#opened ??= open());
  }

  async #read(): Promise<Copy | undefined> {
    if (!(await hasDatabase())) return undefined;
    const shelf = (await this.#database()).transaction(SHELF).objectStore(SHELF);
    return new Promise((resolve, reject) => {
      const asked: IDBRequest<Copy | undefined> = shelf.get(RECORD);
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error!);
    });
  }

  /** The text that was kept after `text`, where the browser has fallen back to that. */
  async after(text: string | null): Promise<string | undefined> {
    const found = await patiently(this.#found).catch(() => undefined);
    return found?.before.includes(markOf(text)) ? found.text : undefined;
  }

  /** Holds a text that was written over another. Of several that come at once only the last is. */
  write(text: string, over: string | null): void {
    this.#next = text;
    this.#over.push(markOf(over));
    if (this.#writing) return;
    this.#writing = true;
    void this.#writeAll()
      .catch(() => undefined)
      .finally(() => {
        this.#writing = false;
      });
  }

  async #writeAll(): Promise<void> {
    await this.#found;
    while (this.#next !== undefined) {
      const text = this.#next;
      this.#next = undefined;
      await this.#put(text, this.#over.splice(0));
    }
  }

  async #put(text: string, over: readonly string[]): Promise<void> {
    const act = (await this.#database()).transaction(SHELF, 'readwrite', { durability: 'strict' });
    const shelf = act.objectStore(SHELF);
    const asked: IDBRequest<Copy | undefined> = shelf.get(RECORD);
    asked.onsuccess = () => {
      const before = asked.result?.before ?? [];
      // Another tab has gone on from this very text already.
      if (before.includes(markOf(text))) return;
      const copy: Copy = { text, before: [...before, ...over].slice(-MOST_BEFORE) };
      shelf.put(copy, RECORD);
    };
    await new Promise<void>((resolve, reject) => {
      act.oncomplete = () => resolve();
      act.onabort = () => reject(act.error ?? new Error('The copy was not written.'));
    });
  }
}
