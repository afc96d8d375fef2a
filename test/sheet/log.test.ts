import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { momentNow } from '../../calculators/sheet/clock.ts';
import {
  addHours,
  addNote,
  beginList,
  dropEntry,
  putBack,
  tickLine,
} from '../../calculators/sheet/edit-log.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import {
  confirm,
  confirmOne,
  retype,
  setDone,
  setEntry,
  withdraw,
  writtenLast,
  type WrittenLast,
} from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { lastAsked } from '../../calculators/sheet/judge.ts';
import {
  dayWords,
  hoursRun,
  lastDay,
  readingsAt,
  roundsOf,
  tickedLines,
} from '../../calculators/sheet/log.ts';
import { logCsv } from '../../calculators/sheet/log-csv.ts';
import { changeWords, entryWords, whenWords } from '../../calculators/sheet/log-words.ts';
import { isReading, type LogEntry } from '../../calculators/sheet/log-entry.ts';
import { LIMITS, type Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import { merge, type Store } from '../../calculators/sheet/store.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { acts, blank, withReadings, type Act } from './acts.ts';
import { anyEngine } from './engines.ts';
import { parseDocument } from './parse-document.ts';

const values = (engine: Engine, index: number): number[] =>
  readingsAt(engine, 'gap', index).map(({ value }) => value);

describe('the log', () => {
  it('is in the order of the engine’s clock, whatever the wall clock said', () => {
    fc.assert(
      fc.property(anyEngine, fc.array(acts, { maxLength: 12 }), (from, done) => {
        const engine = done.reduce((so, act) => act(so), from);
        const clocks = engine.log.map(({ clock }) => clock);
        expect(clocks).toEqual([...clocks].sort((a, b) => a - b));
        expect(momentNow(engine)).toBeGreaterThanOrEqual(clocks.at(-1) ?? 0);
        for (const clock of clocks) expect(Number.isSafeInteger(clock)).toBe(true);
      }),
    );
  });

  it('keeps every reading that ever stood', () => {
    fc.assert(
      fc.property(fc.array(acts, { maxLength: 30 }), (done) => {
        let engine = blank;
        const stood: [string, number, number][] = [];
        for (const act of done) {
          const before = engine;
          engine = act(engine);
          for (const id of withReadings) {
            for (const moment of ['found', 'left'] as const) {
              readingOf(engine, id)[moment].forEach((value, i) => {
                const was = readingOf(before, id)[moment][i] ?? null;
                if (value !== null && value !== was) stood.push([id, i, value]);
              });
            }
          }
        }
        for (const [id, i, value] of stood) {
          const kept = engine.log.filter(
            (entry) =>
              isReading(entry) &&
              entry.step === id &&
              entry.cylinder === i + 1 &&
              entry.value === value,
          );
          expect(kept.length).toBeGreaterThan(0);
        }
      }),
    );
  });

  it('says what stands: the last reading at a place is the one in its box', () => {
    fc.assert(
      fc.property(fc.array(acts, { maxLength: 20 }), (done) => {
        const engine = done.reduce((so, act) => act(so), blank);
        for (const id of withReadings) {
          readingOf(engine, id).left.forEach((value, i) => {
            if (value === null) return;
            const last = readingsAt(engine, id, i).findLast(({ kind }) => kind !== 'found');
            expect(last?.value).toBe(value);
          });
        }
      }),
    );
  });

  it('comes back from a file as it went, and out of order is put in order', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        const shuffled = { ...engine, log: [...engine.log].reverse() };
        const [read] = parseDocument(writeDocument([shuffled])).engines;
        expect(read!.log.map(({ clock }) => clock)).toEqual(engine.log.map(({ clock }) => clock));
      }),
    );
  });

  it('of two tabs loses no entry', () => {
    const lines = ({ engines }: Store): string[] =>
      engines.flatMap(({ log }) => log.map((entry) => JSON.stringify(entry)));
    const does = fc.array(acts, { maxLength: 6 });
    fc.assert(
      fc.property(does, does, does, (first, here, there) => {
        const run = (from: Engine, done: readonly Act[]): Engine =>
          done.reduce((so, act) => act(so), from);
        const storeOf = (engine: Engine): Store => ({
          engines: [engine],
          active: 'e-1',
          revision: 1,
        });
        const was = run(blank, first);
        const [mine, theirs] = [storeOf(run(was, here)), storeOf(run(was, there))];
        const joined = lines(merge(storeOf(was), mine, theirs).store);
        // A figure typed on takes its last entry's place: what one tab took out so, it took out.
        const before = new Set(lines(storeOf(was)));
        const [ours, other] = [lines(mine), lines(theirs)];
        const both = new Set(ours.filter((line) => other.includes(line)));
        const all = [...ours, ...other].filter((line) => both.has(line) || !before.has(line));
        for (const line of all) expect(joined).toContain(line);
      }),
    );
  });

  it('that is full gives up readings that were taken again, and of what stands, runs and notes nothing', () => {
    let engine = addNote(addHours(blank, 1), 'It ran.');
    engine = setEntry(engine, 'gap', 'found', 0, 0.31);
    engine = setDone(engine, 'measure', true);
    for (const value of [0.33, 0.34, 0.35]) engine = setEntry(engine, 'gap', 'left', 0, value);
    const noted = addNote(engine, 'x');
    const filled = {
      ...noted,
      log: [
        ...engine.log,
        ...Array.from({ length: LIMITS.log - engine.log.length }, () => noted.log.at(-1)!),
      ],
    };
    const over = addHours(addHours(filled, 2), 3);
    expect(over.log).toHaveLength(LIMITS.log);
    expect(values(over, 0)).toEqual([0.31, 0.35]);
    expect(hoursRun(over)).toBe(6);
    expect(over.log.slice(0, 4).map(({ kind }) => kind)).toEqual([
      'hours',
      'note',
      'found',
      'done',
    ]);
    expect(parseDocument(writeDocument([over])).engines).toEqual([over]);
    // With nothing to spare it is the oldest.
    const spare = addHours(over, 4);
    expect(spare.log[0]!.kind).toBe('note');
  });
});

describe('a reading', () => {
  it('is as found, after a change, or a check', () => {
    let engine = setEntry(blank, 'gap', 'found', 0, 0.31, { on: '2026-03-01' });
    engine = setEntry(engine, 'gap', 'left', 0, 0.35, { on: '2026-03-02' });
    engine = setEntry(engine, 'gap', 'left', 0, 0.36, { kind: 'check', on: '2026-03-09' });
    engine = confirm(engine, 'gap', '2026-03-10');
    expect(readingsAt(engine, 'gap', 0).map(({ kind, value, on }) => [kind, value, on])).toEqual([
      ['found', 0.31, '2026-03-01'],
      ['change', 0.35, '2026-03-02'],
      ['check', 0.36, '2026-03-09'],
      ['check', 0.36, '2026-03-10'],
    ]);
    expect(whenWords(engine, 'gap', 0)).toBe('10 Mar 2026, check');
    expect(lastDay(engine, 'gap')).toBe('2026-03-10');
  });

  it('typed digit by digit is one entry, and typed back to what stood is none', () => {
    const engine = setEntry(blank, 'gap', 'found', 0, 0.31);
    const before = { entry: null, changed: 0 };
    let typed = engine;
    let written: WrittenLast | undefined;
    for (const value of [0, 0.3, 0.35]) {
      typed = retype(typed, 'gap', 'left', 0, value, before, written);
      written = writtenLast(typed, 'gap');
    }
    expect(values(typed, 0)).toEqual([0.31, 0.35]);
    const back = retype(typed, 'gap', 'left', 0, null, before, written);
    expect(values(back, 0)).toEqual([0.31]);
  });

  it('that reads the same is a check, where it is said to be one of its own', () => {
    const engine = setEntry(blank, 'gap', 'found', 0, 0.35);
    expect(values(confirmOne(engine, 'gap', 0), 0)).toEqual([0.35, 0.35]);
    const again = setEntry(engine, 'gap', 'found', 0, 0.35, { anew: true });
    expect(values(again, 0)).toEqual([0.35, 0.35]);
    expect(setEntry(engine, 'gap', 'found', 0, 0.35)).toBe(engine);
  });

  it('that was written by mistake goes, and what stood before comes back', () => {
    let engine = setEntry(blank, 'gap', 'found', 0, 0.31);
    engine = setEntry(engine, 'gap', 'left', 0, 0.35);
    engine = setEntry(engine, 'gap', 'left', 0, 3.5);
    const gone = withdraw(engine, readingsAt(engine, 'gap', 0).at(-1)!);
    expect(readingOf(gone, 'gap').left).toEqual([0.35]);
    expect(values(gone, 0)).toEqual([0.31, 0.35]);
    const first = withdraw(gone, readingsAt(gone, 'gap', 0)[0]!);
    expect(readingOf(first, 'gap')).toMatchObject({ found: [], left: [0.35] });
  });
});

describe('what was taken out of the log', () => {
  it('comes back with what stood by it, unless something was written since', () => {
    const found = setEntry(blank, 'gap', 'found', 0, 0.31, { on: '2026-03-01' });
    const was = setEntry(found, 'gap', 'left', 0, 0.4, { on: '2026-03-02' });
    const taken = dropEntry(was, was.log.at(-1)!);
    expect(readingOf(taken, 'gap').left).toEqual([]);
    const back = putBack(taken, was, taken);
    expect([back.log, back.readings]).toEqual([was.log, was.readings]);
    const written = addNote(taken, 'Since.');
    expect(putBack(written, was, taken)).toBe(written);
  });
});

describe('rounds', () => {
  const read = (engine: Engine, moment: 'found' | 'left', on: string, ...all: number[]): Engine =>
    all.reduce((so, value, i) => setEntry(so, 'timing', moment, i, value, { on }), engine);

  it('tell what was asked for before each, however often it was turned', () => {
    const found = read(blank, 'found', '2026-03-01', 2.8, 2.8, 2.8);
    const once = read(found, 'left', '2026-03-02', 2.3, 2.2, 2.1);
    expect(roundsOf(once, 'timing', 3).map(({ after }) => after)).toEqual([
      [2.8, 2.8, 2.8],
      [2.3, 2.2, 2.1],
    ]);
    expect(lastAsked(once, 'timing', 'mm')).toMatchObject({ asFound: true, on: '2026-03-01' });
    const half = setEntry(once, 'timing', 'left', 0, 2.6, { on: '2026-03-03' });
    const twice = read(half, 'left', '2026-03-04', 2.2, 2.21, 2.2);
    const asked = lastAsked(twice, 'timing', 'mm');
    expect(asked).toMatchObject({ asFound: false, on: '2026-03-03' });
    expect(asked?.sentences.join(' ')).toContain('Cylinder 1');
    // Looked at again later, it stays readable.
    expect(lastAsked(confirm(twice, 'timing', '2026-04-01'), 'timing', 'mm')).toEqual(asked);
  });

  it('leave out a figure as found that was put right on the same day, which the log keeps', () => {
    const typo = setEntry(blank, 'gap', 'found', 0, 3.1, { on: '2026-03-01' });
    const right = setEntry(typo, 'gap', 'found', 0, 0.31, { on: '2026-03-01' });
    expect(roundsOf(right, 'gap', 3).map(({ after }) => after[0])).toEqual([0.31]);
    expect(values(right, 0)).toEqual([3.1, 0.31]);
    const later = setEntry(typo, 'gap', 'found', 0, 0.31, { on: '2026-03-02' });
    expect(roundsOf(later, 'gap', 3)).toHaveLength(2);
  });
});

describe('a step that a change upset', () => {
  it('names the change, the cylinder and the day', () => {
    const demo = demoSheet();
    const { because, stale } = progressOf(demo).timing;
    expect(because).toEqual(['gap']);
    expect(changeWords(demo, 'gap', 'timing', stale, 'mm')).toBe(
      'set 1 from 0.39 mm to 0.34 mm on 28 Feb 2026; set 2 from 0.31 mm to 0.35 mm on 28 Feb 2026',
    );
  });

  it('names no change from before it was last checked', () => {
    const checked = confirm(demoSheet(), 'timing', '2026-03-20');
    const changed = setEntry(checked, 'gap', 'left', 2, 0.33, { on: '2026-03-21' });
    const { stale } = progressOf(changed).timing;
    expect(changeWords(changed, 'gap', 'timing', stale, 'mm')).toBe(
      'set 3 from 0.36 mm to 0.33 mm on 21 Mar 2026',
    );
  });

  it('says the day where the engine’s own measures were changed', () => {
    let engine = setDone(blank, 'measure', true, '2026-03-01');
    engine = setEntry(engine, 'timing', 'found', 0, 2.2, { on: '2026-03-02' });
    engine = setFigure(engine, 'stroke', 5, '2026-03-05');
    engine = setFigure(engine, 'stroke', 52, '2026-03-05');
    const { because, stale } = progressOf(engine).timing;
    expect(because).toEqual(['measure']);
    expect(changeWords(engine, 'measure', 'timing', stale, 'mm')).toBe('on 5 Mar 2026');
    expect(engine.log.filter(({ kind }) => kind === 'figure')).toHaveLength(1);
  });
});

describe('what belongs to the log beside readings', () => {
  it('hours are summed, ticks stand until the list is begun anew', () => {
    let engine = addHours(addHours(blank, 0.5), 1.25);
    expect(hoursRun(engine)).toBe(1.75);
    engine = tickLine(tickLine(tickLine(engine, 'a', true), 'b', true), 'a', false);
    expect([...tickedLines(engine)]).toEqual(['b']);
    expect([...tickedLines(beginList(engine))]).toEqual([]);
    const note = addNote(engine, 'It runs.', '2026-03-21');
    expect(note.log.at(-1)).toMatchObject({ kind: 'note', text: 'It runs.', on: '2026-03-21' });
    expect(dropEntry(note, note.log.at(-1)!).log).toEqual(engine.log);
  });

  it('every entry has words, in mm and in inches', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        for (const entry of engine.log) {
          for (const lengths of ['mm', 'in'] as const) {
            const words = entryWords(entry, engine, lengths).join(': ');
            expect(words).toMatch(/\S/);
            expect(words).not.toMatch(/undefined|NaN|\[object/);
          }
        }
      }),
    );
    expect(dayWords('2026-03-01')).toBe('1 Mar 2026');
    expect(dayWords('')).toBe('');
  });

  it('as comma-separated values: as many cells in each line, and no cell a formula', () => {
    const cells = (line: string): string[] =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,"]*))/g)].map(
        ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain!,
      );
    const odd = addNote({ ...blank, name: '=1+1, "odd"' }, '@sum(A1)\nsecond line');
    const csv = logCsv([setEntry(odd, 'top', 'found', 0, -0.25, { on: '2026-03-01' })]);
    expect(csv).toContain(`"'=1+1, ""odd"""`);
    const lines = csv.split('\r\n');
    expect(lines.at(-1)).toBe('');
    expect(lines).toHaveLength(4);
    for (const line of lines.slice(0, -1)) expect(cells(line)).toHaveLength(9);
    expect(cells(lines[2]!).slice(1, 8)).toEqual([
      '2026-03-01',
      `'=1+1, "odd"`,
      steps.top.title,
      'Cylinder 1',
      'as found',
      '-0.25',
      '°',
    ]);
  });
});

it('one entry of each kind is known', () => {
  const kinds: Record<LogEntry['kind'], true> = {
    found: true,
    change: true,
    check: true,
    done: true,
    undone: true,
    figure: true,
    hours: true,
    note: true,
    ticked: true,
    unticked: true,
    anew: true,
  };
  const seen = new Set(fc.sample(anyEngine, 300).flatMap(({ log }) => log.map(({ kind }) => kind)));
  expect([...seen].sort()).toEqual(Object.keys(kinds).sort());
});
