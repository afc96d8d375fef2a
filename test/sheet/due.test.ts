import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { isDue, nextDue, spotAt, spotFragment, spotsOf } from '../../calculators/sheet/due.ts';
import { confirmOne, setDone, setEntry } from '../../calculators/sheet/set-entry.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { anyEngine } from './engines.ts';
import { figured, passing } from './job.ts';

describe('one reading at a time', () => {
  it('each has an address of its own, which leads back to it', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        const spots = spotsOf(engine);
        const fragments = spots.map(spotFragment);
        expect(new Set(fragments).size).toBe(spots.length);
        expect(fragments.map((fragment) => spotAt(fragment, engine))).toEqual(spots);
      }),
    );
    for (const wrong of ['', 'read-', 'read-gap-9', 'read-gap-0', 'step-gap', 'read-colour-1']) {
      expect(spotAt(wrong, newEngine('e-1', 'One')), wrong).toBeUndefined();
    }
  });

  it('next is what is due after this, and from the beginning after the last', () => {
    const demo = demoSheet();
    const progress = progressOf(demo);
    const first = { step: order.find((id) => progress[id].state !== 'pass')!, index: 0 };
    expect(nextDue(demo, progress)).toEqual(first);
    expect(nextDue(demo, progress, { step: 'gap', index: 2 })).toEqual({
      step: 'timing',
      index: 0,
    });
    expect(nextDue(demo, progress, { step: order.at(-1)!, index: 0 })).toEqual(first);
  });

  it('led from one to the next the whole job is done, and none comes twice', () => {
    let engine = figured();
    const come: string[] = [];
    let spot = nextDue(engine, progressOf(engine));
    while (spot && come.length < 500) {
      come.push(spotFragment(spot));
      engine = steps[spot.step].reading
        ? setEntry(engine, spot.step, 'found', spot.index, passing(engine, spot.step, 120))
        : setDone(engine, spot.step, true);
      spot = nextDue(engine, progressOf(engine), spot);
    }
    expect(new Set(come).size).toBe(come.length);
    expect(come).toEqual(spotsOf(engine).map(spotFragment));
    for (const { state } of Object.values(progressOf(engine))) expect(state).toBe('pass');
  });

  it('what a change upset is due until it is read again', () => {
    const demo = demoSheet();
    const spot = { step: 'timing', index: 1 } as const;
    expect(isDue(demo, progressOf(demo).timing, spot)).toBe(true);
    const again = confirmOne(demo, 'timing', 1, '2026-03-01');
    expect(isDue(again, progressOf(again).timing, spot)).toBe(false);
  });
});
