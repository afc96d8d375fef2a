import { describe, expect, it } from 'vitest';
import { fuelLevel, tangBend } from '../../calculators/maths/carburettor/float-level.ts';
import {
  gaugeShows,
  inventFloat,
  levelOf,
  reckonFloat,
  setUpFloat,
  tubeShows,
  workFloat,
} from '../../calculators/practice/float.ts';
import {
  DRILLS,
  drillFits,
  inventSlides,
  reckonSlides,
  setUpSlides,
  workSlides,
  type Slides,
  type SlidesBench,
} from '../../calculators/practice/slides.ts';

const seeds = Array.from({ length: 1000 }, (_, i) => i * 11 + 2);

/** The thickest shank that goes under the slide in hand. */
const thickest = (bench: SlidesBench): number =>
  DRILLS.filter((drill) => drillFits(bench, drill) !== 'no-go').at(-1) ?? DRILLS[0]!;

function balance(slides: Slides, worksGrip: boolean): SlidesBench {
  let bench = setUpSlides(slides);
  const { target } = slides.card;
  for (const slide of [0, 1, 2]) {
    bench = workSlides(slides, bench, { act: 'slide', slide });
    for (let turn = 0; turn < 60; turn += 1) {
      bench = workSlides(slides, bench, { act: 'try', drill: target });
      const fit = drillFits(bench, target);
      if (fit === 'drags') break;
      const far = Math.abs(thickest(bench) - target) > 0.15;
      const by = (far ? 0.125 : 0.0625) * (fit === 'no-go' ? 1 : -1);
      bench = workSlides(slides, bench, { act: 'adjust', by });
      if (worksGrip) bench = workSlides(slides, bench, { act: 'grip' });
    }
  }
  return bench;
}

describe('the slides', () => {
  it('are balanced on a thousand benches by hands that work the grip', () => {
    const out = seeds.filter((seed) => {
      const slides = inventSlides(seed);
      return !reckonSlides(slides, balance(slides, true)).right;
    });
    expect(out).toEqual([]);
  });

  it('are seldom right by hands that never do', () => {
    const right = seeds.filter((seed) => {
      const slides = inventSlides(seed);
      return reckonSlides(slides, balance(slides, false)).right;
    });
    expect(right.length).toBeLessThan(seeds.length / 3);
  });
});

describe('the float', () => {
  it('stands as the maths package says', () => {
    const float = inventFloat(7);
    const bench = workFloat(setUpFloat(), { act: 'fill' });
    expect(tubeShows(float, bench)).toBeCloseTo(levelOf(float, bench), 0);
    expect(levelOf(float, setUpFloat())).toBe(
      fuelLevel(float.hidden.lever, float.card.feed, {
        height: float.hidden.height,
        edge: 'far',
        springDrop: 0,
      }),
    );
  });

  it('is set on a thousand benches by hands that fill, look and bend', () => {
    const out = seeds.filter((seed) => {
      const float = inventFloat(seed);
      const { lever, level } = float.card;
      let bench = setUpFloat();
      for (let round = 0; round < 6; round += 1) {
        bench = workFloat(bench, { act: 'fill' });
        const shown = tubeShows(float, bench)!;
        if (Math.abs(shown - level) <= 0.25) break;
        bench = workFloat(bench, { act: 'drain' });
        const by = Math.round(tangBend(lever, shown, level) / 0.05) * 0.05;
        bench = workFloat(bench, { act: 'bend', by });
      }
      return !reckonFloat(float, bench).right;
    });
    expect(out).toEqual([]);
  });

  it('is gauged empty and read full, and its tang is reached empty only', () => {
    const float = inventFloat(7);
    const empty = setUpFloat();
    const full = workFloat(empty, { act: 'fill' });
    expect([gaugeShows(float, full), tubeShows(float, empty)]).toEqual([undefined, undefined]);
    expect(workFloat(full, { act: 'bend', by: 1 }).bend).toBe(0);
  });
});
