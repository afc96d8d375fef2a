import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crankDegreesPerGap, opensBefore } from '../../calculators/maths/ignition/breaker-cam.ts';
import { travelAt } from '../../calculators/maths/crank/slider-crank.ts';
import {
  dialShows,
  discExactly,
  discShows,
  eccentric,
  fitOf,
  lampPower,
  opening,
  wrapped,
} from '../../calculators/practice/instruments.ts';
import { firesAt, reckon } from '../../calculators/practice/reckoning.ts';
import { gapOf, setUp, type Act, type Bench } from '../../calculators/practice/bench.ts';
import { inventEngine, targetAngle, type Engine } from '../../calculators/practice/engine.ts';
import { inventFloat } from '../../calculators/practice/float.ts';
import { inventSlides } from '../../calculators/practice/slides.ts';
import { crankTasks, taskNames, tasks, type CrankTask } from '../../calculators/practice/tasks.ts';
import { work } from '../../calculators/practice/work.ts';
import { Player } from './player.ts';

const KEPT = new URL('kept-engines.json', import.meta.url);

/** Figures to ten digits: the sines of two machines may differ in the sixteenth. */
const keptText = (): string =>
  JSON.stringify(
    [0, 4711, 999_999].map((number) => ({
      number,
      engines: crankTasks.map((task) => inventEngine(number, task)),
      slides: inventSlides(number),
      float: inventFloat(number),
    })),
    (_, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(10)) : value),
  );

describe('an engine', () => {
  it('is the same for ever: these were written down', () => {
    expect(JSON.parse(keptText())).toEqual(JSON.parse(readFileSync(KEPT, 'utf8')));
  });

  it('differs from its neighbours', () => {
    const numbers = Array.from({ length: 500 }, (_, i) => i);
    const lobes = numbers.map((number) => inventEngine(number, 'gap').hidden.cam.top);
    expect(new Set(lobes).size).toBe(numbers.length);
    const steps = lobes.slice(1).map((lobe, i) => Math.abs(lobe - lobes[i]!));
    expect(Math.min(...steps)).not.toBe(Math.max(...steps));
    const mean = lobes.reduce((sum, lobe) => sum + lobe, 0) / lobes.length;
    expect(mean).toBeGreaterThan(107);
    expect(mean).toBeLessThan(113);
  });

  it('is one that can be set: every task on a thousand of them', () => {
    for (let number = 0; number < 1000; number += 1) {
      for (const task of crankTasks) {
        const engine = inventEngine(number, task);
        const bench = setUp(engine);
        expect(bench.travels).toHaveLength(tasks[task].cylinders);
        expect(targetAngle(engine)).toBeGreaterThan(14);
        expect(targetAngle(engine)).toBeLessThan(32);
        bench.travels.forEach((_, set) => {
          const gap = gapOf(engine, bench, set);
          expect(gap).toBeGreaterThan(0.1);
          expect(gap).toBeLessThan(engine.hidden.cam.lift - 0.1);
        });
      }
    }
  });

  it('is not right as it comes, but where the task is to name a reading', () => {
    for (let number = 0; number < 200; number += 1) {
      for (const task of crankTasks) {
        const engine = inventEngine(number, task);
        expect(reckon(engine, setUp(engine)).right, `${task} ${number}`).toBe(false);
      }
    }
  });
});

describe('the points', () => {
  it('open where the maths package has them open, the play taken up forwards', () => {
    for (const number of [3, 30, 300]) {
      const player = new Player(number, 'gap');
      player.lampOn();
      player.until(1, () => player.lamp() === 'lit');
      player.until(1, () => player.lamp() === 'out');
      player.turn(-6);
      player.until(0.01, () => player.lamp() === 'out');
      const { crank } = player.bench;
      const fires = firesAt(player.engine, player.bench, 0);
      expect((((-crank - fires) % 360) + 360.02) % 360).toBeLessThan(0.04);
    }
  });

  it('open earlier by what the maths package says for a wider gap', () => {
    const engine = inventEngine(5, 'gap');
    const before = setUp(engine);
    const after = work(engine, before, { act: 'screw', by: 1 });
    const { cam } = engine.hidden;
    const wider = gapOf(engine, after, 0) - gapOf(engine, before, 0);
    const earlier = firesAt(engine, after, 0) - firesAt(engine, before, 0);
    expect(earlier).toBeCloseTo(crankDegreesPerGap(cam, gapOf(engine, before, 0)) * wider, 3);
    expect(earlier).toBeCloseTo(
      opensBefore(cam, gapOf(engine, after, 0)) - opensBefore(cam, gapOf(engine, before, 0)),
      9,
    );
  });

  it('are gauged by the leaf that is nearest, with the heel on the lobe', () => {
    const player = new Player(8, 'heel');
    player.lampOn();
    player.ontoLobe();
    const wide = opening(player.engine, player.bench);
    expect(wide).toBeCloseTo(gapOf(player.engine, player.bench, 0), 9);
    expect(fitOf(player.engine, player.bench, wide)).toBe('drags');
    expect(fitOf(player.engine, player.bench, wide - 0.02)).toBe('loose');
    expect(fitOf(player.engine, player.bench, wide + 0.02)).toBe('no-go');
  });

  it('tell the lamp next to nothing while the coil’s wire is on', () => {
    const player = new Player(8, 'gap');
    const seen = new Set<number>();
    for (let turn = 0; turn < 360; turn += 2) {
      player.turn(2);
      seen.add(lampPower(player.engine, player.bench));
    }
    expect(Math.min(...seen)).toBeGreaterThan(0.8);
    expect(seen.size).toBe(2);
  });
});

describe('the disc', () => {
  it('shifted on the crank the way the engine turns, shows as much more', () => {
    const engine = inventEngine(1, 'stop');
    const turned = work(engine, setUp(engine), { act: 'turn', by: 10 });
    const shifted = work(engine, turned, { act: 'disc', by: 7 });
    // As if the crank had been turned on by as much with the disc on it.
    const on = wrapped(discExactly(engine, shifted) - discExactly(engine, turned));
    expect(on).toBeCloseTo(7, 5);
  });

  it('shows the true angle where it is centred', () => {
    for (const angle of [-170, -3, 0, 44, 271]) {
      expect(eccentric(angle, 0, 77, 78)).toBeCloseTo(angle, 9);
    }
  });

  it('off centre is right in the mean of two opposite pointers, to the second order', () => {
    for (let angle = 0; angle < 360; angle += 15) {
      const mean = (eccentric(angle, 1, 40, 78) + eccentric(angle + 180, 1, 40, 78) - 180) / 2;
      expect(Math.abs(mean - angle)).toBeLessThan(0.006);
    }
    const off = Array.from({ length: 360 }, (_, i) => Math.abs(eccentric(i, 1, 40, 78) - i));
    // The most is asin(e / r), as for any circle read about another centre.
    expect(Math.max(...off)).toBeCloseTo((Math.asin(1 / 78) * 180) / Math.PI, 3);
  });
});

describe('the pointer', () => {
  const bend = fc.double({ min: -12, max: 12, noNaN: true });
  const turns = fc.array(fc.double({ min: -300, max: 300, noNaN: true }), { maxLength: 6 });
  const after = (engine: Engine, acts: readonly Act[]): Bench =>
    acts.reduce((bench, act) => work(engine, bench, act), setUp(engine));

  it('bent the way the engine turns shows less by as much, wherever the crank stands', () => {
    const engine = inventEngine(4711, 'stop');
    const centred = { ...engine, hidden: { ...engine.hidden, discOff: 0 } };
    fc.assert(
      fc.property(bend, turns, (by, ways) => {
        const bench = after(
          centred,
          ways.map((way) => ({ act: 'turn', by: way })),
        );
        const less = discExactly(centred, work(centred, bench, { act: 'pointer', by }));
        expect(wrapped(discExactly(centred, bench) - less - by)).toBeCloseTo(0, 5);
      }),
    );
  });

  it('bent shows what it shows with the disc shifted the other way, on a disc off centre too', () => {
    const engine = inventEngine(77, 'disc');
    fc.assert(
      fc.property(bend, turns, (by, ways) => {
        const bench = after(
          engine,
          ways.map((way) => ({ act: 'turn', by: way })),
        );
        const bent = work(engine, bench, { act: 'pointer', by });
        const shifted = work(engine, bench, { act: 'disc', by: -by });
        expect(wrapped(discExactly(engine, bent) - discExactly(engine, shifted))).toBeCloseTo(0, 5);
        expect(discExactly(engine, bent, 'B')).toBe(discExactly(engine, bench, 'B'));
        expect([bent.crank, bent.cam, bent.travels]).toEqual([
          bench.crank,
          bench.cam,
          bench.travels,
        ]);
      }),
    );
  });

  it('bends no further than its wire allows, and says so', () => {
    const engine = inventEngine(4711, 'stop');
    for (const way of [1, -1]) {
      const bench = after(
        engine,
        [9, 9].map((by) => ({ act: 'pointer', by: by * way })),
      );
      expect(bench.pointer).toBe(12 * way);
      expect(bench.said).toContain('bends no further');
    }
    const far = after(engine, [{ act: 'pointer-zero' }]);
    expect([Math.abs(far.pointer), far.said]).toEqual([12, 'The pointer bends no further.']);
  });

  it('bent to 0 shows 0 there, and is told of by what the disc shows at the true top', () => {
    const engine = inventEngine(4711, 'stop');
    const { crank } = setUp(engine);
    const bench = after(engine, [{ act: 'turn', by: 0.3 - crank }, { act: 'pointer-zero' }]);
    expect(discShows(engine, bench)).toBe(0);
    const [line] = reckon(engine, bench).lines;
    expect(line!.set).toBeCloseTo(-0.3, 0.5);
    expect(line!.right).toBe(true);
    const again = work(engine, bench, { act: 'pointer', by: 1 });
    expect(reckon(engine, again).lines[0]!.set).toBeCloseTo(line!.set - 1, 2);
  });

  it('moved between the two readings spoils them, and the reckoning says so', () => {
    const engine = inventEngine(4711, 'stop');
    const pair = (between: readonly Act[]): string =>
      reckon(
        engine,
        after(engine, [
          { act: 'put', inHole: 'stop' },
          { act: 'turn', by: 400 },
          { act: 'note' },
          ...between,
          { act: 'turn', by: -400 },
          { act: 'note' },
        ]),
      )
        .costs.map(({ say }) => say)
        .join(' ');
    const moved = 'Disc or pointer was moved between';
    expect(pair([])).not.toContain(moved);
    expect(pair([{ act: 'pointer', by: 2 }])).toContain(moved);
    expect(pair([{ act: 'disc', by: -2 }])).toContain(moved);
    // Both moved, they stand to one another as they did.
    expect(
      pair([
        { act: 'disc', by: 2 },
        { act: 'pointer', by: 2 },
      ]),
    ).not.toContain(moved);
  });
});

it('a disc that was not looked at again after it was set is told of by what it cost', () => {
  const engine = inventEngine(4711, 'stop');
  const pair: readonly Act[] = [
    { act: 'turn', by: 400 },
    { act: 'note' },
    { act: 'turn', by: -400 },
    { act: 'note' },
  ];
  const costs = (acts: readonly Act[]) =>
    reckon(
      engine,
      acts.reduce((bench, act) => work(engine, bench, act), setUp(engine)),
    ).costs.filter(({ say }) => say.includes('not checked after it was set'));
  const once: readonly Act[] = [{ act: 'put', inHole: 'stop' }, ...pair, { act: 'disc', by: 2 }];
  const [told] = costs(once);
  expect(told!.cost).toBeCloseTo(
    Math.abs(
      reckon(
        engine,
        once.reduce((b, a) => work(engine, b, a), setUp(engine)),
      ).lines[0]!.error,
    ),
    9,
  );
  expect(costs([...once, ...pair])).toEqual([]);
});

describe('an indicator that leans', () => {
  const leaning = Array.from({ length: 60 }, (_, i) => inventEngine(i, 'gap')).filter(
    ({ hidden }) => hidden.lean > 6,
  );

  it('shows the travel along its own axis: more, by the cosine of its lean', () => {
    for (const engine of leaning.slice(0, 8)) {
      const { geometry, lean, rodPlay, stick } = engine.hidden;
      const at = (bench: Bench, by: number): Bench => work(engine, bench, { act: 'turn', by });
      const start = setUp(engine);
      const top = at(
        work(engine, at(start, -20 - start.crank), { act: 'put', inHole: 'indicator' }),
        20,
      );
      const zeroed = work(engine, top, { act: 'zero' });
      const shown = dialShows(engine, at(at(zeroed, -60), 20))!;
      const travel = travelAt(geometry, -40);
      const most = (2 * stick + rodPlay) / Math.cos((lean * Math.PI) / 180) + 0.011;
      expect(Math.abs(shown - travel / Math.cos((lean * Math.PI) / 180))).toBeLessThan(most);
      expect(shown).toBeGreaterThan(travel);
    }
  });

  it('errs anew at each coming to a place, and never by more than its stickiness', () => {
    const engine = leaning[0]!;
    let bench = work(engine, work(engine, setUp(engine), { act: 'put', inHole: 'indicator' }), {
      act: 'straighten',
    });
    bench = work(engine, bench, { act: 'turn', by: -30 - bench.crank });
    const seen = Array.from({ length: 20 }, () => {
      for (const by of [-5, 5]) bench = work(engine, bench, { act: 'turn', by });
      return dialShows(engine, bench)!;
    });
    expect(new Set(seen).size).toBeGreaterThan(1);
    expect(Math.max(...seen) - Math.min(...seen)).toBeLessThanOrEqual(
      2 * engine.hidden.stick + 0.011,
    );
  });
});

it('the last reading come to backwards is told with what it cost', () => {
  const player = new Player(12, 'gap');
  player.lampOn();
  player.setGap(player.card.gap);
  player.zeroIndicator();
  player.until(2, () => player.lamp() === 'lit');
  player.until(2, () => player.lamp() === 'out');
  player.until(-0.1, () => player.lamp() === 'lit');
  const { costs } = reckon(player.engine, player.bench);
  const { camPlay } = player.engine.hidden;
  const told = costs.find(({ say }) => say.includes('backwards'));
  expect(told!.cost).toBeGreaterThan(camPlay);
});

it('a name of a task is kept for ever', () => {
  expect(taskNames).toEqual([
    'stop',
    'heights',
    'disc',
    'figure',
    'gap',
    'heel',
    'plate',
    'spacing',
    'reading',
    'slides',
    'float',
  ]);
});

it('tells of one set or of several as they are spoken of, and of per cent as everywhere', () => {
  const told = (task: CrankTask): string => {
    const engine = inventEngine(4711, task);
    const { costs, remarks } = reckon(engine, setUp(engine));
    return [...costs.map(({ say }) => say), ...remarks].join(' ');
  };
  expect(told('gap')).toContain('The opening was never found');
  expect(told('plate')).toContain('The openings of sets 1, 2 and 3 were never found');
  for (const task of crankTasks) expect(told(task)).not.toMatch(/\d %|'/);
});

it('a gap that is out is told by the dwell that the coil is left', () => {
  const engine = inventEngine(4711, 'gap');
  const { remarks } = reckon(engine, setUp(engine));
  expect(remarks.join()).toMatch(/stays shut for \d\d% of a turn: at 6000 rpm/);
  // A turn takes 10 ms at 6000 rpm, and the demo coil's time constant is 8 mH / 4 Ω = 2 ms.
  const [, shut, reached] = /for (\d+)% of a turn.*comes to (\d+)%/.exec(remarks[0]!)!;
  expect(100 * (1 - Math.exp(-Number(shut) / 10 / 2))).toBeCloseTo(Number(reached), -0.5);
});
