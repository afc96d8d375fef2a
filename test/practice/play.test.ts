import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { travelAt } from '../../calculators/maths/crank/slider-crank.ts';
import { setUp, type Bench } from '../../calculators/practice/bench.ts';
import { inventEngine } from '../../calculators/practice/engine.ts';
import { driven, drivenThrough } from '../../calculators/practice/play.ts';
import { work } from '../../calculators/practice/work.ts';

const place = fc.double({ min: -500, max: 500, noNaN: true });
const path = fc.array(place, { minLength: 1, maxLength: 30 });
const play = fc.double({ min: 0, max: 20, noNaN: true });

describe('play', () => {
  it('never lets what is driven hang further behind than half of it', () => {
    fc.assert(
      fc.property(place, path, play, (start, drivers, width) => {
        const at = drivenThrough(start, drivers, width);
        expect(Math.abs(at - drivers.at(-1)!)).toBeLessThanOrEqual(width / 2 + 1e-9);
      }),
    );
  });

  it('asks for nothing of how far each step goes on a way without a turn', () => {
    fc.assert(
      fc.property(place, place, path, play, (start, from, steps, width) => {
        const upwards = [...steps].sort((a, b) => a - b);
        const first = drivenThrough(start, [from], width);
        const beyond = upwards.filter((step) => step >= from);
        if (beyond.length === 0) return;
        expect(drivenThrough(first, beyond, width)).toBe(driven(first, beyond.at(-1)!, width));
      }),
    );
  });

  it('forgets what came before once it is taken up', () => {
    fc.assert(
      fc.property(place, place, place, play, (one, other, driver, width) => {
        const wound = [driver - 3 * width - 2000, driver];
        expect(drivenThrough(one, wound, width)).toBe(drivenThrough(other, wound, width));
      }),
    );
  });

  it('is all of the difference between the two ways of coming to a place', () => {
    fc.assert(
      fc.property(place, play, (driver, width) => {
        const up = drivenThrough(0, [driver - 3000, driver], width);
        const down = drivenThrough(0, [driver + 3000, driver], width);
        expect(down - up).toBeCloseTo(width, 9);
      }),
    );
  });

  it('without any of it, each follows the other', () => {
    fc.assert(
      fc.property(place, path, (start, drivers) => {
        expect(drivenThrough(start, drivers, 0)).toBeCloseTo(drivers.at(-1)!, 12);
      }),
    );
  });
});

describe('the crank on the bench', () => {
  const engine = inventEngine(4711, 'plate');
  const { geometry, rodPlay, camPlay, tops } = engine.hidden;
  const turned = (bench: Bench, ...ways: number[]): Bench =>
    ways.reduce((at, by) => work(engine, at, { act: 'turn', by }), bench);

  it('brings every piston to where the geometry has it, within the play of its rod', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -700, max: 700, noNaN: true }), { maxLength: 12 }),
        (ways) => {
          const bench = turned(setUp(engine), ...ways);
          bench.travels.forEach((travel, i) => {
            const exact = travelAt(geometry, bench.crank - tops[i]!);
            expect(Math.abs(travel - exact)).toBeLessThanOrEqual(rodPlay / 2 + 1e-9);
          });
          expect(Math.abs(bench.cam - bench.crank)).toBeLessThanOrEqual(camPlay / 2 + 1e-9);
        },
      ),
    );
  });

  it('comes to the same in one turn of the hand as in many', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 900, noNaN: true }),
        fc.integer({ min: 2, max: 40 }),
        (by, steps) => {
          const once = turned(setUp(engine), by);
          const often = turned(setUp(engine), ...Array.from({ length: steps }, () => by / steps));
          once.travels.forEach((travel, i) => expect(often.travels[i]).toBeCloseTo(travel, 6));
          expect(often.cam).toBeCloseTo(once.cam, 6);
        },
      ),
    );
  });

  it('is stopped by the stop on both sides, at one height', () => {
    for (const number of [1, 22, 333, 4444]) {
      const other = inventEngine(number, 'stop');
      const start = work(other, setUp(other), { act: 'put', inHole: 'stop' });
      const ends = [500, -800].map((by) => work(other, start, { act: 'turn', by }));
      expect(ends[0]!.said).toContain('rests on the stop');
      expect(ends[1]!.said).toContain('rests on the stop');
      expect(ends[0]!.travels[0]).toBeCloseTo(other.hidden.stopHeight, 6);
      expect(ends[1]!.travels[0]).toBeCloseTo(other.hidden.stopHeight, 6);
      expect(work(other, ends[0]!, { act: 'turn', by: 40 }).crank).toBe(ends[0]!.crank);
      expect(work(other, start, { act: 'kick' }).struck).toBe(1);
    }
  });
});
