import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../../calculators/frame/field/parse.ts';
import { readSum } from '../../calculators/frame/field/sum-reader.ts';
import type { Sums } from '../../calculators/frame/field/sums.ts';
import { placeOf, type Box } from '../../calculators/sheet/box-places.ts';
import { readNumber, waitingSums } from '../../calculators/sheet/read-number.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import {
  beforeTyping,
  confirm,
  confirmOne,
  setEntry,
  writtenLast,
  type Before,
  type WrittenLast,
} from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { enter, reenter } from '../../calculators/sheet/enter.ts';
import { widest } from '../../calculators/sheet/widest.ts';
import { figureKeys, MOST_CYLINDERS, sheetFigures } from '../../calculators/sheet/figures.ts';
import { queryFor } from '../../calculators/sheet/fill.ts';
import { judge } from '../../calculators/sheet/judge.ts';
import { LIMITS, UNNAMED, type Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { readStore, writeStore } from '../../calculators/sheet/store.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';
import { expectSame } from '../same.ts';

const withReadings = order.filter((id) => steps[id].reading !== undefined);

const boxes: readonly Box[] = [
  ...figureKeys.map((key): Box => ({ kind: 'figure', key })),
  ...withReadings.flatMap((step) =>
    (['found', 'left'] as const).flatMap((moment) =>
      [0, MOST_CYLINDERS - 1].map((index): Box => ({ kind: 'reading', step, moment, index })),
    ),
  ),
  { kind: 'order' },
  { kind: 'name' },
  { kind: 'notes' },
];

/** What stands at a place of the document; nothing as undefined. */
function standing(engine: Engine, box: Box): unknown {
  switch (box.kind) {
    case 'figure':
      return engine.figures[box.key];
    case 'reading':
      return readingOf(engine, box.step)[box.moment][box.index] ?? undefined;
    case 'order':
      return engine.firingOrder.length === 0 ? undefined : engine.firingOrder.join('-');
    case 'name':
      return engine.name === UNNAMED ? undefined : engine.name;
    case 'notes':
      return engine.notes === '' ? undefined : engine.notes;
  }
}

/** What a text means at a place, worked out apart from the sheet: nothing where it is no figure in range. */
function meant(engine: Engine, box: Box, text: string): unknown {
  const { length } = [...text];
  if (box.kind === 'name') {
    const name = text.trim();
    return name !== '' && [...name].length <= LIMITS.name ? name : undefined;
  }
  if (box.kind === 'notes') return length > 0 && length <= LIMITS.notes ? text : undefined;
  if (box.kind === 'order') {
    const cylinders = engine.figures.cylinders ?? 1;
    const runs = text.match(/\d+/gu) ?? [];
    const members = (runs.length === 1 ? [...runs[0]!] : runs).map(Number);
    // No cylinder is numbered with a nought before it.
    const plain = /^[\s,;:./–—−\d-]*$/u.test(text) && !/(?<!\d)0/u.test(text);
    const whole = [...members].sort((a, b) => a - b).every((member, i) => member === i + 1);
    return plain && whole && members.length === cylinders ? members.join('-') : undefined;
  }
  const { min, max, unit, whole } =
    box.kind === 'figure' ? sheetFigures[box.key] : steps[box.step].reading!;
  // A semicolon at the end waits for another reading, where several may be given.
  const isMean = box.kind === 'figure' && sheetFigures[box.key].error !== undefined;
  const read = parse(isMean ? text.replace(/[\s;]*;\s*$/u, '') : text, unit);
  // Three digits behind a mark may be thousands: where those are in range too, it is asked which.
  const plain = text.replace(/^(\s*[-−+]?\s*[1-9]\d{0,2})[.,](\d{3})(?![\d.,])/u, '$1$2');
  const more = plain === text ? undefined : parse(plain, unit);
  // A bare fraction smaller than one, or mixed, is as of an inch, and no millimetres.
  const [bare, ones, above, below] =
    /^\s*[-−+]?\s*(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)\s*$/u.exec(text) ?? [];
  if (
    unit === 'mm' &&
    bare !== undefined &&
    (ones !== undefined || Number(above) < Number(below))
  ) {
    return undefined;
  }
  if (more?.kind === 'value' && more.value >= min && more.value <= max) return undefined;
  if (read.kind !== 'value' || !(read.value >= min && read.value <= max)) return undefined;
  // The piston of the demo engine goes 51 mm, and what is counted from its top no further.
  const ofPiston = box.kind === 'figure' ? box.key === 'target' : box.step === 'timing';
  if (ofPiston && Math.abs(read.value) > 51) return undefined;
  // Its throw is 25.5 mm, and no shorter rod turns.
  if (box.kind === 'figure' && box.key === 'rod' && read.value <= 25.5) return undefined;
  // The demo engine has three cylinders, and no more sets or carburettors than those.
  const isShared = box.kind === 'figure' && (box.key === 'sets' || box.key === 'carburettors');
  if (isShared && read.value > 3) return undefined;
  if (box.kind === 'figure' && read.value > (widest[box.key]?.[0] ?? max)) return undefined;
  // A fraction is kept to the twelve figures that a sum is.
  const kept = Number(read.value.toPrecision(12));
  return whole && !Number.isInteger(kept) ? undefined : kept + 0;
}

const piece = fc.constantFrom(
  ...[...'0123456789.,-−+/ eE×x;'],
  'mm',
  ' in',
  'thou',
  '°',
  '51',
  '2.31',
  '1 3 2',
  '1-2-3',
  '1e9',
  'é',
  '\u{1F527}',
  'x'.repeat(90),
  'wide '.repeat(410),
);
/** A run of hands on the keys: a letter or a paste, a letter taken back, everything replaced. */
const act = fc.oneof(
  { weight: 6, arbitrary: piece.map((text) => (before: string) => before + text) },
  {
    weight: 2,
    arbitrary: fc.constant((before: string) => [...before].slice(0, -1).join('')),
  },
  { weight: 1, arbitrary: piece.map((text) => () => text) },
);
const typing = fc.array(act, { minLength: 1, maxLength: 8 });

const stored = (engine: Engine): Engine =>
  readStore(writeStore({ engines: [engine], active: engine.id, revision: 1 })).engines[0]!;

describe('whatever is typed, what stands is what the text reads as, or nothing, or the reading before it', () => {
  it('at every place, letter by letter', { timeout: 120_000 }, () => {
    const demo = demoSheet();
    let tries = 0;
    fc.assert(
      fc.property(fc.constantFrom(...boxes), typing, (box, acts) => {
        const how = { lengths: 'mm' } as const;
        const place = placeOf(box);
        let engine: Engine = demo;
        let text = '';
        let before: Before =
          box.kind === 'reading'
            ? beforeTyping(engine, box.step, box.moment, box.index)
            : { entry: null, changed: 0 };
        let written: WrittenLast | undefined;
        for (const next of acts) {
          text = next(text);
          engine = enter(engine, box, text, how, { before, written });
          if (box.kind === 'reading') written = writtenLast(engine, box.step);
          tries += 1;
          const means = meant(engine, box, text);
          if (text.trim() === '' && box.kind === 'reading' && box.moment === 'found') {
            before = { ...before, entry: null };
          }
          expectSame(
            standing(engine, box),
            means ?? before.entry ?? undefined,
            `${place} ${JSON.stringify(text)}`,
          );
          const refused = engine.unread[place];
          if (means === undefined && text.trim() !== '' && text.length <= LIMITS.line) {
            expectSame(refused, text);
          }
          if (refused !== undefined) expectSame(refused, text);
          if (means !== undefined) expectSame(refused, undefined);
        }
        // Every letter may be the last one: what stands after it is what is stored.
        expectSame(stored(engine), engine);
      }),
      { numRuns: 2000, seed: 20261126 },
    );
    expect(tries).toBeGreaterThan(8000);
  });
});

describe('a sum', () => {
  const how = (sums: Sums) => ({ lengths: 'mm', sums }) as const;
  const gap = { kind: 'reading', step: 'gap', moment: 'left', index: 2 } as const;

  it.each([
    ['0.25+0.1', 0.35],
    ['0.1+0.2', 0.3],
    ['(0.34+0.36)/2', 0.35],
    ['0.3 mm + 2 thou', 0.3508],
  ])('%s stands in a box as what it comes to, and is one entry of the log', (text, value) => {
    const was = demoSheet();
    const before = {
      entry: readingOf(was, 'gap').left[2] ?? null,
      changed: readingOf(was, 'gap').changed,
    };
    let engine = was;
    let written: WrittenLast | undefined;
    for (let i = 1; i <= text.length; i += 1) {
      const typing = { before, written };
      engine = enter(engine, gap, text.slice(0, i), how(readSum), typing, '2026-03-21');
      written = writtenLast(engine, 'gap');
    }
    expect(readingOf(engine, 'gap').left[2]).toBe(value);
    expect(engine.unread).toEqual({});
    expect(engine.log.length).toBe(was.log.length + 1);
    expect(engine.log.at(-1)).toMatchObject({ kind: 'change', value, on: '2026-03-21' });
  });

  it('leaves what stood until its reader has come, and then stands with the day', () => {
    const waiting = enter(demoSheet(), gap, '0.25+0.1', how('coming'));
    expect(readingOf(waiting, 'gap').left[2]).toBe(0.36);
    expect(waiting.unread).toEqual({ 'left:gap:3': '0.25+0.1' });
    expect(waitingSums(waiting)).toBe('0.25+0.1');
    // Whoever looks on from another tab has nothing to write.
    expect(reenter(waiting, how('failed'))).toBe(waiting);
    const refused = enter(waiting, { kind: 'figure', key: 'rod' }, '1', how('coming'));
    expect(refused.unread).toMatchObject({ 'figure:rod': '1' });
    expect(reenter(refused, how('coming'))).toBe(refused);
    const come = reenter(waiting, how(readSum), '2026-03-21');
    expect(readingOf(come, 'gap').left[2]).toBe(0.35);
    expect(come.log.at(-1)).toMatchObject({ value: 0.35, on: '2026-03-21' });
    expect(come.unread).toEqual({});
    expect(waitingSums(come)).toBe('');
  });

  it.each(['0.3+', '0.3+0.1x', '0.3/0', '3+4'])('%s leaves what stood', (text) => {
    const engine = enter(demoSheet(), gap, text, how(readSum));
    expect(readingOf(engine, 'gap').left[2]).toBe(0.36);
    expect(engine.unread).toEqual({ 'left:gap:3': text });
  });

  it('in notes and names is no sum', () => {
    const noted = { ...demoSheet(), unread: { 'text:notes': '1+1', 'order:firing': '1+1' } };
    expect(waitingSums(noted)).toBe('');
  });
});

describe('a text that is refused', () => {
  const gap = { kind: 'reading', step: 'gap', moment: 'found', index: 0 } as const;
  const typed = (engine: Engine, box: Box, text: string): Engine => {
    const before =
      box.kind === 'reading'
        ? beforeTyping(engine, box.step, box.moment, box.index)
        : { entry: null, changed: 0 };
    let written: WrittenLast | undefined;
    return Array.from(text).reduce((so, _, i) => {
      const next = enter(so, box, text.slice(0, i + 1), { lengths: 'mm' }, { before, written });
      if (box.kind === 'reading') written = writtenLast(next, box.step);
      return next;
    }, engine);
  };

  it.each(['16', '2.31+0.04', '0.4 0.5', '0.4mmm'])(
    '%s in an empty reading box is judged, told and sent as an empty one',
    (text) => {
      const empty = enter(demoSheet(), gap, '', { lengths: 'mm' });
      const engine = typed(empty, gap, text);
      expect(engine.unread).toEqual({ 'found:gap:1': text });
      expect(readingOf(engine, 'gap').found).toEqual(readingOf(empty, 'gap').found);
      expect(judge(engine, 'gap', 'mm')).toEqual(judge(empty, 'gap', 'mm'));
      expect(sheetSummary(engine, 'mm', '')).toBe(sheetSummary(empty, 'mm', ''));
    },
  );

  it.each(['x', '16', '0.4x', '0.4 0.5', ''])(
    '“%s” after good readings leaves the last of them: judged, told and sent, and not the one as found',
    (text) => {
      const left = { ...gap, moment: 'left' } as const;
      const found = setEntry(setFigure(demoSheet(), 'gap', 0.4), 'gap', 'found', 0, 0.31);
      const good = setEntry(found, 'gap', 'left', 0, 0.41);
      const engine = typed(typed(good, left, '0.9y'), left, text);
      expect(readingOf(engine, 'gap').left[0]).toBe(0.41);
      expect(judge(engine, 'gap', 'mm').rows[0]!.result).toBe('pass');
      expect(sheetSummary(engine, 'mm', '')).toBe(sheetSummary(good, 'mm', ''));
      expect(engine.log).toEqual(good.log);
      expect(readingOf(stored(engine), 'gap').left[0]).toBe(0.41);
      // Emptied after the page came back, it is still the last good one.
      const emptied = enter(stored(engine), left, '', { lengths: 'mm' });
      expect(readingOf(emptied, 'gap').left[0]).toBe(0.41);
      expect(emptied.unread).toEqual({});
    },
  );

  it('leaves a step to be read again that waited for it, though its first digits could be read', () => {
    const waits = demoSheet();
    expect(progressOf(waits).timing.stale).toContain(0);
    const fired = { kind: 'reading', step: 'timing', moment: 'left', index: 0 } as const;
    expect(progressOf(typed(waits, fired, '2.2')).timing.stale).not.toContain(0);
    const engine = typed(waits, fired, '2.2x');
    expect(progressOf(engine).timing).toEqual(progressOf(waits).timing);
    expect(engine.readings).toEqual(waits.readings);
  });

  it('is gone once the box is said to read as before', () => {
    const left = { ...gap, moment: 'left' } as const;
    const engine = typed(demoSheet(), left, '9,,1');
    expect(engine.unread).toEqual({ 'left:gap:1': '9,,1' });
    expect(confirmOne(engine, 'gap', 0).unread).toEqual({});
    expect(confirm(engine, 'gap').unread).toEqual({});
  });

  it('in a figure is judged and sent as an empty one, even where a good one stood', () => {
    const engine = typed(demoSheet(), { kind: 'figure', key: 'stroke' }, '51l');
    const empty = setFigure(demoSheet(), 'stroke', undefined);
    expect(engine.figures).toEqual(empty.figures);
    expect(judge(engine, 'timing', 'mm')).toEqual(judge(empty, 'timing', 'mm'));
    expect(queryFor(engine, 'piston-position', { keys: ['stroke', 'rod'] })).not.toContain(
      'stroke',
    );
  });

  it('is entered again by a page that can read it', () => {
    const place = 'figure:stroke';
    const { stroke: _, ...figures } = demoSheet().figures;
    const older = { ...demoSheet(), figures, unread: { [place]: '2 in', 'figure:rod': 'x' } };
    const engine = reenter(older, { lengths: 'mm' });
    expect(engine.figures.stroke).toBeCloseTo(50.8, 10);
    expect(engine.unread).toEqual({ 'figure:rod': 'x' });
  });

  it('is the firing order, once the number of cylinders is another; it comes back with them', () => {
    const order = { kind: 'order' } as const;
    const three = enter(demoSheet(), order, '1-3-2', { lengths: 'mm' });
    expect(three.firingOrder).toEqual([1, 3, 2]);
    const four = setFigure(three, 'cylinders', 4);
    expect(four.firingOrder).toEqual([]);
    expect(four.unread['order:firing']).toBe('1-3-2');
    expect(setFigure(four, 'cylinders', 3).firingOrder).toEqual([1, 3, 2]);
  });

  it('is a place of the piston beyond its stroke, with range, reason and remedy', () => {
    const fired = { kind: 'reading', step: 'timing', moment: 'found', index: 1 } as const;
    const target = { kind: 'figure', key: 'target' } as const;
    for (const box of [fired, target]) {
      const engine = typed(enter(demoSheet(), box, '', { lengths: 'mm' }), box, '60');
      expect(standing(engine, box)).toBeUndefined();
      expect(engine.unread).toEqual({ [placeOf(box)]: '60' });
      expect(readNumber(engine, box, '60', { lengths: 'mm' }).problem).toMatch(
        /must be from (−51|0) mm to 51 mm: by the stroke in the sheet the piston goes no further\. “60” is outside that; check/,
      );
      expect(standing(typed(demoSheet(), box, '50'), box)).toBe(50);
      // Another stroke reaches it, and one that does not takes it out, at once or from a file.
      const reached = setFigure(engine, 'stroke', 70);
      expect(standing(reached, box)).toBe(60);
      expect(reached.unread).toEqual({});
      expect(setFigure(reached, 'stroke', 51).unread).toEqual({ [placeOf(box)]: '60' });
      const odd = stored({ ...reached, figures: { ...reached.figures, stroke: 51 } });
      expect(standing(odd, box)).toBeUndefined();
      expect(standing(typed(setFigure(demoSheet(), 'stroke', undefined), box, '60'), box)).toBe(60);
    }
    const turned = setFigure(demoSheet(), 'rod', 20);
    expect(readNumber(turned, target, '60', { lengths: 'mm' }).problem).toMatch(/to 51 mm/);
    const back = setFigure(setFigure(demoSheet(), 'stroke', 10), 'stroke', 51);
    expect(back.readings.timing).toEqual(demoSheet().readings.timing);
  });

  it('was kept beside a figure once: such a sheet is opened with the place empty, and a reading stands', () => {
    const old = {
      ...demoSheet(),
      unread: { 'found:gap:1': '16', 'figure:stroke': '5l', 'figure:none': 'x' },
    };
    const engine = stored(old);
    expect(engine.figures.stroke).toBeUndefined();
    expect(readingOf(engine, 'gap').found[0]).toBe(0.39);
    expect(engine.unread).toEqual(old.unread);
  });

  it('too long to be kept is said to be so, and nothing is cut', () => {
    const long = '1'.repeat(LIMITS.line + 1);
    const engine = enter(demoSheet(), gap, long, { lengths: 'mm' });
    expect(engine.unread).toEqual({});
    expect(readingOf(engine, 'gap').found[0]).toBe(0.39);
  });

  it('has room for one at every place', () => {
    const all = figureKeys.length + withReadings.length * 2 * MOST_CYLINDERS + 3;
    expect(all).toBeLessThanOrEqual(LIMITS.unread);
    const strangers = Object.fromEntries(
      Array.from({ length: LIMITS.unread }, (_, i) => [`figure:none-${String(i)}`, 'x']),
    );
    const full = stored({ ...demoSheet(), unread: strangers });
    expect(enter(full, gap, 'abc', { lengths: 'mm' }).unread['found:gap:1']).toBe('abc');
  });
});
