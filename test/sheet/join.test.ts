import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { cameWords } from '../../calculators/sheet/came.ts';
import { wound } from '../../calculators/sheet/clock.ts';
import { addHours, addNote } from '../../calculators/sheet/edit-log.ts';
import { keep } from '../../calculators/sheet/kept-results.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import {
  confirm,
  retype,
  setDone,
  setEntry,
  withdraw,
  writtenLast,
} from '../../calculators/sheet/set-entry.ts';
import { setFigure, setName, setNotes, setOrder } from '../../calculators/sheet/set-figure.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { join } from '../../calculators/sheet/join.ts';
import { hoursRun, readingsAt } from '../../calculators/sheet/log.ts';
import { LIMITS, type Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { merge, type Store } from '../../calculators/sheet/store.ts';
import { bothTexts, pickAll } from '../../calculators/sheet/three-way.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { Keeper } from '../../site/sheet/keeper.ts';
import { acts, blank, withReadings, type Act } from './acts.ts';
import { anyEngine } from './engines.ts';
import { parseDocument } from './parse-document.ts';

afterEach(() => vi.unstubAllGlobals());

const storeOf = (...engines: Engine[]): Store => ({ engines, active: engines[0]?.id, revision: 1 });

/** What a tab does one after the other, each a while after the one before by the wall clock. */
const doings = (most: number) =>
  fc.array(fc.tuple(acts, fc.integer({ min: 0, max: 5 })), { maxLength: most });
const run = (from: Engine, done: readonly (readonly [Act, number])[], at = from.clock): Engine => {
  let now = at;
  return done.reduce((engine, [act, later]) => {
    now += later;
    return act(wound(engine, now));
  }, from);
};

const lines = (...engines: Engine[]): string[] =>
  engines.flatMap(({ log }) => log.map((entry) => JSON.stringify(entry)));
/** Engines without what they are called in a list, in no order. */
const bodies = ({ engines }: Store): string[] =>
  engines
    .map(({ id: _, name: __, ...body }) =>
      JSON.stringify(body, (_key, value: unknown) =>
        typeof value === 'object' && value !== null && !Array.isArray(value)
          ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
          : value,
      ),
    )
    .sort();

const sides = fc.tuple(doings(8), doings(6), doings(6));

describe('what two tabs wrote in one engine', () => {
  it('is joined entry by entry: none is lost, and none is there twice', () => {
    let joined = 0;
    fc.assert(
      fc.property(sides, ([first, here, there]) => {
        const was = run(blank, first);
        const [mine, theirs] = [run(was, here), run(was, there)];
        const { engines } = merge(storeOf(was), storeOf(mine), storeOf(theirs)).store;
        const all = new Set(lines(...engines));
        const gone = (side: Engine): Set<string> =>
          new Set(lines(was).filter((line) => !lines(side).includes(line)));
        const out = new Set([...gone(mine), ...gone(theirs)]);
        for (const line of lines(mine, theirs)) expect(all.has(line)).toBe(!out.has(line));
        for (const engine of engines) expect(new Set(lines(engine)).size).toBe(engine.log.length);
        for (const line of all) expect(lines(mine, theirs)).toContain(line);
        if (engines.length === 1) joined += 1;
      }),
      { numRuns: 300 },
    );
    expect(joined).toBeGreaterThan(100);
  });

  it('is in the order of the clock, which is that of the day where it was never set back', () => {
    fc.assert(
      fc.property(sides, ([first, here, there]) => {
        const was = run(blank, first);
        const { engine } = join(was, run(was, here), run(was, there));
        const clocks = engine.log.map(({ clock }) => clock);
        expect(clocks).toEqual([...clocks].sort((a, b) => a - b));
      }),
    );
    const sleeper = addNote(wound(blank, 900), 'on the ninth', '2026-03-09');
    const other = [1, 2, 3].reduce(
      (engine, day) =>
        addNote(wound(engine, day * 100), `on ${String(day)}`, `2026-03-0${String(day)}`),
      blank,
    );
    for (const { engine } of [join(blank, sleeper, other), join(blank, other, sleeper)]) {
      expect(engine.log.map(({ on }) => on.at(-1))).toEqual(['1', '2', '3', '9']);
    }
  });

  it('is the same whichever of them comes first, and whichever is asked', () => {
    fc.assert(
      fc.property(sides, ([first, here, there]) => {
        const was = storeOf(run(blank, first));
        const [mine, theirs] = [here, there].map((done) => storeOf(run(was.engines[0]!, done))) as [
          Store,
          Store,
        ];
        expect(bodies(merge(was, mine, theirs).store)).toEqual(
          bodies(merge(was, theirs, mine).store),
        );
      }),
      { numRuns: 300 },
    );
  });

  it('joined once more is no other', () => {
    fc.assert(
      fc.property(sides, ([first, here, there]) => {
        const was = storeOf(run(blank, first));
        const mine = storeOf(run(was.engines[0]!, here));
        const theirs = storeOf(run(was.engines[0]!, there));
        expect(merge(was, mine, mine).store.engines).toEqual(mine.engines);
        const { store: joined, both } = merge(was, mine, theirs);
        expect(merge(theirs, joined, theirs).store.engines).toEqual(joined.engines);
        if (both.length === 0) {
          for (const side of [mine, theirs]) {
            expect(merge(was, joined, side).both).toEqual([]);
            expect(bodies(merge(was, joined, side).store)).toEqual(bodies(joined));
            expect(bodies(merge(was, side, joined).store)).toEqual(bodies(joined));
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  it('of three tabs holds the same entries, whichever two are joined first', () => {
    let tried = 0;
    fc.assert(
      fc.property(fc.tuple(doings(5), doings(4), doings(4), doings(4)), ([first, ...all]) => {
        const was = run(blank, first);
        const [a, b, c] = all.map((done) => run(was, done)) as [Engine, Engine, Engine];
        const [ab, bc] = [join(was, a, b), join(was, b, c)];
        const [left, right] = [join(was, ab.engine, c), join(was, a, bc.engine)];
        if ([ab, bc, left, right].some(({ other }) => other)) return;
        tried += 1;
        expect(left.engine.log).toEqual(right.engine.log);
        expect(bodies(storeOf(left.engine))).toEqual(bodies(storeOf(right.engine)));
      }),
      { numRuns: 400 },
    );
    expect(tried).toBeGreaterThan(50);
  });

  it('is an engine that a file holds, and in each box stands what was read there last', () => {
    fc.assert(
      fc.property(sides, ([first, here, there]) => {
        const was = run(blank, first);
        const { store } = merge(storeOf(was), storeOf(run(was, here)), storeOf(run(was, there)));
        expect(parseDocument(writeDocument(store.engines)).engines).toEqual(store.engines);
        for (const engine of store.engines) {
          for (const id of withReadings) {
            readingOf(engine, id).left.forEach((value, i) => {
              if (value === null) return;
              const read = readingsAt(engine, id, i).filter(({ kind }) => kind !== 'found');
              expect(read.map((entry) => entry.value)).toContain(value);
            });
          }
        }
      }),
      { numRuns: 200 },
    );
  });
});

it('whatever three engines it is made of, what is joined can be read again', () => {
  fc.assert(
    fc.property(anyEngine, anyEngine, anyEngine, (was, mine, theirs) => {
      const { engine, other } = join(was, { ...mine, id: was.id }, { ...theirs, id: was.id });
      const all = other ? [engine, { ...other, id: was.id === 'e-2' ? 'e-3' : 'e-2' }] : [engine];
      expect(parseDocument(writeDocument(all)).engines).toEqual(all);
    }),
  );
});

describe('two tabs in one engine', () => {
  const gaps = [0, 1, 2].reduce((so, i) => setEntry(so, 'gap', 'found', i, 0.35), blank);
  const joinedOf = (mine: Engine, theirs: Engine, was = gaps): Engine => {
    const { engine, other } = join(was, mine, theirs);
    expect(other).toBeUndefined();
    return engine;
  };

  it('each fill boxes of their own', () => {
    const one = setEntry(blank, 'gap', 'found', 0, 0.31);
    const two = setFigure(setEntry(wound(blank, 9), 'gap', 'found', 1, 0.36), 'stroke', 52);
    const engine = joinedOf(one, two, blank);
    expect(readingOf(engine, 'gap').found).toEqual([0.31, 0.36]);
    expect(engine.figures.stroke).toBe(52);
    expect(engine.log.map(({ kind }) => kind)).toEqual(['found', 'found', 'figure']);
  });

  it('write one box differently: both are kept, each with its own reading, and the box is named', () => {
    const one = addNote(setEntry(blank, 'gap', 'found', 0, 0.31), 'mine');
    const two = addHours(setEntry(wound(blank, 9), 'gap', 'found', 0, 0.36), 2);
    const { store, both } = merge(storeOf(blank), storeOf(one), storeOf(two));
    const [here, there] = store.engines;
    expect(store.engines).toHaveLength(2);
    expect([here, there].map((engine) => readingOf(engine!, 'gap').found)).toEqual([
      [0.31],
      [0.36],
    ]);
    expect([here, there].map((engine) => readingsAt(engine!, 'gap', 0).length)).toEqual([1, 1]);
    for (const engine of [here!, there!]) {
      expect(hoursRun(engine)).toBe(2);
      expect(engine.log.some(({ kind }) => kind === 'note')).toBe(true);
    }
    expect(both).toEqual([
      { name: blank.name, other: `${blank.name} (2)`, apart: ['set the points gap, set 1'] },
    ]);
  });

  it('write one box alike: it stands, and nothing is asked', () => {
    const [one, two] = [5, 9].map((at) => setEntry(wound(blank, at), 'gap', 'found', 0, 0.31));
    expect(readingOf(joinedOf(one!, two!, blank), 'gap').found).toEqual([0.31]);
  });

  it('write a figure, the name or the firing order differently: both are kept', () => {
    for (const [one, two, apart] of [
      [setFigure(blank, 'stroke', 52), setFigure(blank, 'stroke', 53), 'stroke'],
      [setName(blank, 'A'), setName(blank, 'B'), 'name'],
      [setOrder(blank, [1, 2, 3]), setOrder(blank, [1, 3, 2]), 'firing order'],
    ] as const) {
      const { both, store } = merge(storeOf(blank), storeOf(one), storeOf(two));
      expect(both.map((kept) => kept.apart)).toEqual([[apart]]);
      expect(store.engines).toHaveLength(2);
    }
  });

  it('a text that cannot be read in one, and a figure in the other, are two words for one box', () => {
    const box = { kind: 'figure', key: 'stroke' } as const;
    const odd = enter(blank, box, '5l', { lengths: 'mm' });
    expect(joinedOf(odd, setFigure(blank, 'rod', 105), blank).unread).toEqual({
      'figure:stroke': '5l',
    });
    const { both, store } = merge(
      storeOf(blank),
      storeOf(odd),
      storeOf(setFigure(blank, 'stroke', 52)),
    );
    expect(both).toHaveLength(1);
    expect(store.engines[0]!.figures).not.toHaveProperty('stroke');
    expect(store.engines[1]!.figures.stroke).toBe(52);
  });

  it('both write notes: each line of both stands once', () => {
    const was = setNotes(blank, 'Bought as parts.');
    const one = setNotes(was, 'Bought as parts.\nPlate bent.');
    const two = setNotes(was, 'Bought as parts.\nCoil 2 is new.');
    expect(joinedOf(one, two, was).notes).toBe('Bought as parts.\nCoil 2 is new.\nPlate bent.');
    const long = setNotes(was, 'x'.repeat(LIMITS.notes));
    expect(merge(storeOf(was), storeOf(one), storeOf(long)).both[0]?.apart).toEqual(['notes']);
  });

  it('both send results: all stand', () => {
    const result = (text: string) => ({ label: 'Gap', text, calculator: 'dwell', query: '' });
    const engine = joinedOf(keep(blank, result('1')), keep(blank, result('2')), blank);
    expect(engine.kept.map(({ text }) => text)).toEqual(['1', '2']);
  });

  it('a reading taken out in one is gone, and what the other wrote stays', () => {
    const was = setEntry(gaps, 'gap', 'left', 0, 3.5);
    const one = withdraw(was, readingsAt(was, 'gap', 0).at(-1)!);
    const two = addHours(was, 1);
    const engine = joinedOf(one, two, was);
    expect(readingsAt(engine, 'gap', 0).map(({ value }) => value)).toEqual([0.35]);
    expect(hoursRun(engine)).toBe(1);
  });

  it('a step read in one before a change in the other is to be checked again', () => {
    const timed = [0, 1, 2].reduce((so, i) => setEntry(so, 'timing', 'found', i, 2.2), gaps);
    const checked = confirm(wound(timed, 100), 'timing');
    const changed = setEntry(wound(timed, 200), 'gap', 'left', 1, 0.36);
    expect(progressOf(joinedOf(checked, changed, timed)).timing.because).toEqual(['gap']);
    // Read after it by the wall clock, it was read on the changed engine.
    const later = confirm(wound(timed, 300), 'timing');
    expect(progressOf(joinedOf(later, changed, timed)).timing.because).toEqual([]);
  });

  it('one cylinder read in one settles no other that a change in the other moved', () => {
    const timed = [0, 1, 2].reduce((so, i) => setEntry(so, 'timing', 'found', i, 2.2), gaps);
    const one = setEntry(wound(timed, 300), 'timing', 'left', 0, 2.25, { kind: 'check' });
    const changed = setEntry(wound(timed, 200), 'gap', 'left', 1, 0.36);
    for (const engine of [joinedOf(one, changed, timed), joinedOf(changed, one, timed)]) {
      expect(progressOf(engine).timing.because).toEqual(['gap']);
      expect(progressOf(engine).timing.stale).toEqual([1, 2]);
    }
  });

  it('what one typed stays in the log while the other goes on typing there', () => {
    const before = { entry: null, changed: 0 };
    const one = retype(wound(blank, 10), 'gap', 'found', 0, 0.3, before, undefined);
    const last = writtenLast(one, 'gap');
    const elsewhere = setEntry(wound(one, 20), 'gap', 'found', 0, 0.4);
    const on = retype(elsewhere, 'gap', 'found', 0, 0.35, before, last);
    expect(readingsAt(on, 'gap', 0).map(({ value }) => value)).toEqual([0.4, 0.35]);
  });

  it('have more than one engine holds: both are kept whole', () => {
    const many = (first: string): Engine => ({
      ...blank,
      clock: LIMITS.log,
      log: Array.from({ length: LIMITS.log - 10 }, (_, i) => ({
        ...({ kind: 'note', text: `${first}${String(i)}`, on: '' } as const),
        clock: i,
      })),
    });
    const { store, both } = merge(storeOf(blank), storeOf(many('a')), storeOf(many('b')));
    expect(store.engines.map(({ log }) => log.length)).toEqual([2990, 2990]);
    expect(both[0]?.apart).toEqual([]);
  });
});

describe('tabs on one browser', () => {
  class Box {
    text: string | null = null;
    full = false;
    getItem = (key: string): string | null => (key === 'gudgeon.sheet' ? this.text : null);
    setItem = (key: string, text: string): void => {
      if (this.full) throw new DOMException('No room.', 'QuotaExceededError');
      if (key === 'gudgeon.sheet') this.text = text;
    };
    removeItem = (): void => undefined;
  }
  const noCopy = { after: () => Promise.resolve(undefined), write: () => undefined };
  let box: Box;
  beforeEach(() => {
    box = new Box();
    vi.stubGlobal('localStorage', box);
  });
  const open = (): { keeper: Keeper; store: Store } => {
    const keeper = new Keeper(noCopy);
    return { keeper, store: keeper.load().store };
  };
  const edited = (store: Store, act: Act, at: number): Store => ({
    ...store,
    engines: store.engines.map((engine, i) => (i === 0 ? act(wound(engine, at)) : engine)),
  });

  it('come to the same, in whatever order they write and are told, and lose no reading', () => {
    const moves = fc.array(fc.tuple(fc.nat(2), fc.option(acts)), { maxLength: 25 });
    fc.assert(
      fc.property(moves, (done) => {
        box.text = null;
        new Keeper(noCopy).save(storeOf(blank));
        const tabs = [open(), open(), open()];
        const read = new Set<string>();
        done.forEach(([n, act], at) => {
          const tab = tabs[n]!;
          const before = new Set(lines(...tab.store.engines));
          if (act) {
            const wanted = edited(tab.store, act, at);
            for (const line of lines(...wanted.engines)) if (!before.has(line)) read.add(line);
            tab.store = tab.keeper.save(wanted).store;
          } else tab.store = tab.keeper.join(tab.store).store;
        });
        for (const tab of tabs) tab.store = tab.keeper.join(tab.store).store;
        expect(tabs[1]!.store.engines).toEqual(tabs[0]!.store.engines);
        expect(tabs[2]!.store.engines).toEqual(tabs[0]!.store.engines);
        const all = lines(...tabs[0]!.store.engines);
        for (const line of read) if (!line.includes('"figure"')) expect(all).toContain(line);
      }),
      { numRuns: 150 },
    );
  });

  it('the one that is behind has it at once, and is told what came in one sentence', () => {
    new Keeper(noCopy).save(storeOf(blank));
    const [one, two] = [open(), open()];
    one.store = one.keeper.save(
      edited(one.store, (engine) => setEntry(engine, 'gap', 'found', 0, 0.31), 5),
    ).store;
    const behind = two.keeper.save(
      edited(two.store, (engine) => setFigure(engine, 'stroke', 52), 9),
    );
    expect(behind.store.engines).toHaveLength(1);
    expect(behind.store.engines[0]!.figures.stroke).toBe(52);
    const { came } = behind.keeping;
    expect(cameWords(came!.before, came!.after, 'mm')).toBe(
      'Another tab wrote into “Bench triple”: Set the points gap, set 1: 0.31 mm.',
    );
    const told = one.keeper.join(one.store).keeping.came;
    expect(told?.after.engines[0]!.figures.stroke).toBe(52);
  });

  it('without room to write what was joined, join it no second time', () => {
    new Keeper(noCopy).save(storeOf(blank));
    const [one, two] = [open(), open()];
    one.keeper.save(edited(one.store, (engine) => setFigure(engine, 'stroke', 53), 5));
    box.full = true;
    const stuck = two.keeper.save(
      edited(two.store, (engine) => setFigure(engine, 'stroke', 52), 9),
    );
    expect(stuck.keeping.problem).toContain('is full');
    expect(stuck.store.engines).toHaveLength(2);
    const again = two.keeper.save(edited(stuck.store, (engine) => addHours(engine, 1), 12));
    expect(again.store.engines).toHaveLength(2);
    box.full = false;
    expect(two.keeper.save(again.store).store.engines).toHaveLength(2);
  });
});

describe('what came from another tab', () => {
  const words = (was: Engine[], is: Engine[]): string =>
    cameWords(storeOf(...was), storeOf(...is), 'mm');

  it('is told by its places and figures, a long list counted', () => {
    const gap = setEntry(blank, 'gap', 'found', 0, 0.31);
    expect(words([blank], [setFigure(gap, 'stroke', 52)])).toBe(
      'Another tab wrote into “Bench triple”: Stroke: 52 mm; Set the points gap, set 1: 0.31 mm.',
    );
    const many = [1, 2, 3, 4, 5, 6].reduce((so, hours) => addHours(so, hours), blank);
    expect(words([blank], [many])).toBe(
      'Another tab wrote into “Bench triple”: Run: 1 h; Run: 2 h; Run: 3 h; Run: 4 h; and 2 more.',
    );
    expect(words([gap], [blank])).toContain('1 entry taken out of the log');
    expect(words([blank], [setDone(blank, 'fuel', true)])).toContain('(done)');
  });

  it('is told of engines that came and went, and of nothing where nothing did', () => {
    const other = { ...blank, id: 'e-2', name: 'Other' };
    expect(words([blank], [blank, other])).toBe('Another tab added “Other”.');
    expect(words([blank, other], [blank])).toBe('Another tab took “Other” out of the list.');
    expect(words([blank], [blank])).toBe('');
  });
});

describe('lists and texts of two', () => {
  const items = fc.array(fc.constantFrom('a', 'b', 'c', 'd'), { maxLength: 5 });

  it('lists hold the same whichever comes first', () => {
    fc.assert(
      fc.property(items, items, items, (was, mine, theirs) => {
        const joined = pickAll(was, mine, theirs);
        expect(joined).toEqual(pickAll(was, theirs, mine));
        expect([...pickAll(was, mine, mine)].sort()).toEqual([...mine].sort());
        for (const item of mine) if (!was.includes(item)) expect(joined).toContain(item);
      }),
    );
  });

  it('texts hold every line of both, and joined once more are no other', () => {
    const texts = items.map((all) => all.join('\n'));
    fc.assert(
      fc.property(texts, texts, (mine, theirs) => {
        const joined = bothTexts(mine, theirs);
        expect(joined).toBe(bothTexts(theirs, mine));
        expect(bothTexts(joined, theirs)).toBe(joined);
        for (const line of [...mine.split('\n'), ...theirs.split('\n')]) {
          expect(joined.split('\n')).toContain(line);
        }
      }),
    );
  });
});
