import plateSetting from '../../calculators/points/plate-setting/calculator.tsx';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import {
  correctionWords,
  judge,
  passMark,
  lastAsked,
  ofBefore,
  targetOrWanted,
  targetWords,
  wantedFigures,
} from '../../calculators/sheet/judge.ts';
import { balanceSlides } from '../../calculators/maths/carburettor/slide-balance.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { readingWords } from '../../calculators/sheet/log-words.ts';
import { order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { figureKeys, type FigureKey } from '../../calculators/sheet/figures.ts';
import { setEven } from '../../calculators/sheet/sets.ts';
import { stepLine, sheetSummary } from '../../calculators/sheet/summary.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';

/** Figures that the amounts below are reckoned with. */
const own = { gap: 0.4, thread: 0.75, 'slot-radius': 28, 'timing-tolerance': 0.75 };
const base: Engine = {
  ...newEngine('e-1', 'Test'),
  figures: { ...demoSheet().figures, ...own },
};
const read = (id: StepId, ...entries: number[]): Engine =>
  entries.reduce((so, entry, i) => setEntry(so, id, 'found', i, entry), base);
const results = (engine: Engine, id: StepId): string[] =>
  judge(engine, id, 'mm').rows.map(({ result }) => result);
const words = (engine: Engine, id: StepId): string[] =>
  judge(engine, id, 'mm').rows.map((row) => row.words);

describe('a step says pass or the least correction', () => {
  it('against a figure: a reading on the limit passes, beyond it the amount is given', () => {
    const engine = read('gap', 0.43, 0.37, 0.44);
    expect(results(engine, 'gap')).toEqual(['pass', 'pass', 'fail']);
    expect(words(engine, 'gap')[2]).toBe('Close the gap, which makes it fire later, by 0.04 mm.');
    expect(words(read('gap', 0.36), 'gap')[0]).toBe(
      'Open the gap, which makes it fire earlier, by 0.04 mm.',
    );
    expect(judge(read('gap', 0.44), 'gap', 'in').rows[0]?.words).toBe(
      'Close the gap, which makes it fire later, by 1.6 thou.',
    );
  });

  it('the reading as left counts, where there is one', () => {
    const engine = setEntry(read('gap', 0.6, 0.4, 0.4), 'gap', 'left', 0, 0.4);
    expect(results(engine, 'gap')).toEqual(['pass', 'pass', 'pass']);
  });

  it('at most: less is well, the surplus is named', () => {
    const engine = read('leak', 0, 3, 4.5);
    expect(results(engine, 'leak')).toEqual(['pass', 'pass', 'fail']);
    expect(words(engine, 'leak')[2]).toMatch(/: it lost 4\.5 kPa, and at most 3 kPa is allowed\.$/);
    expect(judge(read('leak', 41), 'leak', 'mm').rows[0]!.words).toContain(
      'it lost 41 kPa, and at most 3 kPa is allowed',
    );
  });

  it('at least: more is well, and what is short is named beside what is wanted', () => {
    const engine = read('insulation', 1, 250, 0.4);
    expect(results(engine, 'insulation')).toEqual(['pass', 'pass', 'fail']);
    expect(words(engine, 'insulation')[2]).toMatch(
      /It shows only 0\.4 MΩ, and at least 1 MΩ is wanted\.$/,
    );
    expect(targetWords(base, 'insulation', 'mm')).toBe('at least 1 MΩ');
  });

  it('a reading at the very edge passes, and is to be read once more', () => {
    const engine = setFigure(
      setFigure(read('gap', 0.45, 0.44, 0.4), 'gap', 0.4),
      'gap-tolerance',
      0.05,
    );
    const edge = 'within its limits, at the very edge of them (read it once more)';
    expect(words(engine, 'gap')).toEqual([edge, 'within its limits', 'within its limits']);
    expect(words(read('insulation', 1, 250, 2), 'insulation')[0]).toBe(edge);
  });

  it('a cable that is short of play: the turns of its adjuster, where its thread is known', () => {
    const engine = setFigure(read('cables', 0.8, 1, 1), 'least-play', 1);
    expect(words(engine, 'cables')[0]).toBe(
      'Turn its adjuster in, those of several carburettors alike. Its play is only 0.8 mm, and at least 1 mm is wanted: 0.27 turns of the adjuster.',
    );
    expect(words(setFigure(engine, 'thread', undefined), 'cables')[0]).toMatch(/is wanted\.$/);
  });

  it('what is counted is named, one or several', () => {
    const engine = read('clip', 4, 5, 3);
    expect(words(setFigure(engine, 'clip', 3), 'clip')).toEqual([
      'Move the clip up the needle, which is leaner, by 1 groove.',
      'Move the clip up the needle, which is leaner, by 2 grooves.',
      'within its limits',
    ]);
  });

  it('a reading is shown with the digits that it has', () => {
    expect(readingWords('leak', 6.894757293168361, 'mm')).toBe('6.9 kPa');
    const psi = setFigure(base, 'leak-drop', 6.894757293168361);
    expect(targetWords(psi, 'leak', 'mm')).toBe('at most 6.9 kPa');
    expect(readingWords('leak', 6.894757293168361, 'in')).toBe('1 psi');
    expect(targetWords(psi, 'leak', 'in')).toBe('at most 1 psi');
    expect(readingWords('gap', 0.3556, 'mm')).toBe('0.356 mm');
    expect(targetWords(setFigure(base, 'gap', 0.4064), 'gap', 'mm')).toMatch(/^0\.406 mm/);
    expect(readingWords('gap', 0.355, 'mm')).toBe('0.355 mm');
    expect(readingWords('gap', 0.3556, 'in')).toBe('14 thou');
    expect(readingWords('timing', 2.159, 'in')).toBe('0.085 in');
    // 15/16 in and 1/32 in.
    expect(readingWords('timing', 23.8125, 'in')).toBe('0.9375 in');
    expect(readingWords('timing', 0.79375, 'in')).toBe('0.0313 in');
    expect(readingWords('timing', 2.540508, 'in')).toBe('0.1 in');
    expect(readingWords('squish', 1.04902, 'in')).toBe('41.3 thou');
  });

  it('a reading on the limit passes, as its figure is told: typed in cubic inches it has more digits', () => {
    // 1.3 cu in is 21.303 cc, told as 21.3.
    const head = setFigure(
      setFigure(base, 'head-volume', 1.3 * 16.387064),
      'head-volume-tolerance',
      0.3,
    );
    const entered = setEntry(head, 'head-volume', 'found', 0, 21);
    expect(targetWords(entered, 'head-volume', 'mm')).toBe('21.3 cc ± 0.3 cc');
    expect(results(entered, 'head-volume')[0]).toBe('pass');
    expect(results(setEntry(head, 'head-volume', 'found', 0, 20.9), 'head-volume')[0]).toBe('fail');
  });

  it('alike: held against the highest, and only once all are read', () => {
    const engine = read('compression', 820, 900, 815);
    expect(results(engine, 'compression')).toEqual(['pass', 'pass', 'fail']);
    expect(words(engine, 'compression')[2]).toMatch(/below the highest by 85 kPa\.$/);
    expect(results(read('compression', 820, 900), 'compression')).toEqual([
      'unjudged',
      'unjudged',
      'empty',
    ]);
    // In bar or psi, typed bare, a dead cylinder would pass beside the others: none is judged.
    for (const slip of [
      [7.6, 7.4, 2],
      [110, 107, 45],
    ]) {
      const slipped = read('compression', ...slip);
      expect(results(slipped, 'compression')).toEqual(['unjudged', 'unjudged', 'unjudged']);
      expect(words(slipped, 'compression')[0]).toMatch(/far below the usual 850 kPa/);
    }
    const single = setFigure(read('compression', 500), 'cylinders', 1);
    expect(words(single, 'compression')).toEqual(['written down, to be compared later']);
    // What has no limits is not said to have passed them.
    expect(passMark(words(single, 'compression')[0]!)).toBe('✓');
    expect(passMark(words(read('strip', 1.25), 'strip')[0]!)).toBe('✓');
    expect(passMark('within its limits')).toBe('✓ Pass');
    expect(words({ ...single, log: [] }, 'compression')).toEqual([
      'written down, to be compared later',
    ]);
    // One cylinder is held against its own earlier days.
    const lost = setEntry(single, 'compression', 'left', 0, 415, { kind: 'check' });
    expect(results(lost, 'compression')).toEqual(['fail']);
    expect(words(lost, 'compression')[0]).toMatch(/below the highest by 85 kPa\.$/);
    const held = setEntry(single, 'compression', 'left', 0, 425, { kind: 'check' });
    expect(results(held, 'compression')).toEqual(['pass']);
    expect(results({ ...lost, log: [] }, 'compression')).toEqual(['fail']);
    expect(targetWords(single, 'compression', 'mm')).toBe(
      'within 80 kPa of the highest of its earlier readings',
    );
    expect(targetWords(base, 'compression', 'mm')).toBe('within 80 kPa of the highest');
  });

  it('a record is judged by nothing', () => {
    const engine = read('strip', 1.25, 0, 9.5);
    expect(results(engine, 'strip')).toEqual(['pass', 'pass', 'pass']);
    expect(wantedFigures('strip', engine)).toEqual([]);
    expect(judge(engine, 'strip', 'mm').whole).toEqual([]);
  });

  it('of what the engine has one of, one box is judged and named by itself', () => {
    const engine = read('end-float', 0.45);
    expect(words(engine, 'end-float')).toEqual(['Fit thicker shims, in all by 0.25 mm.']);
    expect(stepLine(engine, 'end-float', 'mm')).toMatch(/: 0\.45 mm: to correct, crank \(Fit/);
  });

  it('an inlet that opens late: by how much the skirt is too long, and no cut for an early one', () => {
    // By hand for 51 and 104 mm: 21.859 mm below the top at 75°, 19.577 mm at 70°.
    const engine = read('inlet', 70, 80, 75);
    expect(results(engine, 'inlet')).toEqual(['fail', 'fail', 'pass']);
    expect(words(engine, 'inlet')[0]).toMatch(/for 5°\. That is 2\.28 mm of skirt/);
    expect(words(engine, 'inlet')[1]).toMatch(/It is early by 5°\.$/);
  });

  it('together: to the middle one, in turns of the adjuster where its thread is known', () => {
    const engine = read('slides', 3, 3.6, 3.4);
    expect(results(engine, 'slides')).toEqual(['fail', 'fail', 'pass']);
    expect(words(engine, 'slides')[1]).toBe(
      'Lower this slide by 0.2 mm: its adjuster 0.27 turns in.',
    );
    expect(judge(engine, 'slides', 'mm').whole).toEqual([
      'Bring what is out to 3.4 mm, where carburettor 3 stands already: that is the least to turn.',
      steps.slides.reading!.moves,
    ]);
    expect(results(read('slides', 3, 3.2, 3.1), 'slides')).toEqual(['pass', 'pass', 'pass']);
    expect(words(setFigure(engine, 'thread', undefined), 'slides')[0]).toBe(
      'Raise this slide by 0.4 mm.',
    );
    expect(results(read('slides', 3, 3.6), 'slides')).toEqual(['unjudged', 'unjudged', 'empty']);
  });

  it('together: asks for the same turns as the calculator of the slides', () => {
    const found = [2.6, 2.5, 2.9];
    const { turns } = balanceSlides(found, 0.75);
    const said = words(read('slides', ...found), 'slides');
    found.forEach((_, i) => {
      const turn = Math.abs(turns[i]!);
      if (turn * 0.75 <= 0.1 + 1e-9) expect(said[i]).toBe('within its limits');
      else expect(said[i]).toContain(`${turn.toFixed(2)} turns`);
    });
  });

  it('sets share one turn of the plate: the one that is out is named, and it alone', () => {
    const engine = read('plate', 120, 121.8, 118.2);
    expect(results(engine, 'plate')).toEqual(['pass', 'fail', 'pass']);
    expect(words(engine, 'plate')[1]).toBe(
      'Move this set in its slot, against the way the cam turns (earlier), by 1.8°.',
    );
    expect(results(read('plate', 120.8, 119, 120), 'plate')).toEqual(['pass', 'pass', 'pass']);
    expect(results(read('plate', 120, 121.8), 'plate')).toEqual(['unjudged', 'unjudged', 'empty']);
    const [fit] = judge(engine, 'plate', 'mm').whole;
    expect(fit).toMatch(/^Judged by best-fit places/);
    const open = judge(read('plate', 121, 121, 121), 'plate', 'mm');
    expect(open.whole[0]).toContain('add up to 363.0°');
    expect(open.rows.map(({ result }) => result)).not.toContain('pass');
    expect(targetWords(base, 'plate', 'mm')).toBe('120° ± 0.8°');
  });

  it('angles that do not quite close are shared out, and that is said; further off nothing is judged', () => {
    const open = judge(read('plate', 120.5, 120.5, 120.5), 'plate', 'mm');
    expect(open.rows.map(({ result }) => result)).toEqual(['pass', 'pass', 'pass']);
    expect(open.whole[0]).toContain('add up to 361.5°, and once round is 360°: the 1.5° too much');
    const four = (...angles: number[]): Engine =>
      angles.reduce(
        (so, angle, i) => setEntry(so, 'plate', 'found', i, angle),
        setEven(setFigure(base, 'cylinders', 4)),
      );
    const far = judge(four(92.5, 90, 90, 90), 'plate', 'mm');
    expect(far.rows.map(({ result }) => result)).not.toContain('pass');
    expect(far.whole[0]).toContain('add up to 362.5°');
    const closed = judge(four(90, 90, 90, 90), 'plate', 'mm');
    expect(closed.whole.join(' ')).not.toContain('add up');
  });

  it('angles from set to set by number may go round twice, and are told so', () => {
    // Sets 1-3-2: from each to the next by number is 240°, three times, which is two turns.
    const swapped = setFigure(setFigure(base, 'set-2', 240), 'set-3', 120);
    const read3 = (...angles: number[]): Engine =>
      angles.reduce<Engine>((so, angle, i) => setEntry(so, 'plate', 'found', i, angle), {
        ...swapped,
        firingOrder: [1, 3, 2],
      });
    const near = judge(read3(240, 239.9, 239.8), 'plate', 'mm');
    expect(near.rows.map(({ result }) => result)).toEqual(['pass', 'pass', 'pass']);
    expect(near.whole[0]).toContain(
      'add up to 719.7°, and twice round is 720°: the 0.3° too little',
    );
    const far = judge(read3(240, 238, 239), 'plate', 'mm');
    expect(far.whole[0]).toContain('add up to 717.0°, and twice round is 720°. Measure them again');
  });

  it('sets that are to share one spot are named, before and after they are measured', () => {
    const pairs = (['set-2', 'set-3', 'set-4'] as const).reduce(
      (so, key, i) => setFigure(so, key, [90, 360, 90][i]!),
      setFigure(base, 'cylinders', 4),
    );
    const [first, second] = judge(pairs, 'plate', 'mm').whole;
    expect(first).toContain('sets 1 and 3 belong on one spot of the plate, at 0°');
    expect(second).toContain('sets 2 and 4 belong on one spot of the plate, at 90°');
    const measured = [270, 90, 270, 90].reduce(
      (so, angle, i) => setEntry(so, 'plate', 'found', i, angle),
      pairs,
    );
    // No such plate can be made: no set is passed on it, and none is ordered to be moved.
    expect(judge(measured, 'plate', 'mm').whole).toEqual([first, second]);
    expect(results(measured, 'plate')).toEqual(Array.from({ length: 4 }, () => 'unjudged'));
    for (const set of [0, 360]) {
      const twin = setFigure(setFigure(base, 'cylinders', 2), 'set-2', set);
      const both = [359.9, 359.8].reduce(
        (so, angle, i) => setEntry(so, 'plate', 'found', i, angle),
        twin,
      );
      expect(results(both, 'plate')).toEqual(['unjudged', 'unjudged']);
      expect(judge(both, 'plate', 'mm').whole).toEqual([
        expect.stringContaining('sets 1 and 2 belong on one spot of the plate, at 0°'),
      ]);
    }
    expect(judge(setFigure(pairs, 'lobes', 2), 'plate', 'mm').whole[0]).toContain(
      'With 2 lobes one of them may stand a lobe further on, 180° of the plate',
    );
    expect(judge(base, 'plate', 'mm').whole).toEqual([]);
  });

  it('sets whose directions nobody gave are asked for, not judged', () => {
    const { missing, rows } = judge(
      setFigure(read('plate', 120, 120, 120), 'set-3', undefined),
      'plate',
      'mm',
    );
    expect(missing).toEqual(['set-3']);
    expect(rows.map(({ result }) => result)).toEqual(['unjudged', 'unjudged', 'unjudged']);
    const even = setEven(setFigure(base, 'set-3', undefined));
    expect(even.figures['set-2']).toBe(120);
    expect(even.figures['set-3']).toBe(240);
    const single = setFigure(base, 'cylinders', 1);
    expect(results(setEntry(single, 'plate', 'found', 0, 360), 'plate')).toEqual(['pass']);
  });

  it('sets of a twin that fires at 90° and 270° are judged where they belong', () => {
    const twin = ['set-3', 'set-2'].reduce<Engine>(
      (so, key) => setFigure(so, key as FigureKey, key === 'set-2' ? 90 : undefined),
      setFigure(base, 'cylinders', 2),
    );
    const with2 = (a: number, b: number): Engine =>
      setEntry(setEntry(twin, 'plate', 'found', 0, a), 'plate', 'found', 1, b);
    expect(targetWords(twin, 'plate', 'mm')).toBe('set 1: 270°, set 2: 90° ± 0.8°');
    expect(results(with2(270.3, 89.7), 'plate')).toEqual(['pass', 'pass']);
    expect(words(with2(270.3, 89.7), 'plate')[1]).toBe('0.15° short of its place');
    expect(results(with2(180, 180), 'plate')).toContain('fail');
    const backwards = judge(with2(90, 270), 'plate', 'mm');
    expect(backwards.rows.map(({ result }) => result)).toContain('fail');
    expect(backwards.whole.join(' ')).toContain('Counted the other way round these angles fit');
  });

  // Stroke 51, rod 104: 2.2 mm is 21.52° and 2.8 mm 24.34° (the calculator's own checked table).
  it('timing: the plate first, then what is left for each set, each with its direction', () => {
    const early = read('timing', 2.8, 2.8, 2.8);
    expect(words(early, 'timing')[0]).toBe(
      '2.8°, or 0.6 mm, early against the 2.2 mm of the sheet: make it fire later.',
    );
    expect(judge(early, 'timing', 'in').rows[0]?.words).toBe(
      '2.8°, or 0.0236 in, early against the 0.0866 in of the sheet: make it fire later.',
    );
    expect(judge(early, 'timing', 'mm').whole).toEqual([
      'Turn the plate the way the cam turns, which is later (retards), by 2.8° of crank: that is the least that leaves the worst cylinder best.',
      'Every cylinder is then within its limits; no set has to be moved.',
      steps.timing.reading!.moves,
    ]);
    // One set is out by 2.8° and the others are right: they stay.
    const uneven = judge(read('timing', 2.8, 2.2, 2.2), 'timing', 'mm').whole;
    expect(uneven.slice(0, -2)).toEqual([
      'Leave the plate where it is, and move only the sets that are out.',
      expect.stringMatching(
        /^Cylinder 1: move its set the way the cam turns, which is later \(retards\), by 2\.8° of crank, 1\.3\d mm along its slot\.$/,
      ),
    ]);
    // Two are out alike: the plate takes them along, and the third is brought back.
    const most = judge(read('timing', 2.8, 2.8, 2.2), 'timing', 'mm').whole;
    expect(most[0]).toMatch(/by 2\.8° of crank: that leaves the fewest sets to be moved\.$/);
    expect(most[1]).toMatch(/^Cylinder 3: then move its set against .* by 2\.8° of crank/);
    expect(most).toHaveLength(4);
    // The plate comes first, also where it goes the other way than the set; and is told of once.
    const plateFirst = judge(read('timing', 2.8, 1.6, 1.6), 'timing', 'mm');
    const asked = correctionWords(plateFirst, 0, 'Cylinder 1');
    expect(asked.words).toMatch(
      /^First turn the plate earlier, against the way the cam turns, by 3\.\d° of crank\. Cylinder 1 is now 2\.8°, or 0\.6 mm, early/,
    );
    expect([asked.words, ...asked.rest].join(' ').match(/turn the plate/gi)).toHaveLength(1);
    expect(asked.rest).toEqual([
      'Of this turn of the plate: that leaves the fewest sets to be moved.',
      ...plateFirst.whole.slice(1),
    ]);
    const only = judge(read('timing', 2.8, 2.2, 2.2), 'timing', 'mm');
    expect(correctionWords(only, 0, 'Cylinder 1')).toEqual({
      words: only.rows[0]!.words,
      rest: only.whole,
    });
    expect(judge(read('timing', 2.8, 2.2, 2.2), 'timing', 'mm').first).toBeUndefined();
    // One cylinder has no other to be best among.
    const single = judge(setFigure(read('timing', 2.8), 'cylinders', 1), 'timing', 'mm');
    expect(single.first).toBeUndefined();
    expect(single.whole.slice(0, 2)).toEqual([
      'Turn the plate the way the cam turns, which is later (retards), by 2.8° of crank.',
      'It is then within its limits.',
    ]);
    // Without the cam's turns for one of the crank nobody knows how far a degree is along a slot.
    const unknown = setFigure(read('timing', 2.8, 2.2, 2.2), 'speed-ratio', undefined);
    expect(judge(unknown, 'timing', 'mm').whole.join(' ')).not.toContain('along its slot');
  });

  it('timing: where the calculator turns the plate otherwise, that is said with its own figure', () => {
    // A twin in inches: 0.100 and 0.085 in, ± 0.5°.
    const twin = [2.54, 2.159].reduce(
      (so, entry, i) => setEntry(so, 'timing', 'found', i, entry),
      [
        ['cylinders', 2],
        ['stroke', 2.362 * 25.4],
        ['rod', 4.528 * 25.4],
        ['target', 2.54],
        ['timing-tolerance', 0.5],
      ].reduce<Engine>(
        (so, [key, value]) => setFigure(so, key as FigureKey, value as number),
        base,
      ),
    );
    const { figures } = twin;
    const said = judge(twin, 'timing', 'in').whole;
    const { 'plate-move': move } = plateSetting.compute({
      ...Object.fromEntries(Object.entries(plateSetting.inputs).map(([key]) => [key, 0])),
      as: 'travel',
      stroke: figures.stroke,
      rod: figures.rod,
      offset: 0,
      target: 2.54,
      fired: [2.54, 2.159],
      'speed-ratio': 1,
      'slot-radius': 28,
      'plate-radius': 40,
    } as never) as { 'plate-move': number };
    expect(move.toFixed(2)).toBe('0.84');
    expect(said[0]).toBe('Leave the plate where it is, and move only the sets that are out.');
    expect(said[2]).toContain('it turns the plate 0.84° earlier');
    expect(said[2]).toContain('the sets of cylinder 1 and cylinder 2 are still to be moved');
    expect(said[2]).toContain('Here one set is moved and not 2');
    // Nor where both ways leave as many: a four with rods of its own, ± 0.5°, of which two are out either way.
    const four = [2.05, 1.7, 2.4, 2.0066].reduce(
      (so, entry, i) => setEntry(so, 'timing', 'found', i, entry),
      [
        ['cylinders', 4],
        ['stroke', 44],
        ['rod', 90.75],
        ['target', 2.0066],
        ['timing-tolerance', 0.5],
      ].reduce<Engine>(
        (so, [key, value]) => setFigure(so, key as FigureKey, value as number),
        base,
      ),
    );
    const both = judge(four, 'timing', 'mm').whole;
    expect(both.filter((sentence) => /^Cylinder \d: /.test(sentence))).toHaveLength(2);
    expect(both.join()).not.toMatch(/calculator|and not/);
    // Where both go the same way there is nothing to explain.
    expect(judge(read('timing', 2.8, 2.8, 2.8), 'timing', 'mm').whole.join()).not.toContain(
      'calculator',
    );
  });

  it('timing: a reading past the top is said to be after it', () => {
    const { words: said } = judge(read('timing', -0.254, 2.2, 2.2), 'timing', 'mm').rows[0]!;
    expect(said).toMatch(/^−0\.25\d? mm is 7\.\d° after the top, further/);
    const late = setFigure(setFigure(read('timing', -0.1), 'target', 0), 'cylinders', 1);
    expect(words(late, 'timing')[0]).toMatch(/late against the 0 mm of the sheet/);
    const right = setFigure(setFigure(read('timing', -0.1), 'target', -0.1), 'cylinders', 1);
    expect(words(right, 'timing')[0]).toMatch(
      /^4\.\d° after the top, but doubted\. .* 5° after the top, later than such engines/,
    );
  });

  it('timing: a reading that no engine and no slot reaches is to be checked, and orders nothing', () => {
    for (const odd of [16, 7]) {
      const said = judge(read('timing', odd, 2.2, 2.2), 'timing', 'mm');
      expect(said.rows[0]).toMatchObject({ result: 'fail' });
      expect(said.rows[0]!.words).toContain('check the reading and its unit');
      expect(said.whole.filter((sentence) => /Turn the plate|move its set/.test(sentence))).toEqual(
        [],
      );
    }
    const much = judge(read('timing', 4.9, 2.2, 2.2), 'timing', 'mm').rows;
    expect(much[0]!.words).toContain('read it once more');
    expect(judge(read('timing', 2.8, 2.2, 2.2), 'timing', 'mm').rows[0]!.words).not.toContain(
      'once more',
    );
    const far = setFigure(read('timing', 16, 16, 16), 'target', 16);
    const said = judge(far, 'timing', 'mm');
    expect(said.rows.map(({ result }) => result)).toEqual(['unjudged', 'unjudged', 'unjudged']);
    expect(said.whole[0]).toContain('where no such engine fires');
  });

  it('every move of a plate or a set names the way, and what that does', () => {
    const said = [
      ...judge(read('timing', 2.8, 2.2, 1.6), 'timing', 'mm').whole,
      ...judge(read('plate', 120, 121.8, 118.2), 'plate', 'mm').rows.map((row) => row.words),
      ...judge(read('plate', 120, 118.2, 121.8), 'plate', 'mm').rows.map((row) => row.words),
    ].filter((sentence) => /^Turn|[Mm]ove (?:its|this) set/.test(sentence));
    expect(said.length).toBeGreaterThan(3);
    for (const sentence of said) expect(sentence).toMatch(/the way the cam turns.*(earlier|later)/);
  });

  it('timing on a half-speed shaft: half as far on the plate', () => {
    const engine = setFigure(read('timing', 2.8, 2.8, 2.8), 'speed-ratio', 0.5);
    expect(judge(engine, 'timing', 'mm').whole[0]).toContain('which is 1.4° of the plate');
  });

  it('what was asked for as found stays readable when the boxes as left are filled', () => {
    const found = read('timing', 2.8, 2.8, 2.8);
    expect(lastAsked(found, 'timing', 'mm')).toBeUndefined();
    const left = [0, 1, 2].reduce((so, i) => setEntry(so, 'timing', 'left', i, 2.2), found);
    expect(judge(left, 'timing', 'mm').whole).toEqual([]);
    expect(lastAsked(left, 'timing', 'mm')?.asFound).toBe(true);
    expect(lastAsked(left, 'timing', 'mm')?.sentences.join(' ')).toMatch(
      /Cylinder 3: 2\.8°.*Turn the plate the way the cam turns, which is later \(retards\), by 2\.8° of crank/,
    );
    const right = setEntry(read('gap', 0.4, 0.4, 0.4), 'gap', 'left', 0, 0.4);
    expect(lastAsked(right, 'gap', 'mm')).toBeUndefined();
    // What a link that left its log behind still knows.
    expect(lastAsked({ ...left, log: [] }, 'timing', 'mm')?.sentences).toEqual(
      lastAsked(left, 'timing', 'mm')?.sentences,
    );
  });

  it('timing that the piston cannot reach is said in words, not thrown', () => {
    const [row] = judge(read('timing', 80), 'timing', 'mm').rows;
    expect(row?.result).toBe('fail');
    expect(row?.words).toMatch(/mm/);
    const rodless = setFigure(read('timing', 2), 'rod', 20);
    expect(judge(rodless, 'timing', 'mm').whole[0]).toMatch(/rod/i);
  });

  it('a tolerance as wide as still judges does; one as wide as its figure judges nothing', () => {
    const gap = (figure: number, tolerance: number) =>
      judge(
        setFigure(setFigure(read('gap', figure), 'gap', figure), 'gap-tolerance', tolerance),
        'gap',
        'mm',
      );
    expect(gap(0.4, 0.1).rows[0]!.result).toBe('pass');
    const wide = gap(0.05, 0.05);
    expect(wide.rows[0]!.result).toBe('unjudged');
    expect(wide.whole[0]).toMatch(/is 0\.05 mm in the sheet, as much as the figure itself/);
  });

  it('what is left of a verdict once what it rests on has changed', () => {
    expect(ofBefore({ result: 'pass', words: '' })?.mark).toBe('↻ Passed when read');
    expect(ofBefore({ result: 'fail', words: '' })).toEqual({
      mark: '↻ Out when read.',
      words: 'Read it again before anything is corrected.',
    });
    expect(ofBefore({ result: 'empty', words: '' })).toBeUndefined();
    expect(ofBefore({ result: 'unjudged', words: '' })).toBeUndefined();
  });

  it('a step without its figure, or without its allowance, says which is wanted', () => {
    const bare = { ...base, figures: { cylinders: 1 } };
    expect(targetOrWanted(bare, 'gap', 'mm')).toBe('no figure in the sheet yet');
    expect(targetOrWanted(setFigure(bare, 'gap', 0.4), 'gap', 'mm')).toBe(
      '0.4 mm; how near, is not in the sheet yet',
    );
    expect(targetOrWanted(setFigure(bare, 'gap-tolerance', 0.03), 'gap', 'mm')).toBe(
      'no figure in the sheet yet',
    );
  });

  it('names the figures it lacks', () => {
    const bare = setEntry(newEngine('e-1', 'Bare'), 'timing', 'found', 0, 2);
    expect(judge(bare, 'timing', 'mm').missing).toEqual([
      'stroke',
      'rod',
      'target',
      'timing-tolerance',
    ]);
    for (const id of order) {
      for (const key of wantedFigures(id, setFigure(newEngine('e', 'E'), 'cylinders', 8)))
        expect(figureKeys).toContain(key);
    }
  });
});

describe('a correction of the geometry says what it does to the rest', () => {
  const figured: Engine = {
    ...base,
    figures: {
      ...base.figures,
      bore: 54,
      squish: 1.2,
      'head-volume': 14,
      'exhaust-opens': 97,
      'exhaust-tolerance': 1,
    },
  };
  const squished = (...squish: number[]): Engine =>
    squish.reduce((so, entry, i) => setEntry(so, 'squish', 'found', i, entry), figured);
  const opens = (engine: Engine, angle: number): Engine =>
    setEntry(engine, 'exhaust', 'found', 0, angle);
  const say = (engine: Engine): string => words(engine, 'exhaust')[0]!;

  // Worked by hand from x = r (1 − cos θ) + l − √(l² − r² sin² θ) with r 25.5 and l 104: 30.4378 mm
  // at 94°, 31.7344 mm at 97° and 33.0055 mm at 100°.
  it('the exhaust: millimetres with the degrees, and the piston in the head is refused', () => {
    expect(say(opens(squished(1.2), 94))).toBe(
      'It opens 3° early: lower the barrel by 1.3 mm, which opens it later. Do not do it as it is. Its squish of 1.2 mm would come to −0.1 mm: the piston strikes the head. As much has to be put back under the head, which gives its volume back too, or another head or barrel used.',
    );
    expect(say(opens(squished(2), 94))).toContain(
      'Take care: its squish of 2 mm would shrink to 0.7 mm, below its least of 1.05 mm.',
    );
    expect(say(opens(squished(2.5), 94))).toContain('comes to 1.2 mm, which is within its limits');
    expect(say(opens(squished(1.2), 100))).toMatch(
      /^It opens 3° late: raise the barrel by 1\.27 mm, .*would grow to 2\.47 mm, above its most of 1\.35 mm: at least 1\.12 mm has to come off/,
    );
    expect(say(opens(figured, 94))).toContain('1.3 mm off its squish, which has not been measured');
    expect(judge(opens(squished(1.2), 94), 'exhaust', 'in').rows[0]?.words).toContain(
      'lower the barrel by 51 thou',
    );
  });

  it('the exhaust: nothing is ordered of it by a disc that is still to be corrected', () => {
    const disc = setEntry(opens(squished(1.2, 1.2), 94), 'top', 'found', 0, 2);
    const both = setEntry(setEntry(disc, 'top', 'found', 1, 0.1), 'exhaust', 'found', 1, 94);
    const [first, second] = judge(both, 'exhaust', 'mm').rows;
    expect(first).toEqual({
      result: 'unjudged',
      words:
        'not judged: cylinder 1 is still to be corrected at “Find true top dead centre”. That first, then read this one anew.',
    });
    expect(second!.words).toContain('lower the barrel by 1.3 mm');
    expect(say(setEntry(disc, 'top', 'left', 0, 0))).toContain('lower the barrel');
    const late = setEntry(read('timing', 2.8, 2.8, 2.8), 'gap', 'found', 1, 0.6);
    const unread = setEntry(late, 'timing', 'found', 1, null);
    expect(judge(unread, 'timing', 'mm').rows[1]!.result).toBe('empty');
    expect(judge(late, 'timing', 'mm').rows[1]!.words).toContain('“Set the points gap”');
    expect(judge(late, 'timing', 'mm').whole.join()).not.toContain('Turn the plate');
  });

  it('the exhaust: says what is missing for the millimetres', () => {
    const bare = setFigure(opens(squished(1.2), 94), 'rod', undefined);
    expect(say(bare)).toBe('It opens early: lower the barrel, which opens it later by 3°.');
    expect(judge(bare, 'exhaust', 'mm').whole[0]).toMatch(/follows from rod length: enter/);
    expect(judge(bare, 'exhaust', 'mm').whole[0]).toContain('takes as much off');
    const locked = setFigure(opens(squished(1.2), 94), 'rod', 20);
    expect(say(locked)).toMatch(/rod/i);
  });

  it('the squish, after the barrel was moved: what it has come to, and that it strikes', () => {
    const moved = setEntry(opens(squished(1.2), 94), 'exhaust', 'left', 0, 97);
    expect(progressOf(moved).squish.state).toBe('again');
    expect(progressOf(moved).squish.because).toEqual(['exhaust']);
    expect(judge(moved, 'squish', 'mm').whole[0]).toMatch(
      /went from 94° to 97°.*now about −0\.1 mm, and the piston strikes the head/,
    );
    const read = setEntry(moved, 'squish', 'left', 0, 1.2);
    expect(judge(read, 'squish', 'mm').whole).toEqual([]);
  });

  it('the squish: what the same gasket under the barrel does to the port', () => {
    const engine = opens(squished(0.8), 97);
    expect(words(engine, 'squish')[0]).toBe(
      'Use a thicker head gasket, by 0.4 mm. Under the barrel instead, the exhaust would open 0.9° earlier.',
    );
    expect(judge(engine, 'squish', 'mm').whole.at(-1)).toContain('every port as well');
  });

  it('the head volume: how much comes off the squish by skimming', () => {
    const engine = setEntry(squished(1.2), 'head-volume', 'found', 0, 14.6);
    // 600 mm³ over a circle of 54 mm, 2290.2 mm², is 0.262 mm.
    expect(words(engine, 'head-volume')[0]).toBe(
      'This head is too large by 0.6 cc. Skimming its face over the bore’s width for that takes off about 0.26 mm. Take care: its squish of 1.2 mm would shrink to 0.94 mm, below its least of 1.05 mm. At least 0.11 mm has to be put back under the head.',
    );
    const boreless = setFigure(engine, 'bore', undefined);
    expect(judge(boreless, 'head-volume', 'mm').whole[0]).toContain('enter the cylinder bore');
    const small = setEntry(squished(1.2), 'head-volume', 'found', 0, 13);
    expect(words(small, 'head-volume')[0]).toContain('bowl cut out');
    // Nothing is skimmed of a head that is too small.
    expect(judge(small, 'head-volume', 'mm').whole.join(' ')).not.toContain('Skimming');
    expect(judge(engine, 'head-volume', 'mm').whole.join(' ')).toContain('Skimming takes as much');
  });
});

describe('no figure in a verdict is in millimetres for a reader of inches', () => {
  it.each(order.filter((id) => steps[id].reading))('%s', (id) => {
    const { reading } = steps[id];
    const engine: Engine = {
      ...base,
      figures: {
        ...base.figures,
        'exhaust-opens': 97,
        'exhaust-tolerance': 1,
        'piston-clearance': 0.06,
        'piston-clearance-tolerance': 0.01,
        'ring-gap': 0.2,
        'ring-gap-tolerance': 0.05,
      },
    };
    const wrong = [0.9, 1.1, 1.2].map((share) =>
      reading!.unit === 'count'
        ? 2 + share * 10 - 9
        : share *
          (reading!.target ? (engine.figures[reading!.target] ?? 0.1) : id === 'plate' ? 120 : 2),
    );
    const read = wrong.reduce(
      (so, entry, i) => setEntry(so, id, 'found', i, entry),
      setEntry(engine, 'squish', 'found', 0, 1.2),
    );
    const { rows, whole } = judge(read, id, 'in');
    const said = [...rows.map((row) => row.words), ...whole].join(' ');
    // Where a box holds a length, all that is said of it is in the unit of the box.
    const unit = fieldUnit(reading!, 'in');
    const own = whole.filter((sentence) => sentence !== proseIn(reading!.moves ?? '', 'in'));
    const words = [
      ...rows.map((row) => row.words),
      ...own,
      targetWords(read, id, 'in'),
      stepLine(read, id, 'in'),
      ...wrong.map((entry) => readingWords(id, entry, 'in')),
    ].join(' ');
    if (reading!.unit === 'mm') {
      expect(words).not.toMatch(unit === 'in' ? /\d thou\b/ : /\d in\b(?! all)/);
    }
    expect([/\d thou\b/, /\d in\b/].filter((other) => other.test(words)).length).toBeLessThan(2);
    expect(said).not.toMatch(/\d mm\b/);
    expect(said).not.toMatch(/NaN|undefined/);
  });
});

it('the demo has believable scatter, and shows pass, fail and check again', () => {
  const engine = demoSheet();
  expect(demoSheet()).toEqual(engine);
  expect(engine.invented).toBe(true);
  for (const id of ['gap', 'timing', 'float'] as const) {
    const { found } = engine.readings[id]!;
    const spread = Math.max(...(found as number[])) - Math.min(...(found as number[]));
    expect(new Set(found).size, id).toBeGreaterThan(1);
    expect(spread, id).toBeLessThan(0.4 * (found[0] ?? 0));
  }
  const states = new Set(Object.values(progressOf(engine)).map(({ state }) => state));
  for (const state of ['pass', 'fail', 'again', 'open'] as const) expect(states).toContain(state);
});

it('says the whole in a text fit for a message', () => {
  const text = sheetSummary(demoSheet(), 'mm', 'https://here.test/sheet/#engine=1.x');
  expect(text).toContain('Demo: club triple (invented engine)');
  // What concerns a step as a whole says of which step it speaks.
  const moves = steps.timing.reading!.moves!;
  expect(sheetSummary(read('timing', 2.8, 2.8, 2.8), 'mm', '')).toContain(
    `\n${steps.timing.title}: ${moves}`,
  );
  expect(text).toContain('Stroke: 51 mm');
  expect(text).toContain(
    'Firing order: 1-2-3\nLeads in firing order: coil 1 to plug 1, coil 2 to plug 2, coil 3 to plug 3\n',
  );
  expect(text.endsWith('https://here.test/sheet/#engine=1.x')).toBe(true);
  expect(text).not.toMatch(/undefined|NaN|null/);
  expect(stepLine(read('gap', 0.4), 'gap', 'mm')).toBe(
    'Set the points gap (0.4 mm ± 0.03 mm): 1) 0.4 mm; 2) –; 3) –: part filled',
  );
  expect(stepLine(read('gap', 0.4, 0.6, 0.4), 'gap', 'mm')).toMatch(
    /: to correct, set 2 \(Close the gap, which makes it fire later, by 0\.2 mm\)$/,
  );
  expect(text).toMatch(/left 2\.24 mm: check again$/m);
  const twice = setEntry(demoSheet(), 'timing', 'left', 1, 2.21);
  expect(stepLine(twice, 'timing', 'mm')).toMatch(/: check again, cylinder 1, cylinder 3$/);
  expect(Object.keys(steps)).toHaveLength(order.length);
});

it('a reading nearer to its limit than half of the last digit is to be read once more', () => {
  const gap = { ...newEngine('e-1', 'Edge'), figures: { gap: 0.4, 'gap-tolerance': 0.05 } };
  const words = (value: number): string =>
    judge(setEntry(gap, 'gap', 'found', 0, value), 'gap', 'mm').rows[0]!.words;
  // Feelers go by hundredths: 0.446 is less than half of one below 0.45, and 0.444 is more.
  expect(words(0.444)).toBe('within its limits');
  expect(words(0.446)).toMatch(/at the very edge of them \(read it once more\)/);
  expect(words(0.356)).toBe('within its limits');
  expect(words(0.354)).toMatch(/at the very edge/);
});
