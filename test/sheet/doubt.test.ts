import { describe, expect, it } from 'vitest';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { meant } from '../../calculators/sheet/doubt.ts';
import { confirmOne, setEntry } from '../../calculators/sheet/set-entry.ts';
import { figureKeys, sheetFigures, type FigureKey } from '../../calculators/sheet/figures.ts';
import { judge } from '../../calculators/sheet/judge.ts';
import { boxesOf, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { readDocument, writeDocument } from '../../calculators/sheet/validate.ts';
import { widest } from '../../calculators/sheet/widest.ts';

const base: Engine = {
  ...newEngine('e-1', 'Test'),
  figures: {
    ...demoSheet().figures,
    reeds: 4,
    'piston-clearance': 0.065,
    'piston-clearance-tolerance': 0.01,
    'ring-gap': 0.2,
    'ring-gap-tolerance': 0.05,
  },
};
const with_ = (figures: Partial<Record<FigureKey, number>>): Engine => ({
  ...base,
  figures: { ...base.figures, ...figures },
});
const said = (engine: Engine, id: StepId, ...entries: number[]): string[] => {
  const read = entries.reduce((so, entry, i) => setEntry(so, id, 'found', i, entry), engine);
  return judge(read, id, 'mm').rows.map(({ words }) => words);
};
const DOUBT = /but so far off is more often a slip: before anything is changed read it once more/;

describe('a reading further off than anything that happens', () => {
  it('is doubted in the sentence that would order work, with the unit in which it would pass', () => {
    const gap = { gap: 0.35, 'gap-tolerance': 0.03 };
    expect(said(with_(gap), 'gap', 4)[0]).toMatch(/^Close the gap.* by 3\.65 mm, but so far off/);
    expect(said(with_(gap), 'gap', 14)[0]).toMatch(/as 14 thou it would pass\)\.$/);
    const ring = { 'ring-gap': 0.2, 'ring-gap-tolerance': 0.1 };
    expect(said(with_(ring), 'ring-gap', 7.62)[0]).toMatch(
      /wide by 7\.42 mm, but .*\(as 0\.3 millimetres it would pass\)\.$/,
    );
    const condenser = { condenser: 0.22, 'condenser-tolerance': 0.05 };
    expect(said(with_(condenser), 'condenser', 22)[0]).toMatch(DOUBT);
    const plug = { 'plug-gap': 0.5, 'plug-gap-tolerance': 0.05 };
    // However wide the tolerance: 0.02 in is 0.508 mm.
    expect(
      said(with_({ ...plug, 'plug-gap': 0.6, 'plug-gap-tolerance': 0.1 }), 'plug', 0.02)[0],
    ).toMatch(/as 0\.02 in it would pass/);
    expect(said(with_({ ...plug, 'plug-gap-tolerance': 0.04 }), 'plug', 0.02)[0]).toMatch(
      /as 0\.02 in it would pass/,
    );
  });

  it('is doubted by a reader in inches, whose feeler is in millimetres or whose rule in parts of an inch', () => {
    const inInches = (id: StepId, thou: number): string => {
      const figures = with_({
        gap: 0.3556,
        'gap-tolerance': 0.0508,
        'plug-gap': 0.508,
        'plug-gap-tolerance': 0.0508,
      });
      return judge(setEntry(figures, id, 'found', 0, thou * 0.0254), id, 'in').rows[0]!.words;
    };
    expect(inInches('gap', 0.35)).toMatch(/as 0\.35 millimetres it would pass\)\.$/);
    expect(inInches('plug', 0.5)).toMatch(/as 0\.5 millimetres it would pass\)\.$/);
    expect(inInches('gap', 1 / 64)).toMatch(/as 1\/64 in it would pass\)\.$/);
    // Half a millimetre is no gap here, and nobody types 0.0127.
    expect(inInches('gap', 0.5)).not.toMatch(/would pass/);
    expect(inInches('gap', 20)).not.toMatch(DOUBT);
  });

  it('is doubted where readings are held against one another or against a limit', () => {
    const slides = said(with_({ thread: 1, 'slide-tolerance': 0.1 }), 'slides', 2.5, 2.5, 25);
    expect(slides[2]).toMatch(/: its adjuster 22\.50 turns in, but so far off/);
    expect(said(base, 'compression', 850, 8.5, 845)[1]).toMatch(/as 8\.5 bar it would pass\)\.$/);
    expect(said(with_({ 'reed-gap': 0.2 }), 'reeds', 8)[0]).toMatch(DOUBT);
    // Less than half of the best, and more than 20 times what is allowed.
    expect(said(base, 'compression', 900, 440, 890)[1]).toMatch(DOUBT);
    expect(said(base, 'compression', 900, 460, 890)[1]).not.toMatch(DOUBT);
    expect(said(with_({ 'leak-drop': 3 }), 'leak', 61)[0]).toMatch(DOUBT);
    expect(said(with_({ 'leak-drop': 3 }), 'leak', 59)[0]).not.toMatch(DOUBT);
  });

  it('is so at every step that is judged by a figure in a unit', () => {
    for (const id of order) {
      const { reading } = steps[id];
      if (reading?.judging !== 'figure' || reading.counted !== undefined) continue;
      const target = base.figures[reading.target!]!;
      const tolerance = base.figures[reading.tolerance!]!;
      const off = Math.max(10.5 * tolerance, 0.55 * target);
      const far = target + off;
      expect(far, id).toBeLessThanOrEqual(reading.max);
      expect(said(base, id, far)[0], id).toMatch(DOUBT);
      const near = target + 0.9 * Math.max(10 * tolerance, 0.5 * target);
      expect(said(base, id, near)[0], id).not.toMatch(DOUBT);
    }
  });

  it('is not doubted where so much does happen', () => {
    expect(said(base, 'gap', 0.6)[0]).not.toMatch(DOUBT);
    expect(said(base, 'leak', 41)[0]).not.toMatch(DOUBT);
    expect(said(base, 'insulation', 0)[0]).not.toMatch(DOUBT);
    expect(said(base, 'clip', 9)[0]).not.toMatch(DOUBT);
  });

  it('is told no unit that would not pass, and none of what nobody typed', () => {
    const passes = (value: number): boolean => Math.abs(value - 0.35) <= 0.03;
    expect(meant(14, 'mm', 'mm', passes)).toBe('14 thou');
    expect(meant(0.0137795, 'mm', 'mm', passes)).toBeUndefined();
    expect(meant(0.014, 'mm', 'mm', passes)).toBe('0.014 in');
    expect(meant(0, 'mm', 'mm', passes)).toBeUndefined();
    expect(meant(5, 'mm', 'mm', passes)).toBeUndefined();
    expect(meant(90, 'deg', 'deg', () => true)).toBeUndefined();
  });
});

describe('a reading far from the usual that would be near it in another unit', () => {
  const box = (index = 0, moment: 'found' | 'left' = 'found') =>
    ({ kind: 'reading', step: 'float', moment, index }) as const;
  const doubt = (engine: Engine, text: string, of: Parameters<typeof readNumber>[1] = box()) =>
    readNumber(engine, of, text, { lengths: 'mm' }).doubt;
  const stands = setEntry(with_({ height: 24 }), 'float', 'found', 0, 0.945);

  it('is doubted as it is typed, and as often as it is seen while it stands', () => {
    expect(doubt(with_({ height: 24 }), '0.945')).toMatch(/If it is 0\.945 in, type/);
    expect(doubt(stands, '0.945')).toMatch(/If it is right, type “0\.945 mm”\.$/);
    const back = readDocument(JSON.parse(writeDocument([stands]))).engines[0]!;
    expect(doubt(back, '0.945')).toMatch(/far from what is usual here, about 24 mm/);
  });

  it('is asked about where no figure of the sheet says what is usual: a gauge in bar or psi read as kPa', () => {
    const gauge = { kind: 'reading', step: 'compression', moment: 'found', index: 0 } as const;
    expect(doubt(base, '7.6', gauge)).toMatch(/If it is 7\.6 bar, type/);
    expect(doubt(base, '110', gauge)).toMatch(/If it is 110 psi, type/);
    expect(doubt(base, '45', gauge)).toMatch(/If it is 45 psi, type/);
    // 200 psi are 1379 kPa; 200 is 4.25 times less than 850, and 230 is 3.7 times less.
    expect(doubt(base, '200', gauge)).toMatch(/If it is 200 psi, type/);
    for (const right of ['760', '1100', '7.6 bar', '300', '230']) {
      expect(doubt(base, right, gauge), right).toBeUndefined();
    }
    // All alike in the wrong unit hide nothing.
    const all = [7.6, 7.4, 2, 7.5].reduce(
      (engine, value, i) => setEntry(engine, 'compression', 'found', i, value),
      base,
    );
    expect(doubt(all, '7.6', gauge)).toMatch(/bar/);
  });

  it('is doubted no more once it is typed with its unit, read again the same, or read anew', () => {
    expect(doubt(stands, '0.945 mm')).toBeUndefined();
    expect(doubt(confirmOne(stands, 'float', 0), '0.945')).toBeUndefined();
    const anew = setEntry(stands, 'float', 'left', 0, 24);
    expect(doubt(anew, '0.945')).toBeUndefined();
    expect(doubt(anew, '24', box(0, 'left'))).toBeUndefined();
    // A first check that reads otherwise confirms nothing.
    expect(doubt(setEntry(anew, 'float', 'left', 0, 0.95), '0.95', box(0, 'left'))).toBeDefined();
  });

  it('is the odd one where nothing is set: the others are not doubted for it', () => {
    const { height: _, ...figures } = base.figures;
    const three = [0.945, 24, 24.2].reduce(
      (so, entry, i) => setEntry(so, 'float', 'found', i, entry),
      { ...base, figures },
    );
    expect(doubt(three, '0.945')).toMatch(/0\.945 in/);
    expect(doubt(three, '24', box(1))).toBeUndefined();
    expect(doubt(three, '24.2', box(2))).toBeUndefined();
  });
});

describe('a tolerance of the sheet that would pass anything', () => {
  const tolerances = figureKeys.filter((key) => key.endsWith('-tolerance'));

  it('is refused where it is typed, with the reason; each has a limit or is held to its figure', () => {
    const how = { lengths: 'mm' } as const;
    for (const key of tolerances) {
      const limit = widest[key];
      if (!limit) continue;
      expect(limit[0], key).toBeLessThan(sheetFigures[key].max);
      const read = (value: number) =>
        readNumber(base, { kind: 'figure', key }, String(value), how).problem;
      expect(read(limit[0] * 1.01), key).toContain(limit[1]);
      expect(read(limit[0]), key).toBeUndefined();
    }
    expect(tolerances.filter((key) => !widest[key])).toEqual(['resistance-tolerance']);
    const typed = readNumber(
      base,
      { kind: 'figure', key: 'compression-tolerance' },
      '0.85 MPa',
      how,
    );
    expect(typed.problem).toMatch(/from 1 kPa to 200 kPa.*boxes of the readings/);
  });

  it('of a file of old is kept, and nothing is judged by it', () => {
    const old = with_({ 'compression-tolerance': 850, 'resistance-tolerance': 20 });
    expect(readDocument(JSON.parse(writeDocument([old]))).engines[0]).toEqual(old);
    const read = [827, 800, 300].reduce(
      (so, v, i) => setEntry(so, 'compression', 'found', i, v),
      old,
    );
    expect(judge(read, 'compression', 'mm').rows.map(({ result }) => result)).toEqual(
      Array.from({ length: boxesOf(read, 'compression') }, () => 'unjudged'),
    );
    expect(judge(read, 'compression', 'mm').whole.join(' ')).toMatch(
      /“Compression alike within” is 850 kPa in the sheet, and more than 200 kPa judges nothing/,
    );
    expect(progressOf(read).compression.state).not.toBe('done');
    expect(judge(setEntry(old, 'coil', 'found', 0, 12), 'coil', 'mm').whole[0]).toMatch(
      /as much as the figure itself/,
    );
  });
});

it('a stroke typed ten times too large is offered in no unit that makes another engine of it', () => {
  const stroke = (text: string): string | undefined =>
    readNumber(base, { kind: 'figure', key: 'stroke' }, text, { lengths: 'mm' }).problem;
  // 540 thou are 13.7 mm.
  expect(stroke('540')).toBeDefined();
  expect(stroke('540')).not.toContain('thou');
  // 2125 thou are 54 mm.
  expect(stroke('2125')).toContain('type “2125 thou”');
});
