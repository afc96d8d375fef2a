import { describe, expect, it } from 'vitest';
import { keep } from '../../calculators/sheet/kept-results.ts';
import {
  confirm,
  writtenLast,
  type WrittenLast,
  retype,
  setDone,
  setEntry,
} from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { changeWords } from '../../calculators/sheet/log-words.ts';
import { showReading } from '../../calculators/sheet/step-units.ts';
import { boxName, LIMITS, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { jobOf, nextStep, progressOf } from '../../calculators/sheet/progress.ts';
import {
  isStepId,
  needs,
  order,
  needsReading,
  reopeners,
  reopening,
  steps,
  type StepId,
} from '../../calculators/sheet/steps.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { againstWords, figuresAtHand, openBefore } from '../../calculators/sheet/against.ts';
import { nextDue } from '../../calculators/sheet/due.ts';
import { fillFrom } from '../../calculators/sheet/fill.ts';
import { judge, lastAsked } from '../../calculators/sheet/judge.ts';
import { linkDays, withLinkDays } from '../../calculators/sheet/link-days.ts';
import { stages } from '../../calculators/frame/stages.ts';
import { sheetFigures, type FigureKey } from '../../calculators/sheet/figures.ts';
import { parseDocument } from './parse-document.ts';

/** A sheet with every figure that a step is judged by; with reeds, or with an inlet that the piston opens. */
function figured(reeds = 0): Engine {
  const demo = demoSheet().figures;
  const figures = {
    ...demo,
    gap: 0.4,
    'exhaust-opens': 95,
    'exhaust-tolerance': 1,
    'piston-clearance': 0.06,
    'piston-clearance-tolerance': 0.01,
    'ring-gap': 0.2,
    'ring-gap-tolerance': 0.05,
    'reed-gap': 0.2,
    reeds,
  };
  return { ...newEngine('e-1', 'Test'), figures };
}

/** A reading that passes its step. */
function passing(engine: Engine, id: StepId): number {
  const reading = steps[id].reading!;
  if (reading.judging === 'zero') return 0;
  if (reading.judging === 'spacing') return 120;
  if (reading.judging === 'together' || reading.judging === 'noted') return 3;
  if (reading.judging === 'alike') return 900;
  return engine.figures[reading.target!]!;
}

const boxes = (id: StepId): number[] => (steps[id].reading?.once ? [0] : [0, 1, 2]);

/** The engine with a step done well. */
function pass(engine: Engine, id: StepId): Engine {
  if (!steps[id].reading) return setDone(engine, id, true);
  return boxes(id).reduce((so, i) => setEntry(so, id, 'found', i, passing(engine, id)), engine);
}

/** An engine of three cylinders that has these steps, with all of its work done. */
const finished = (...ids: readonly StepId[]): Engine => {
  const engine = figured(ids.includes('reeds') ? 6 : 0);
  return jobOf(engine).reduce(pass, engine);
};

/** The engine with a step's work altered, so that it still passes. */
function alter(engine: Engine, id: StepId, on = ''): Engine {
  const reading = steps[id].reading;
  if (!reading) return setDone(setDone(engine, id, false, on), id, true, on);
  const shift = reading.whole ? 1 : reading.step / 100;
  const value = passing(engine, id) + (reading.judging === 'at-most' ? -shift : shift);
  return boxes(id).reduce((so, i) => setEntry(so, id, 'left', i, value, { on }), engine);
}

/** What is proved before an engine is fired, written out by hand: it hurts who stands there, or wrecks it. */
const beforeFire: readonly StepId[] = [
  'leak',
  'suction',
  'timing',
  'wiring',
  'leads',
  'stop',
  'fuel',
];

/**
 * What the work at each step moves, written out by hand: a step lost from the definitions is missed
 * here, and so is one that nobody thought of.
 */
const moves: Readonly<Record<StepId, readonly StepId[]>> = {
  oil: [],
  measure: ['squish', 'exhaust', 'inlet', 'timing'],
  // The disc was turned on the crank.
  top: ['exhaust', 'inlet', 'timing'],
  // The crank was pressed true: the case was open, and everything on it off.
  'run-out': [
    'top',
    'end-float',
    'rod-play',
    'squish',
    'exhaust',
    'inlet',
    'leak',
    'suction',
    'plate-fit',
    'gap',
    'timing',
    'start',
  ],
  // Other shims: the case was open.
  'end-float': [
    'top',
    'squish',
    'exhaust',
    'inlet',
    'leak',
    'suction',
    'plate-fit',
    'gap',
    'timing',
    'start',
  ],
  // The crank was pressed apart, perhaps for another rod.
  'rod-play': [
    'measure',
    'top',
    'run-out',
    'end-float',
    'pin-play',
    'squish',
    'exhaust',
    'inlet',
    'leak',
    'suction',
    'plate-fit',
    'gap',
    'timing',
    'start',
  ],
  // The barrel was off for it.
  'pin-play': ['squish', 'exhaust', 'inlet', 'leak', 'suction', 'start'],
  // Another bore or piston: bore, pin, pin offset, crown, skirt and pegs, and the barrel was off.
  clearance: [
    'measure',
    'top',
    'pin-play',
    'ring-gap',
    'pegs',
    'squish',
    'exhaust',
    'inlet',
    'leak',
    'suction',
    'compression',
    'start',
  ],
  // The barrel was off for the ring.
  'ring-gap': ['squish', 'exhaust', 'inlet', 'leak', 'suction', 'compression', 'start'],
  pegs: ['start'],
  // Another gasket, under head or barrel, or metal off barrel or head.
  squish: ['head-volume', 'exhaust', 'inlet', 'leak', 'suction', 'compression', 'start'],
  // A head that was skimmed.
  'head-volume': ['squish', 'leak', 'suction', 'compression', 'start'],
  // A barrel that was raised or lowered: squish, and the deck with the compression.
  exhaust: ['squish', 'head-volume', 'inlet', 'leak', 'suction', 'compression', 'start'],
  // A skirt that was shortened: the barrel was off for it.
  inlet: ['squish', 'exhaust', 'leak', 'suction', 'start'],
  reeds: ['leak', 'suction', 'start'],
  // New seals and gaskets: what had to come off for them.
  leak: ['top', 'squish', 'exhaust', 'inlet', 'suction', 'plate-fit', 'gap', 'timing', 'start'],
  suction: ['top', 'squish', 'exhaust', 'inlet', 'leak', 'plate-fit', 'gap', 'timing', 'start'],
  plate: ['insulation', 'plate-fit', 'gap', 'timing'],
  // The set was apart for it, and the plate out.
  insulation: ['plate-fit', 'gap', 'timing', 'start'],
  'plate-fit': ['gap', 'timing'],
  condenser: ['start'],
  coil: ['polarity', 'wiring', 'leads', 'stop', 'start'],
  polarity: ['leads', 'start'],
  gap: ['timing', 'start'],
  // A set that was moved in its slot.
  timing: ['gap', 'start'],
  // A record of how it was.
  strip: [],
  // Needle, seat, jets and air screw were out.
  clean: ['pilot', 'float', 'jets', 'screws', 'start'],
  pilot: ['screws', 'start'],
  float: ['screws', 'start'],
  jets: ['clip', 'start'],
  // Another slide.
  cutaway: ['clip', 'cables', 'screws', 'slides', 'stop', 'start'],
  // The slide was out.
  clip: ['cables', 'screws', 'slides', 'stop', 'start'],
  cables: ['screws', 'slides', 'stop', 'start'],
  screws: ['slides', 'stop', 'start'],
  slides: ['cables', 'screws', 'stop', 'start'],
  plug: ['start'],
  compression: ['start'],
  wiring: ['stop', 'start'],
  leads: ['start'],
  stop: ['start'],
  fuel: ['start'],
  start: ['run', 'after'],
  run: ['hot', 'after', 'hours'],
  hot: [],
  after: [],
  hours: [],
};

/** What comes before what, beyond that: a change there moves nothing here. */
const alsoFirst: Readonly<Partial<Record<StepId, readonly StepId[]>>> = {
  measure: ['oil'],
  top: ['oil'],
  'run-out': ['oil'],
  'rod-play': ['oil'],
  clearance: ['oil'],
  plate: ['leak', 'suction'],
  clean: ['strip'],
  cutaway: ['strip'],
  leads: ['timing', 'wiring'],
  hours: ['after'],
};

const edges = order.flatMap((other) => moves[other].map((id) => [other, id] as const));
const isEarlier = (id: StepId, other: StepId): boolean => order.indexOf(id) < order.indexOf(other);

describe('the order of work', () => {
  it('holds each step once, every dependency before what depends on it', () => {
    expect([...order].sort()).toEqual(Object.keys(steps).sort());
    for (const id of order) {
      const { after, waitsFor = [], movedBy = {} } = steps[id];
      for (const other of [...Object.keys(after), ...waitsFor, ...Object.keys(movedBy)]) {
        expect(isStepId(other), other).toBe(true);
      }
      // So that waiting never runs in a circle.
      for (const other of needs(id)) expect(isEarlier(other, id), `${other}, ${id}`).toBe(true);
      for (const other of Object.keys(movedBy)) {
        expect(isEarlier(id, other as StepId), `${id}, ${other}`).toBe(true);
      }
    }
  });

  it('moves what is written out above and nothing else', () => {
    const defined = order.flatMap((other) =>
      order.filter((id) => reopeners(id).includes(other)).map((id) => [other, id]),
    );
    expect(defined).toEqual(edges);
  });

  it('waits for what moves a step from above, and for what is written out beside it', () => {
    for (const id of order) {
      const first = order.filter(
        (other) =>
          (moves[other].includes(id) && isEarlier(other, id)) || alsoFirst[id]?.includes(other),
      );
      expect(needs(id), id).toEqual(first);
    }
  });

  it('is reopened from below only by a step with readings, since a first tick alters', () => {
    for (const [other, id] of edges) {
      if (!isEarlier(other, id)) expect(steps[other].reading, `${other} moves ${id}`).toBeDefined();
    }
  });

  it('says beside the correction what else it moves', () => {
    for (const id of order) {
      const { reading } = steps[id];
      const others = moves[id].filter((other) => other !== 'start');
      if (!reading || others.length === 0) continue;
      expect(reading.moves, id).toMatch(/\.$/);
    }
  });

  it('follows the stages: the piston, the geometry, the plate, the points, the carburettors', () => {
    const met = order.map((id) => steps[id].stage);
    expect([...new Set(met)]).toEqual(Object.keys(stages));
    expect(met.filter((stage, i) => stage !== met[i - 1])).toEqual(Object.keys(stages));
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
    expect(nextStep(progressOf(figured()))).toBe('oil');
  });
});

describe('a change marks what depends on it to be checked again', () => {
  it.each(edges)('%s → %s', (other, id) => {
    const progress = progressOf(alter(finished(other, id), other));
    expect(progress[id].state).toBe('again');
    expect(progress[id].because).toEqual([other]);
    expect(reopening(id, other)).toMatch(/\.$/);
  });

  it.each(edges)('%s → %s: with the change and its day', (other, id) => {
    const altered = alter(finished(other, id), other, '2026-03-03');
    const { stale } = progressOf(altered)[id];
    const { reading } = steps[other];
    const says = changeWords(altered, other, id, stale, 'mm');
    expect(says).toContain('on 3 Mar 2026');
    if (!reading) return;
    const was = showReading(passing(altered, other), reading, 'mm');
    expect(says).toContain(`${boxName(reading, 0, altered).toLowerCase()} from ${was} to `);
  });

  it.each(order)('%s marks nothing else', (other) => {
    const progress = progressOf(alter(finished(other), other));
    const marked = order.filter((id) => progress[id].because.length > 0);
    expect(marked).toEqual(edges.filter(([from]) => from === other).map(([, to]) => to));
  });

  it('until it is read again', () => {
    const altered = alter(finished(), 'gap');
    // Looked at, and nothing turned: one cylinder says nothing of the others.
    const check = { kind: 'check' } as const;
    const read = setEntry(altered, 'timing', 'left', 0, 2.21, check);
    expect(progressOf(read).timing).toMatchObject({
      state: 'again',
      because: ['gap'],
      stale: [1, 2],
    });
    const again = setEntry(read, 'timing', 'left', 2, 2.21, check);
    expect(progressOf(again).timing.stale).toEqual([1]);
    const all = setEntry(again, 'timing', 'left', 1, 2.21, check);
    expect(progressOf(all).timing.state).toBe('pass');
    expect(readingOf(all, 'timing')).not.toHaveProperty('again');
    const { readings } = confirm(again, 'timing');
    expect(readings.timing).not.toHaveProperty('again');
    const anew = setEntry(again, 'gap', 'left', 0, null);
    expect(progressOf(anew).timing.stale).toEqual([0, 1, 2]);
    const kept = parseDocument(writeDocument([again])).engines[0]!;
    expect(progressOf(kept)).toEqual(progressOf(again));
  });

  it('the other cylinders of what one turning moves, until each is read after it', () => {
    for (const id of ['timing', 'top'] as const) {
      const from = finished();
      const aim = passing(from, id);
      const turned = setEntry(from, id, 'left', 0, aim + 0.01, { kind: 'change' });
      expect(progressOf(turned)[id]).toMatchObject({
        state: 'again',
        because: [id],
        stale: [1, 2],
      });
      const { rows, whole } = judge(turned, id, 'mm');
      expect(rows.map(({ result }) => result)).toEqual(['pass', 'unjudged', 'unjudged']);
      expect(rows[1]!.words).toMatch(
        /^not judged: .* was read before the last change\. .*read this one again(, or say that only the other’s set was moved)?\.$/i,
      );
      expect(whole.join(' ')).not.toMatch(/plate|set/);
      expect(nextDue(turned, progressOf(turned), { step: id, index: 0 })).toEqual({
        step: id,
        index: 1,
      });
      const two = setEntry(turned, id, 'left', 1, aim + 0.01, { kind: 'change' });
      expect(progressOf(two)[id].stale).toEqual([2]);
      const all = setEntry(two, id, 'left', 2, aim, { kind: 'check' });
      expect(progressOf(all)[id]).toMatchObject({ state: 'pass', stale: [] });
      // Turned once more, and read at one: the others were read before it.
      const more = setEntry(all, id, 'left', 1, aim - 0.01, { kind: 'change' });
      expect(progressOf(more)[id].stale).toEqual([0, 2]);
      // A check says nothing of the others, and what comes from elsewhere says the same.
      const looked = setEntry(all, id, 'left', 1, aim - 0.01, { kind: 'check' });
      expect(progressOf(looked)[id].stale).toEqual([]);
      const kept = parseDocument(writeDocument([more])).engines[0]!;
      expect(progressOf(kept)[id]).toEqual(progressOf(more)[id]);
      const linked = withLinkDays({ ...more, log: [] }, linkDays(more))!;
      expect(progressOf(linked)[id].stale).toEqual([0, 2]);
    }
    expect(order.filter((id) => steps[id].reading?.movesAll)).toEqual(['top', 'timing']);
  });

  it('no amount is ordered of a plate that was turned since the other cylinder was read', () => {
    const two = { ...figured(), figures: { ...figured().figures, cylinders: 2, target: 2.6 } };
    let engine = setEntry(setEntry(two, 'timing', 'found', 0, 2.1), 'timing', 'found', 1, 2.9);
    const asked = judge(engine, 'timing', 'mm').whole.join(' ');
    expect(asked).toContain('Turn the plate');
    engine = setEntry(engine, 'timing', 'left', 0, 2.62, { kind: 'change' });
    const said = judge(engine, 'timing', 'mm');
    expect(said.rows.map(({ result }) => result)).toEqual(['pass', 'unjudged']);
    expect(said.whole).toEqual([]);
    expect(lastAsked(engine, 'timing', 'mm')?.sentences.join(' ')).toContain('Turn the plate');
    expect(fillFrom(engine, 'plate-setting', ['fired-1', 'fired-2'])).not.toHaveProperty('fired-2');
    // Nor afterwards, as what was asked for before: that was of two readings of one day.
    const out = setEntry(engine, 'timing', 'left', 0, 2.9, { kind: 'change' });
    const again = setEntry(out, 'timing', 'left', 0, 2.64, { kind: 'change' });
    expect(lastAsked(again, 'timing', 'mm')).toMatchObject({ asFound: false });
    expect(lastAsked(again, 'timing', 'mm')?.sentences.join(' ')).not.toMatch(/plate|Cylinder 2/);
    const read = setEntry(engine, 'timing', 'left', 1, 3.4, { kind: 'change' });
    expect(judge(read, 'timing', 'mm').whole.join(' ')).toMatch(
      /Cylinder 2: move its set .* later/,
    );
  });

  it('what is to be corrected stands against firing the engine, ticked or not', () => {
    const early = setEntry(finished(), 'timing', 'left', 0, 4, { kind: 'check' });
    const progress = progressOf(early);
    for (const id of ['start', 'run'] as const) {
      expect(progress[id]).toMatchObject({ state: 'again', against: ['timing'] });
    }
    // What is out comes before what is only not done, and leads on from the first fire.
    const { leak: _, start: __, run: ___, ...others } = early.readings;
    expect(progressOf({ ...early, readings: others }).start.against).toEqual(['timing', 'leak']);
    expect(progress.hot.against).toEqual([]);
    const [said] = againstWords(early, progress.start.against, 'mm');
    expect(said).toMatchObject({ spot: { step: 'timing', index: 0 }, title: steps.timing.title });
    expect(said!.asks).toMatch(/^Cylinder 1: .*early/);
    expect(progressOf(setDone(early, 'start', false)).start).toMatchObject({
      state: 'open',
      against: ['timing'],
    });
    expect(progressOf(finished()).start.against).toEqual([]);
    // A piston that strikes the head is no matter of a step that was never done.
    const struck = setEntry(finished(), 'squish', 'left', 0, 0.1, { kind: 'check' });
    expect(progressOf(struck).squish.state).toBe('fail');
    expect(progressOf(struck).start).toMatchObject({ state: 'again', against: ['squish'] });
  });

  it.each(beforeFire)('%s comes before firing the engine', (id) => {
    const engine = finished();
    const { [id]: _, start, ...others } = engine.readings;
    const without = { ...engine, readings: others };
    const progress = progressOf(without);
    expect(progress.start).toMatchObject({ state: 'open', against: [id] });
    // An engine that has been fired is not told that it was not.
    const fired = progressOf({ ...without, readings: { ...others, start } });
    expect(fired.start).toMatchObject({ state: 'pass', against: [] });
    const [said] = againstWords(without, progress.start.against, 'mm');
    expect(said).toMatchObject({ spot: { step: id, index: 0 }, title: steps[id].title });
    expect(said!.asks).toBe(`Not proved yet. ${steps[id].beforeFire}`);
  });

  it('one that is read, but that nothing judges, comes before it too', () => {
    const { start: _, run: __, ...readings } = finished().readings;
    const { target: ___, ...figures } = figured().figures;
    const engine = { ...finished(), figures, readings };
    const { against } = progressOf(engine).start;
    expect(against).toEqual(['timing']);
    const [said] = againstWords(engine, against, 'mm');
    expect(said!.asks).toMatch(
      /^Read, but nothing judges it: the sheet lacks “[^”]+”\. With a spark that comes far too early/,
    );
    // One that other figures of the sheet speak against is not proved either, and says why.
    const stopped = { ...finished(), readings };
    const drained = setFigure(setFigure(stopped, 'volts', 6), 'feed-drop', 7);
    const lost = setEntry(drained, 'wiring', 'left', 0, 6.5);
    const [wiring] = againstWords(lost, progressOf(lost).start.against, 'mm');
    expect(wiring!.asks).toMatch(/^not judged: .* battery of 6 V/);
  });

  it('nothing else that is merely not done keeps an engine from being fired', () => {
    expect(progressOf(figured()).start.against).toEqual(beforeFire);
    expect(order.filter((id) => steps[id].beforeFire)).toEqual(beforeFire);
    const fed = setFigure(figured(), 'fed-coils', 0);
    expect(progressOf(fed).start.against).toEqual(beforeFire.filter((id) => id !== 'wiring'));
  });

  it('nor is it fired while anything before it is to be checked again, also where it was fired before', () => {
    const { start: _, run: __, ...readings } = finished().readings;
    for (const engine of [finished(), { ...finished(), readings }]) {
      const moved = alter(engine, 'timing');
      const { start } = progressOf(moved);
      expect(start.against).toEqual(['gap']);
      const [said] = againstWords(moved, start.against, 'mm');
      expect(said).toMatchObject({ spot: { step: 'gap', index: 0 } });
      expect(said!.asks).toBe(`To be checked again. ${steps.gap.movedBy!.timing!}`);
      expect(progressOf(confirm(moved, 'gap')).start.against).toEqual([]);
    }
    // Of two fires the later is not told that the earlier waits.
    expect(progressOf(alter(finished(), 'start')).run.against).toEqual([]);
    // One that was read before the plate was turned has the plate as its reason.
    const two = pass({ ...figured(), figures: { ...figured().figures, cylinders: 2 } }, 'timing');
    const turned = setEntry(two, 'timing', 'left', 0, 2.22, { kind: 'change' });
    const { against } = progressOf(turned).start;
    const timing = againstWords(turned, against, 'mm').find(({ spot }) => spot.step === 'timing');
    expect(timing?.asks).toBe(`To be checked again. ${steps.timing.reading!.movesAll!}`);
  });

  it('and the page of the first start is told how many steps before it are open', () => {
    expect(openBefore(finished(), progressOf(finished()))).toEqual([]);
    const moved = alter(finished(), 'gap');
    expect(openBefore(moved, progressOf(moved))).toEqual(['timing']);
    const none = figured();
    expect(openBefore(none, progressOf(none))).toEqual(
      jobOf(none).slice(0, jobOf(none).indexOf('start')),
    );
    const words = figuresAtHand({ ...figured(), firingOrder: [1, 2, 3] }, 'mm').join('; ');
    expect(words).toContain('Points gap: 0.4 mm');
    expect(words).toContain('Leads in firing order: coil 1 to plug 1');
    expect(words).toMatch(/Fires before top dead centre: .*; Plug gap: .*; Fuel to oil: /);
    expect(figuresAtHand(newEngine('e-9', 'New'), 'mm')).toContain('Points gap: not entered');
  });

  it('both ways between two that move each other, and comes to an end', () => {
    const moved = alter(finished(), 'exhaust');
    expect(progressOf(moved).squish.because).toEqual(['exhaust']);
    const measured = confirm(moved, 'squish');
    expect(progressOf(measured).squish.state).toBe('pass');
    const shimmed = setEntry(measured, 'squish', 'left', 0, 1.25);
    expect(progressOf(shimmed).exhaust.because).toEqual(['squish']);
    const proved = confirm(shimmed, 'exhaust');
    expect(progressOf(proved).squish.state).toBe('pass');
    expect(progressOf(proved).exhaust.state).toBe('pass');
  });

  it('until it is measured anew where a look cannot settle it', () => {
    expect(needsReading('squish', ['exhaust'])).toBe(true);
    expect(needsReading('squish', ['ring-gap'])).toBe(false);
    expect(needsReading('timing', ['gap'])).toBe(false);
    for (const id of order) {
      for (const other of steps[id].readAnew ?? []) {
        expect(steps[id].reading, id).toBeDefined();
        expect(reopening(id, other as StepId), `${other}, ${id}`).toBeDefined();
      }
    }
  });

  it('until it is confirmed', () => {
    const confirmed = confirm(alter(finished(), 'gap'), 'timing');
    expect(progressOf(confirmed).timing.state).toBe('pass');
  });

  it('and says what has not been done before it', () => {
    expect(progressOf(alter(finished(), 'gap')).start.waits).toEqual(['timing']);
    expect(progressOf(alter(finished(), 'exhaust')).start.waits).toEqual([
      'squish',
      'head-volume',
      'inlet',
      'leak',
      'suction',
      'compression',
    ]);
    expect(progressOf(figured()).timing.waits).toEqual(needs('timing'));
  });

  it('says nothing of a step that was not begun', () => {
    const engine = alter(pass(figured(), 'gap'), 'gap');
    expect(progressOf(engine).timing).toMatchObject({ state: 'open', because: [] });
  });
});

describe('a step that the engine has not', () => {
  /** By which answer each falls away, and one that leaves it in; written by hand. */
  const answers: readonly (readonly [
    StepId,
    FigureKey,
    gone: number,
    there: number | undefined,
  ])[] = [
    ['inlet', 'reeds', 6, 0],
    ['inlet', 'reeds', 6, undefined],
    ['reeds', 'reeds', 0, 6],
    ['plate', 'cylinders', 1, 2],
    ['condenser', 'condensers', 0, 1],
    ['condenser', 'condensers', 0, undefined],
    ['polarity', 'fed-coils', 0, 3],
    ['slides', 'cylinders', 1, undefined],
    ['wiring', 'fed-coils', 0, undefined],
    ['leads', 'cylinders', 1, 2],
    ['cutaway', 'throttle-slides', 0, undefined],
    ['cables', 'throttle-slides', 0, 1],
    ['slides', 'throttle-slides', 0, undefined],
    ['clip', 'jet-needles', 0, undefined],
    ['screws', 'pilot-jets', 0, 1],
    ['pilot', 'pilot-jets', 0, undefined],
  ];

  it.each(answers)('%s goes by the answer to “%s”', (id, key, gone, there) => {
    // A slide that hangs on an idle screw keeps its step, whatever jets there are.
    const engine = id === 'screws' ? setFigure(figured(), 'throttle-slides', 0) : figured();
    expect(jobOf(setFigure(engine, key, gone))).not.toContain(id);
    expect(jobOf(setFigure(engine, key, there))).toContain(id);
  });

  it('is not the idle screw of a slide, whatever jets its carburettor lacks', () => {
    expect(jobOf(setFigure(figured(), 'pilot-jets', 0))).toContain('screws');
  });

  it('is named with its reason, and no other has one', () => {
    const falling = order.filter((id) => steps[id].fallsAway);
    expect(falling).toEqual(order.filter((id) => answers.some(([other]) => other === id)));
    for (const id of falling) expect(steps[id].fallsAway?.why).toMatch(/^[a-z].*[^.]$/);
  });

  it('is waited for by none, moves none, and is not the next', () => {
    const answered: Partial<Record<FigureKey, number>> = {
      cylinders: 1,
      reeds: 0,
      condensers: 0,
      'fed-coils': 0,
    };
    const blank: Engine = { ...newEngine('e-2', 'Single'), figures: answered };
    const single = jobOf(blank).reduce(pass, {
      ...blank,
      figures: { ...figured().figures, ...answered },
    });
    expect(nextStep(progressOf(single))).toBeUndefined();
    const moved = alter(finished(), 'slides');
    expect(progressOf(moved).stop.because).toEqual(['slides']);
    expect(progressOf(setFigure(moved, 'cylinders', 1)).stop.because).toEqual([]);
    const progress = progressOf(blank);
    for (const id of order) {
      for (const other of progress[id].waits) expect(jobOf(blank)).toContain(other);
    }
  });

  it('is none of a sheet that says nothing yet, but for what stands in another’s place', () => {
    const nothing = newEngine('e-3', 'New');
    expect(order.filter((id) => !jobOf(nothing).includes(id))).toEqual(['reeds']);
  });
});

it('a step of which the engine has one has one box, however many cylinders', () => {
  const once = order.filter((id) => steps[id].reading?.once);
  expect(once).toEqual(['end-float', 'plate-fit']);
  const one = setEntry(figured(), 'end-float', 'found', 0, 0.2);
  expect(progressOf(one)['end-float'].state).toBe('pass');
  expect(boxName(steps['end-float'].reading!, 0, one)).toBe('Crank');
});

describe('a reading', () => {
  it('as found alters nothing, as left it does', () => {
    const found = setEntry(finished(), 'gap', 'found', 0, 0.41);
    expect(progressOf(found).timing.state).toBe('pass');
    const same = setEntry(finished(), 'gap', 'left', 0, 0.4);
    expect(progressOf(same).timing.state).toBe('pass');
  });

  it('a check alters nothing, and what it finds out of its limits is to be corrected', () => {
    const checked = setEntry(finished(), 'gap', 'left', 0, 0.39, { kind: 'check' });
    expect(progressOf(checked).timing.state).toBe('pass');
    const out = setEntry(finished(), 'gap', 'left', 0, 0.3, { kind: 'check' });
    expect(progressOf(out).gap.state).toBe('fail');
    expect(progressOf(out).timing.because).toEqual([]);
    const corrected = setEntry(out, 'gap', 'left', 0, 0.4);
    expect(progressOf(corrected).timing.because).toEqual(['gap']);
  });

  it('as left alters when it is taken out, unless what was found holds then', () => {
    const same = setEntry(finished(), 'gap', 'left', 0, 0.4);
    expect(progressOf(setEntry(same, 'gap', 'left', 0, null)).timing.state).toBe('pass');
    const confirmed = confirm(alter(finished(), 'gap'), 'timing');
    const gone = setEntry(confirmed, 'gap', 'left', 0, null);
    expect(progressOf(gone).timing.because).toEqual(['gap']);
  });

  it('typed digit by digit alters only by what it comes to', () => {
    const before = {
      entry: null,
      changed: readingOf(finished(), 'gap').changed,
    };
    let engine = finished();
    let written: WrittenLast | undefined;
    for (const value of [0, 0.4]) {
      engine = retype(engine, 'gap', 'left', 0, value, before, written);
      written = writtenLast(engine, 'gap');
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

it('keeps results until there is no more room, and then says so', () => {
  const result = { label: 'a', text: '', calculator: 'c', query: '' };
  const room = Array.from({ length: LIMITS.kept }, () => result);
  const full = room.reduce(keep, figured());
  expect(full.kept).toHaveLength(LIMITS.kept);
  expect(() => keep(full, result)).toThrow('all it has room for');
  expect(() => keep(figured(), { ...result, text: 'x'.repeat(201) })).toThrow('longer than');
  expect(() => keep(figured(), { ...result, query: 'x'.repeat(2001) })).toThrow('2001 characters');
});
