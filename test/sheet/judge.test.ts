import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setEntry, setFigure } from '../../calculators/sheet/edit.ts';
import { judge, targetWords, wantedFigures } from '../../calculators/sheet/judge.ts';
import { balanceSlides } from '../../calculators/maths/slide-balance.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { figureKeys } from '../../calculators/sheet/figures.ts';
import { stepLine, sheetSummary } from '../../calculators/sheet/summary.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';

const base: Engine = { ...newEngine('e-1', 'Test'), figures: demoSheet().figures };
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
    expect(words(engine, 'gap')[2]).toBe('Close the gap by 0.04 mm.');
    expect(words(read('gap', 0.36), 'gap')[0]).toBe('Open the gap by 0.04 mm.');
    expect(judge(read('gap', 0.44), 'gap', 'in').rows[0]?.words).toBe('Close the gap by 1.6 thou.');
  });

  it('the reading as left counts, where there is one', () => {
    const engine = setEntry(read('gap', 0.6, 0.4, 0.4), 'gap', 'left', 0, 0.4);
    expect(results(engine, 'gap')).toEqual(['pass', 'pass', 'pass']);
  });

  it('at most: less is well, the surplus is named', () => {
    const engine = read('leak', 0, 3, 4.5);
    expect(results(engine, 'leak')).toEqual(['pass', 'pass', 'fail']);
    expect(words(engine, 'leak')[2]).toBe('Find the leak: too much is lost by 1.5 kPa.');
  });

  it('together: to the middle one, in turns of the adjuster where its thread is known', () => {
    const engine = read('slides', 3, 3.6, 3.4);
    expect(results(engine, 'slides')).toEqual(['fail', 'fail', 'pass']);
    expect(words(engine, 'slides')[1]).toBe(
      'Lower this slide by 0.2 mm, 0.27 turns of its adjuster.',
    );
    expect(judge(engine, 'slides', 'mm').whole).toEqual([
      'Bring what is out to 3.4 mm, where carburettor 3 stands already: that is the least to turn.',
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
    expect(words(engine, 'plate')[1]).toBe('Move this set back in its slot by 1.8°.');
    expect(results(read('plate', 120.8, 119, 120), 'plate')).toEqual(['pass', 'pass', 'pass']);
    expect(results(read('plate', 120, 121.8), 'plate')).toEqual(['unjudged', 'unjudged', 'empty']);
    const open = judge(read('plate', 121, 121, 121), 'plate', 'mm');
    expect(open.whole[0]).toContain('add up to 363.0°');
    expect(open.rows.map(({ result }) => result)).not.toContain('pass');
    expect(targetWords(base, 'plate', 'mm')).toBe('120° ± 0.8°');
  });

  // Stroke 51, rod 104: 2.2 mm is 21.52° and 2.8 mm 24.34° (the calculator's own checked table).
  it('timing: the plate first, then what is left for each set', () => {
    const early = read('timing', 2.8, 2.8, 2.8);
    expect(words(early, 'timing')[0]).toBe('2.8° early: retard it.');
    expect(judge(early, 'timing', 'mm').whole).toEqual([
      'Turn the plate to retard by 2.8° of crank: that is the least that leaves the worst cylinder best.',
      'Every cylinder is then within its limits; no set has to be moved.',
    ]);
    const uneven = judge(read('timing', 2.8, 2.2, 2.2), 'timing', 'mm').whole;
    expect(uneven[0]).toContain('retard by 1.4° of crank');
    expect(uneven.slice(1)).toEqual([
      'Cylinder 1: then retard its set by 1.4°, 0.69 mm along its slot.',
      'Cylinder 2: then advance its set by 1.4°, 0.69 mm along its slot.',
      'Cylinder 3: then advance its set by 1.4°, 0.69 mm along its slot.',
    ]);
  });

  it('timing on a half-speed shaft: half as far on the plate', () => {
    const engine = setFigure(read('timing', 2.8, 2.8, 2.8), 'speed-ratio', 0.5);
    expect(judge(engine, 'timing', 'mm').whole[0]).toContain('which is 1.4° of the plate');
  });

  it('timing that the piston cannot reach is said in words, not thrown', () => {
    const [row] = judge(read('timing', 80), 'timing', 'mm').rows;
    expect(row?.result).toBe('fail');
    expect(row?.words).toMatch(/mm/);
    const rodless = setFigure(read('timing', 2), 'rod', 20);
    expect(judge(rodless, 'timing', 'mm').whole[0]).toMatch(/rod/i);
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
      for (const key of wantedFigures(id)) expect(figureKeys).toContain(key);
    }
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
  expect(text).toContain('Stroke: 51 mm');
  expect(text).toContain('Firing order: 1 3 2');
  expect(text.endsWith('https://here.test/sheet/#engine=1.x')).toBe(true);
  expect(text).not.toMatch(/undefined|NaN|null/);
  expect(stepLine(read('gap', 0.4), 'gap', 'mm')).toBe(
    'Set the points gap (0.4 mm ± 0.03 mm): 1) 0.4 mm; 2) –; 3) –: part filled',
  );
  expect(Object.keys(steps)).toHaveLength(order.length);
});
