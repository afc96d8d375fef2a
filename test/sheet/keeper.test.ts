import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { documentOf, VERSION, type Engine } from '../../calculators/sheet/model.ts';
import { readStore, withEngine, writeStore } from '../../calculators/sheet/store.ts';
import { ASIDE, KEY } from '../../site/opening/keeps-sheet.ts';
import { Keeper, keepPlace, keptPlace, keptStore } from '../../site/sheet/keeper.ts';

afterEach(() => vi.unstubAllGlobals());

/** A browser's store that can be full or forbidden. */
class Box {
  readonly texts = new Map<string, string>();
  room = Infinity;
  forbidden = false;

  #ask(): void {
    if (this.forbidden) throw new DOMException('The operation is insecure.', 'SecurityError');
  }
  getItem(key: string): string | null {
    this.#ask();
    return this.texts.get(key) ?? null;
  }
  setItem(key: string, text: string): void {
    this.#ask();
    const others = [...this.texts].filter(([other]) => other !== key);
    const used = others.reduce((sum, [, other]) => sum + other.length, 0);
    if (used + text.length > this.room) throw new DOMException('No room.', 'QuotaExceededError');
    this.texts.set(key, text);
  }
  removeItem(key: string): void {
    this.#ask();
    this.texts.delete(key);
  }
}

let box: Box;
beforeEach(() => {
  box = new Box();
  vi.stubGlobal('localStorage', box);
});

const one: Engine = { ...demoSheet(), id: 'e-1', name: 'One' };
const two: Engine = { ...demoSheet(), id: 'e-2', name: 'Two' };
const storeOf = (...engines: Engine[]) => ({ engines, active: engines[0]?.id, revision: 1 });
const damaged = JSON.stringify({
  revision: 1,
  active: 'e-1',
  sheet: documentOf([one, { ...two, figures: { stroke: 1e9 } }]),
});
const newer = writeStore(storeOf(one)).replace(
  `"version":${String(VERSION)}`,
  `"version":${String(VERSION + 1)}`,
);
const names = (text: string | undefined): string[] =>
  readStore(text ?? '').engines.map(({ name }) => name);

describe('a store with one damaged engine', () => {
  it('keeps the whole ones at once, so that a second load has them', () => {
    box.texts.set(KEY, damaged);
    expect(new Keeper().load().store.engines).toEqual([one]);
    expect(names(box.texts.get(KEY))).toEqual(['One']);
    const second = new Keeper().load();
    expect(second.store.engines).toEqual([one]);
    expect(second.keeping.aside?.texts).toEqual([damaged]);
  });

  it('is not touched by a page that only reads', () => {
    box.texts.set(KEY, damaged);
    expect(keptStore().engines).toEqual([one]);
    expect([...box.texts]).toEqual([[KEY, damaged]]);
  });

  it('says what was left out, and says it still after an edit', () => {
    box.texts.set(KEY, damaged);
    const keeper = new Keeper();
    const { store, keeping } = keeper.load();
    expect(keeping.aside?.why).toContain('Left out: “Two”');
    const saved = keeper.save(withEngine(store, { ...one, notes: 'x' }));
    expect(saved.keeping.aside?.why).toContain('Left out: “Two”');
  });

  it('without room to put it aside is locked: nothing is written over it', () => {
    box.texts.set(KEY, damaged);
    box.room = damaged.length + 50;
    const keeper = new Keeper();
    const { store, keeping } = keeper.load();
    expect(store.engines).toEqual([one]);
    expect(keeping.problem).toContain('nothing is written over it');
    expect(keeping.aside?.texts).toEqual([damaged]);
    keeper.save(withEngine(store, { ...one, notes: 'x' }));
    expect(box.texts.get(KEY)).toBe(damaged);
    keeper.dropAside();
    expect(keeper.save(store).keeping.problem).toBeUndefined();
    expect(names(box.texts.get(KEY))).toEqual(['One']);
  });

  it('is put aside once, however often it is met', () => {
    box.texts.set(ASIDE, JSON.stringify([damaged]));
    box.texts.set(KEY, damaged);
    new Keeper().load();
    expect(JSON.parse(box.texts.get(ASIDE)!)).toEqual([damaged]);
  });
});

describe('a store of a newer version', () => {
  it('is put aside to the letter', () => {
    box.texts.set(KEY, newer);
    const { store, keeping } = new Keeper().load();
    expect(store.engines).toEqual([]);
    expect(keeping.aside?.why).toContain('newer version');
    expect(JSON.parse(box.texts.get(ASIDE)!)).toEqual([newer]);
    expect(box.texts.has(KEY)).toBe(false);
  });

  it('is taken back, beside what was made meanwhile, once it can be read', () => {
    const readable = writeStore(storeOf(one));
    const other = '"not a sheet"';
    box.texts.set(ASIDE, JSON.stringify([readable, other]));
    box.texts.set(KEY, writeStore(storeOf({ ...two, id: 'e-1' })));
    const { store, keeping } = new Keeper().load();
    expect(store.engines.map(({ name }) => name)).toEqual(['Two', 'One']);
    expect(store.active).toBe('e-1');
    expect(keeping.back).toEqual(['One']);
    expect(names(box.texts.get(KEY))).toEqual(['Two', 'One']);
    expect(JSON.parse(box.texts.get(ASIDE)!)).toEqual([other]);
    expect(new Keeper().load().keeping.back).toBeUndefined();
  });

  it('is taken back where nothing was made meanwhile', () => {
    box.texts.set(ASIDE, JSON.stringify([writeStore(storeOf(one, two))]));
    expect(new Keeper().load().store.engines.map(({ name }) => name)).toEqual(['One', 'Two']);
    expect(box.texts.has(ASIDE)).toBe(false);
  });

  it('stays put aside while there is no room for it', () => {
    const aside = JSON.stringify([writeStore(storeOf(one))]);
    box.texts.set(ASIDE, aside);
    box.room = aside.length + 10;
    const { keeping } = new Keeper().load();
    expect(keeping.problem).toContain('is full');
    expect(box.texts.get(ASIDE)).toBe(aside);
  });

  it('written by another tab is never written over', () => {
    box.texts.set(KEY, writeStore(storeOf(one)));
    const keeper = new Keeper();
    const { store } = keeper.load();
    box.texts.set(KEY, newer);
    expect(keeper.save(withEngine(store, { ...one, notes: 'x' })).keeping.problem).toContain(
      'Another tab',
    );
    expect(box.texts.get(KEY)).toBe(newer);
    expect(keeper.join(store).keeping.problem).toContain('Another tab');
  });
});

describe('a browser that fails', () => {
  it('forbids the store from the start, or from some moment on: the sheet stays, and it is said', () => {
    box.forbidden = true;
    const keeper = new Keeper();
    expect(keeper.load().keeping.problem).toContain('does not let the page keep');
    expect(keptStore().engines).toEqual([]);
    expect(keeper.save(storeOf(one))).toMatchObject({ store: { engines: [one] } });
    expect(keeper.overtaken).toBe(false);
    keeper.dropAside();
    box.forbidden = false;
    keeper.save(storeOf(one));
    box.forbidden = true;
    expect(keeper.join(storeOf(one)).keeping.problem).toContain('does not let the page keep');
  });

  it('is full: what was kept stays whole, and the change is on the screen', () => {
    const keeper = new Keeper();
    keeper.save(storeOf(one));
    const before = box.texts.get(KEY);
    box.room = before!.length + 10;
    const changed = { ...one, notes: 'x'.repeat(500) };
    const { store, keeping } = keeper.save(storeOf(changed));
    expect(keeping.problem).toContain('is full');
    expect(store.engines).toEqual([changed]);
    expect(box.texts.get(KEY)).toBe(before);
  });

  it('was cleared in between: the next change keeps the whole sheet again', () => {
    const keeper = new Keeper();
    const { store } = keeper.save(storeOf(one, two));
    box.texts.clear();
    expect(keeper.overtaken).toBe(true);
    expect(keeper.join(store).keeping.cleared).toBe(true);
    keeper.save(withEngine(store, { ...one, notes: 'x' }));
    expect(names(box.texts.get(KEY))).toEqual(['One', 'Two']);
  });
});

describe('a browser that was killed before it had written to its disk', () => {
  /** What is on the disk at once, by what the keeper is promised of it. */
  class Disk {
    readonly before: (string | null)[] = [];
    text: string | undefined;
    /** What a page that comes finds there. */
    found: { before: (string | null)[]; text: string | undefined } = {
      before: [],
      text: undefined,
    };
    come(): this {
      this.found = { before: [...this.before], text: this.text };
      return this;
    }
    write(text: string, over: string | null): void {
      this.before.push(over);
      this.text = text;
    }
    after(text: string | null): Promise<string | undefined> {
      return Promise.resolve(this.found.before.includes(text) ? this.found.text : undefined);
    }
  }
  let disk: Disk;
  let tab: Box;
  beforeEach(() => {
    disk = new Disk();
    tab = new Box();
    vi.stubGlobal('sessionStorage', tab);
  });
  const opened = () => {
    const keeper = new Keeper(disk.come());
    return { keeper, ...keeper.load() };
  };
  const die = (text: string | undefined): void => {
    tab.texts.clear();
    if (text === undefined) box.texts.delete(KEY);
    else box.texts.set(KEY, text);
  };
  const noted = (notes: string): Engine => ({ ...one, notes });

  it('has again what was kept since, whichever of its texts it fell back to', async () => {
    const { keeper, store } = opened();
    let last = store;
    const texts: (string | undefined)[] = [undefined];
    for (const notes of ['L', 'La', 'Late']) {
      last = keeper.save(withEngine(last, noted(notes))).store;
      texts.push(box.texts.get(KEY));
    }
    for (const text of texts.slice(0, -1)) {
      die(text);
      const again = opened();
      const recovered = await again.keeper.recover(() => again.store);
      expect(recovered!.store.engines).toEqual([noted('Late')]);
      expect(recovered!.keeping.both).toEqual([]);
      expect(readStore(box.texts.get(KEY)!).engines).toEqual([noted('Late')]);
    }
  });

  it('joins it with what is typed before it has come', async () => {
    const first = opened();
    const kept = first.keeper.save(withEngine(first.store, one)).store;
    const text = box.texts.get(KEY);
    first.keeper.save(withEngine(kept, noted('Late')));
    die(text);
    const again = opened();
    const typed = again.keeper.save(withEngine(again.store, two)).store;
    const recovered = await again.keeper.recover(() => typed);
    expect(recovered!.store.engines).toEqual([noted('Late'), two]);
  });

  it('takes back what was put aside, and what was lost, both', async () => {
    const first = opened();
    const kept = first.keeper.save(withEngine(first.store, one)).store;
    const text = box.texts.get(KEY);
    first.keeper.save(withEngine(kept, noted('Late')));
    die(text);
    box.texts.set(ASIDE, JSON.stringify([writeStore(storeOf(two))]));
    const again = opened();
    const recovered = await again.keeper.recover(() => again.store);
    expect(recovered!.store.engines.map(({ name }) => name).sort()).toEqual(['One', 'Two']);
  });

  it('leaves alone a text that is no older one of its own', async () => {
    const first = opened();
    const kept = first.keeper.save(withEngine(first.store, one)).store;
    first.keeper.save(withEngine(kept, noted('Late')));
    for (const text of [box.texts.get(KEY), writeStore(storeOf(two)), damaged, newer]) {
      die(text);
      const again = opened();
      const before = box.texts.get(KEY);
      expect(await again.keeper.recover(() => again.store)).toBeUndefined();
      expect(box.texts.get(KEY)).toBe(before);
    }
  });

  it('leaves a store gone that was emptied while the tab was open', async () => {
    const { keeper, store } = opened();
    keeper.save(withEngine(store, one));
    box.texts.delete(KEY);
    const again = opened();
    expect(await again.keeper.recover(() => again.store)).toBeUndefined();
    expect(box.texts.has(KEY)).toBe(false);
  });
});

describe('two tabs on two engines', () => {
  const opened = (active: string, keeper = new Keeper()) => {
    const { store } = keeper.load();
    return { keeper, store: { ...store, active } };
  };

  it('stay each with its own, whichever is turned to elsewhere', () => {
    box.texts.set(KEY, writeStore(storeOf(one, two)));
    const first = opened('e-1');
    const second = opened('e-2');
    second.keeper.save(second.store);
    const joined = first.keeper.join(first.store);
    expect(joined.store.active).toBe('e-1');
    const noted = withEngine(joined.store, { ...one, notes: 'Mine.' });
    expect(first.keeper.save(noted).store.active).toBe('e-1');
    expect(second.keeper.save(second.store).store.active).toBe('e-2');
  });

  it('that lost its own to the other turn to what the other has', () => {
    box.texts.set(KEY, writeStore(storeOf(one, two)));
    const first = opened('e-1');
    const second = opened('e-2');
    second.keeper.save({ ...second.store, engines: [two] });
    expect(first.keeper.join(first.store).store.active).toBe('e-2');
  });
});

describe('the place where a sheet was left', () => {
  const PLACE = 'gudgeon.sheet.place';

  it('is kept of each engine', () => {
    keepPlace('e-1', 'read-gap-2');
    keepPlace('e-2', 'step-timing');
    expect(keptPlace('e-1')).toBe('read-gap-2');
    keepPlace('e-1', '');
    expect([keptPlace('e-1'), keptPlace('e-2'), keptPlace('e-3')]).toEqual(['', 'step-timing', '']);
  });

  it('of the one engine that it was kept of before is known still', () => {
    box.texts.set(PLACE, 'e-1 read-gap-2');
    expect(keptPlace('e-1')).toBe('read-gap-2');
    keepPlace('e-2', 'read-top-1');
    expect([keptPlace('e-1'), keptPlace('e-2')]).toEqual(['read-gap-2', 'read-top-1']);
  });

  it.each(['[', '[1]', '{"e-1":"x"}', '[["e-1"]]'])('written as %s is none', (text) => {
    box.texts.set(PLACE, text);
    expect(keptPlace('e-1')).toBe('');
    keepPlace('e-1', 'step-gap');
    expect(keptPlace('e-1')).toBe('step-gap');
  });

  it('is kept of no more engines than a sheet has', () => {
    for (let i = 0; i < 80; i += 1) keepPlace(`e-${String(i)}`, 'step-gap');
    expect([keptPlace('e-0'), keptPlace('e-79')]).toEqual(['', 'step-gap']);
  });

  it('is not asked for where nothing may be kept', () => {
    box.forbidden = true;
    keepPlace('e-1', 'step-gap');
    expect(keptPlace('e-1')).toBe('');
  });
});
