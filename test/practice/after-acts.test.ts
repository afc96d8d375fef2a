import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleAfter, angleBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { gapOf, setUp, type Act, type Bench } from '../../calculators/practice/bench.ts';
import { inventEngine, type Engine } from '../../calculators/practice/engine.ts';
import { inventFloat, setUpFloat, tubeShows, workFloat } from '../../calculators/practice/float.ts';
import { discExactly, discShows, lampWord } from '../../calculators/practice/instruments.ts';
import { reckon } from '../../calculators/practice/reckoning.ts';
import {
  DRILLS,
  drillFits,
  inventSlides,
  setUpSlides,
  workSlides,
  type SlidesAct,
} from '../../calculators/practice/slides.ts';
import { work } from '../../calculators/practice/work.ts';

const after = (engine: Engine, acts: readonly Act[], from = setUp(engine)): Bench =>
  acts.reduce((bench, act) => work(engine, bench, act), from);
const toldOf = (engine: Engine, bench: Bench): string =>
  reckon(engine, bench)
    .costs.map(({ say }) => say)
    .join('\n');

describe('what is in the plug hole', () => {
  const engine = inventEngine(4711, 'plate');

  it('is no stop once another cylinder is taken, and the indicator is to be zeroed anew', () => {
    const stop = after(engine, [{ act: 'put', inHole: 'stop' }]);
    expect(stop.inHole).toBe('stop');
    expect(after(engine, [{ act: 'cylinder', cylinder: 1 }], stop).inHole).toBe('nothing');
    const dial = after(engine, [{ act: 'put', inHole: 'indicator' }]);
    const other = after(engine, [{ act: 'cylinder', cylinder: 1 }], dial);
    expect(other.inHole).toBe('indicator');
    expect(other.zero).not.toBe(dial.zero);
    expect(other.said).toContain('Zero the indicator at its top');
  });

  it('takes no stop while the piston stands in its way', () => {
    const up = after(engine, [{ act: 'turn', by: -setUp(engine).crank }]);
    const refused = after(engine, [{ act: 'put', inHole: 'stop' }], up);
    expect(refused.inHole).toBe('nothing');
    expect(refused.said).toContain('The stop meets the crown');
  });

  it('set upright, the indicator wants its zero again', () => {
    const dial = after(engine, [{ act: 'put', inHole: 'indicator' }]);
    const upright = after(engine, [{ act: 'straighten' }], dial);
    expect(upright.zero).not.toBe(dial.zero);
    expect(upright.said).toContain('Zero it again');
  });
});

it('turned backwards, a crank comes to the same in one turn of the hand as in many', () => {
  const engine = inventEngine(4711, 'plate');
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 900, noNaN: true }), (by) => {
      const once = after(engine, [{ act: 'turn', by: -by }]);
      const steps = Array.from({ length: 97 }, (): Act => ({ act: 'turn', by: -by / 97 }));
      const often = after(engine, steps);
      once.travels.forEach((travel, i) => expect(often.travels[i]).toBeCloseTo(travel, 6));
    }),
  );
});

it('a kick is told to be too fast to read by, and an end of travel to be one', () => {
  const engine = inventEngine(4711, 'gap');
  expect(after(engine, [{ act: 'kick' }]).said).toContain('too fast to read anything');
  for (const act of ['screw', 'plate', 'slot'] as const) {
    for (const way of [1, -1]) {
      expect(after(engine, [{ act, by: way * 1000 }]).said).toBe('It is at the end of its travel.');
      expect(after(engine, [{ act, by: way }]).said).toBe('');
    }
  }
});

it('the pad keeps the latest forty lines', () => {
  const engine = inventEngine(4711, 'stop');
  const lines = Array.from({ length: 45 }, (): Act[] => [{ act: 'turn', by: 2 }, { act: 'note' }]);
  const bench = after(engine, lines.flat());
  expect(bench.notes).toHaveLength(40);
  expect(bench.notes.at(-1)!.disc).toBe(discShows(engine, bench));
});

describe('the timing', () => {
  it('found backwards is no reading of it, found forwards is one', () => {
    const engine = inventEngine(4711, 'gap');
    const until = (by: number, from: Bench): Bench => {
      const before = lampWord(engine, from);
      let bench = from;
      for (let i = 0; i < 400 && lampWord(engine, bench) === before; i += 1)
        bench = after(engine, [{ act: 'turn', by }], bench);
      return bench;
    };
    const ready = after(engine, [
      { act: 'coil', on: false },
      { act: 'put', inHole: 'indicator' },
    ]);
    const back = until(-1, ready);
    expect(back.found[0]).toMatchObject({ way: -1, times: 0 });
    expect(until(1, back).found[0]).toMatchObject({ way: 1, times: 1 });
  });

  it('was set for the one set whose slot was moved, and for all by the plate', () => {
    const engine = inventEngine(4711, 'plate');
    const bare = setUp(engine);
    const gap = (set: number): number => gapOf(engine, bare, set);
    const slot = after(engine, [
      { act: 'cylinder', cylinder: 1 },
      { act: 'slot', by: 0 },
    ]);
    expect(slot.timedAtGap).toEqual([undefined, gap(1), undefined]);
    expect(after(engine, [{ act: 'plate', by: 0.2 }]).timedAtGap).toEqual([0, 1, 2].map(gap));
  });

  it('is told to have been moved by a gap that was changed after it, and not before', () => {
    const engine = inventEngine(4711, 'gap');
    const [time, gap] = [
      { act: 'plate', by: 0.3 },
      { act: 'screw', by: 60 },
    ] as const;
    const words = 'The gap was changed after the timing was set';
    expect(toldOf(engine, after(engine, [time, gap]))).toContain(words);
    expect(toldOf(engine, after(engine, [gap, time]))).not.toContain(words);
  });
});

it('a disc off centre that was set by pointer A alone is told of, and by both pointers is not', () => {
  const engine = inventEngine(77, 'disc');
  const { geometry, stopHeight } = engine.hidden;
  const bench = setUp(engine);
  const shown = (pointer: 'A' | 'B', discShift: number): number => {
    const sides = [-angleBefore(geometry, stopHeight), angleAfter(geometry, stopHeight)];
    const of = (crank: number) =>
      discExactly(engine, { crank, discShift, pointer: 0 }, pointer) -
      (pointer === 'B'
        ? 180 * Math.sign(discExactly(engine, { crank, discShift, pointer: 0 }, 'B'))
        : 0);
    return sides.reduce((sum, crank) => sum + of(crank), 0) / 2;
  };
  const alone = 'taken from pointer A alone';
  const notes = ([1, -1] as const).map((way) => ({
    ...{ cylinder: 0, dial: undefined, disc: 0, standing: 0, lamp: '', rising: true, way },
  }));
  const settle = (middle: (shift: number) => number): number => {
    let shift = 0;
    for (let i = 0; i < 20; i += 1) shift -= middle(shift);
    return shift;
  };
  const byA = settle((shift) => shown('A', shift));
  const off = { ...bench, notes, discShift: byA };
  expect(reckon(engine, off).worst).toBeGreaterThan(0.08);
  expect(toldOf(engine, off)).toContain(alone);
  const other = {
    ...bench,
    notes,
    discShift: 2 * settle((s) => discExactly(engine, { crank: 0, discShift: s, pointer: 0 })) - byA,
  };
  expect(toldOf(engine, other)).not.toContain(alone);
});

it('of the readings written down the bad one is ruled wrong, and no other', () => {
  for (let number = 0; number < 60; number += 1) {
    const engine = inventEngine(number, 'reading');
    const { lines } = reckon(engine, setUp(engine), engine.hidden.odd);
    expect(lines.map(({ right }) => right)).toEqual(
      lines.map((_, set) => set !== engine.hidden.odd),
    );
  }
});

describe('slides and float', () => {
  it('a shank found under a slide that hangs counts no more once the grip was worked', () => {
    const slides = inventSlides(4711);
    const run = (acts: readonly SlidesAct[], from = setUpSlides(slides)) =>
      acts.reduce((bench, act) => workSlides(slides, bench, act), from);
    const hanging = run([{ act: 'adjust', by: 0.5 }]);
    const shank = (bench: typeof hanging): number =>
      DRILLS.find((drill) => drillFits(bench, drill) === 'drags')!;
    const tried = run([{ act: 'try', drill: shank(hanging) }], hanging);
    expect(tried.found[0]).toBe(shank(hanging));
    const worked = run([{ act: 'grip' }], tried);
    expect(worked.found[0]).toBeUndefined();
    const again = run([{ act: 'try', drill: shank(worked) }, { act: 'grip' }], worked);
    expect(again.found[0]).toBe(shank(worked));
  });

  it('a full chamber says that its tang cannot be reached', () => {
    const full = workFloat(setUpFloat(), { act: 'fill' });
    expect(workFloat(full, { act: 'bend', by: 1 }).said).toContain('Drain it first');
    expect(tubeShows(inventFloat(7), full)).toBeDefined();
  });
});
