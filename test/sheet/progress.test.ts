import { describe, expect, it } from 'vitest';
import {
  confirm,
  keep,
  retype,
  setDone,
  setEntry,
  setFigure,
} from '../../calculators/sheet/edit.ts';
import { readingOf } from '../../calculators/sheet/edit.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { LIMITS, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { nextStep, progressOf } from '../../calculators/sheet/progress.ts';
import { isStepId, needs, order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { sheetFigures } from '../../calculators/sheet/figures.ts';

/** A sheet with every figure that a step is judged by. */
function figured(): Engine {
  const demo = demoSheet().figures;
  const figures = { ...demo, gap: 0.4, 'exhaust-opens': 95, 'exhaust-tolerance': 1 };
  return { ...newEngine('e-1', 'Test'), figures };
}

/** A reading that passes its step. */
function passing(engine: Engine, id: StepId): number {
  const reading = steps[id].reading!;
  if (reading.judging === 'zero') return 0;
  if (reading.judging === 'spacing') return 120;
  if (reading.judging === 'together') return 3;
  return engine.figures[reading.target!]!;
}

/** The engine with a step done well. */
function pass(engine: Engine, id: StepId): Engine {
  if (!steps[id].reading) return setDone(engine, id, true);
  return [0, 1, 2].reduce((so, i) => setEntry(so, id, 'found', i, passing(engine, id)), engine);
}

const finished = (): Engine => order.reduce(pass, figured());

/** The engine with a step's work altered, so that it still passes. */
function alter(engine: Engine, id: StepId): Engine {
  const reading = steps[id].reading;
  if (!reading) return setDone(setDone(engine, id, false), id, true);
  const shift = reading.whole ? 1 : reading.step / 100;
  const value = passing(engine, id) + (reading.judging === 'at-most' ? -shift : shift);
  return [0, 1, 2].reduce((so, i) => setEntry(so, id, 'left', i, value), engine);
}

/** What depends on what, written out: a step lost from the definitions is missed here. */
const dependants: Readonly<Partial<Record<StepId, readonly StepId[]>>> = {
  measure: ['timing'],
  top: ['timing', 'exhaust'],
  plate: ['gap', 'timing'],
  coil: ['stop', 'start'],
  gap: ['timing'],
  timing: ['start'],
  float: ['start'],
  jets: ['clip', 'start'],
  clip: ['slides', 'start'],
  slides: ['stop', 'start'],
  squish: ['head-volume', 'exhaust', 'leak', 'start'],
  'head-volume': ['leak', 'start'],
  exhaust: ['leak', 'start'],
  leak: ['start'],
  plug: ['start'],
  stop: ['start'],
  fuel: ['start'],
  start: ['after'],
};

const edges = order.flatMap((other) => (dependants[other] ?? []).map((id) => [other, id] as const));

describe('the order of work', () => {
  it('holds each step once, every dependency before what depends on it', () => {
    expect([...order].sort()).toEqual(Object.keys(steps).sort());
    for (const [index, id] of order.entries()) {
      for (const other of Object.keys(steps[id].after)) {
        expect(isStepId(other)).toBe(true);
        expect(order.indexOf(other as StepId)).toBeLessThan(index);
      }
    }
  });

  it('has the dependencies written out above and no others', () => {
    const defined = order.flatMap((other) =>
      order.filter((id) => needs(id).includes(other)).map((id) => [other, id]),
    );
    expect(defined).toEqual(edges);
  });

  it('judges by figures of the sheet, in the unit of the reading', () => {
    for (const id of order) {
      const { reading } = steps[id];
      if (!reading?.target) continue;
      expect(sheetFigures[reading.target].unit, id).toBe(reading.unit);
    }
  });

  it('is finished when every step has passed', () => {
    const progress = progressOf(finished());
    expect(order.filter((id) => progress[id].state !== 'pass')).toEqual([]);
    expect(nextStep(progress)).toBeUndefined();
    expect(nextStep(progressOf(figured()))).toBe('measure');
  });
});

describe('a change marks what depends on it to be checked again', () => {
  it.each(edges)('%s → %s', (other, id) => {
    const progress = progressOf(alter(finished(), other));
    expect(progress[id].state).toBe('again');
    expect(progress[id].because).toEqual([other]);
    expect(steps[id].after[other]).toMatch(/\.$/);
  });

  it.each(order)('%s marks nothing else', (other) => {
    const progress = progressOf(alter(finished(), other));
    const marked = order.filter((id) => progress[id].because.length > 0);
    expect(marked).toEqual(edges.filter(([from]) => from === other).map(([, to]) => to));
  });

  it('until it is read again', () => {
    const altered = alter(finished(), 'gap');
    const read = setEntry(altered, 'timing', 'left', 0, 2.21);
    expect(progressOf(read).timing.state).toBe('pass');
  });

  it('until it is confirmed', () => {
    const confirmed = confirm(alter(finished(), 'gap'), 'timing');
    expect(progressOf(confirmed).timing.state).toBe('pass');
  });

  it('and says what has not been done before it', () => {
    expect(progressOf(alter(finished(), 'gap')).start.waits).toEqual(['timing']);
    expect(progressOf(figured()).timing.waits).toEqual(needs('timing'));
  });

  it('says nothing of a step that was not begun', () => {
    const engine = alter(pass(figured(), 'gap'), 'gap');
    expect(progressOf(engine).timing).toMatchObject({ state: 'open', because: [] });
  });
});

describe('a reading', () => {
  it('as found alters nothing, as left it does', () => {
    const found = setEntry(finished(), 'gap', 'found', 0, 0.41);
    expect(progressOf(found).timing.state).toBe('pass');
    const same = setEntry(finished(), 'gap', 'left', 0, 0.4);
    expect(progressOf(same).timing.state).toBe('pass');
  });

  it('typed digit by digit alters only by what it comes to', () => {
    const before = { entry: null, changed: readingOf(finished(), 'gap').changed };
    let engine = finished();
    let written: number | undefined;
    for (const value of [0, 0.4]) {
      engine = retype(engine, 'gap', 'left', 0, value, before, written);
      written = readingOf(engine, 'gap').changed;
    }
    expect(readingOf(engine, 'gap').left).toEqual([0.4]);
    expect(progressOf(engine).timing.state).toBe('pass');
    const wider = retype(engine, 'gap', 'left', 0, 0.42, before, written);
    expect(progressOf(wider).timing.because).toEqual(['gap']);
  });

  it('that fails is to be corrected, and one missing leaves the step part filled', () => {
    expect(progressOf(setEntry(finished(), 'gap', 'left', 1, 0.6)).gap.state).toBe('fail');
    expect(progressOf(setEntry(finished(), 'gap', 'found', 1, null)).gap.state).toBe('part');
    const unfigured = setFigure(finished(), 'gap', undefined);
    expect(progressOf(unfigured).gap.state).toBe('unjudged');
  });
});

it('keeps the newest results when there is no more room', () => {
  const result = { text: '', calculator: 'c', query: '' };
  let engine = figured();
  for (let i = 0; i <= LIMITS.kept; i += 1) engine = keep(engine, { ...result, label: String(i) });
  expect(engine.kept).toHaveLength(LIMITS.kept);
  expect(engine.kept.at(-1)?.label).toBe(String(LIMITS.kept));
});
