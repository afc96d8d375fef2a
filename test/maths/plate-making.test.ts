import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { headPlan, toothPlan } from '../../calculators/maths/plate/dividing.ts';
import { plateBlank } from '../../calculators/maths/plate/plate-blank.ts';
import { offCentre } from '../../calculators/maths/plate/plate-run-out.ts';
import {
  holesFor,
  leastEngagement,
  threadHoles,
} from '../../calculators/maths/plate/thread-holes.ts';
import { codeOf } from './code-of.ts';
import { thrown } from './thrown.ts';

describe('the blank', () => {
  it('leaves an octagon whose sides are all as long as the cuts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 400, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (outside, allowance) => {
          const blank = plateBlank(outside, allowance);
          expect(blank.square - 2 * blank.corner).toBeCloseTo(blank.cut, 9);
          expect(blank.corner * Math.SQRT2).toBeCloseTo(blank.cut, 9);
          expect(blank.leastDepth).toBeCloseTo((blank.square - outside) / 2, 9);
          expect(blank.mostDepth).toBeGreaterThan(blank.leastDepth);
        },
      ),
    );
  });

  it('has an octagon as far across its corners as Pythagoras says', () => {
    const { square, corner, octagonSwing } = plateBlank(90, 3);
    expect(octagonSwing).toBeCloseTo(2 * Math.hypot(square / 2, square / 2 - corner), 12);
  });

  it('tells what must swing clear and what is to be turned off', () => {
    // A square of 93 mm: 93 × √2 across its corners; its octagon 93 / cos 22.5° = 100.6625 mm, which is
    // 5.3313 mm a side more than 90 mm.
    const blank = plateBlank(90, 3);
    expect(blank.squareSwing).toBeCloseTo(131.5219, 4);
    expect(blank.octagonSwing).toBeCloseTo(100.6625, 3);
    expect(blank.mostDepth).toBeCloseTo(5.3313, 3);
    expect(blank.leastDepth).toBe(1.5);
  });

  it('refuses less than nothing', () => {
    expect(codeOf(() => plateBlank(90, -1))).toBe('allowance-negative');
    expect(codeOf(() => plateBlank(0, 1))).toBe('outside-not-positive');
  });
});

describe('dividing head', () => {
  const circles = [15, 16, 17, 18, 19, 20];

  it('finds thirds exactly with 40 turns and the smallest circle that has them', () => {
    const plan = headPlan([0, 120, 240], 40, circles);
    expect(plan.circle).toBe(15);
    expect(plan.settings[1]).toEqual({ turns: 13, holes: 5, error: expect.closeTo(0, 12) });
    expect(plan.settings[2]).toEqual({ turns: 13, holes: 5, error: expect.closeTo(0, 12) });
  });

  it('stands still for the first set', () => {
    expect(headPlan([0, 90], 40, [16]).settings[0]).toEqual({ turns: 0, holes: 0, error: 0 });
  });

  it('lands within half a hole, and the steps add up to where it says it is', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 60, noNaN: true }), { minLength: 1, maxLength: 5 }),
        fc.constantFrom(40, 60, 90),
        (spacings, ratio) => {
          const angles = [0];
          for (const spacing of spacings) angles.push(angles.at(-1)! + spacing);
          const { circle, settings } = headPlan(angles, ratio, circles);
          let gone = 0;
          settings.forEach(({ turns, holes, error }, i) => {
            gone += turns + holes / circle;
            expect(holes).toBeLessThan(circle);
            expect((gone * 360) / ratio).toBeCloseTo(angles[i]! + error, 8);
            expect(Math.abs(error)).toBeLessThanOrEqual(180 / (ratio * 15) + 1e-9);
          });
        },
      ),
    );
  });

  it.each([
    [() => headPlan([0], 0, circles), 'worm-not-positive'],
    [() => headPlan([0], 40, []), 'no-circles'],
    [() => headPlan([0], 40, [15.5]), 'circle-not-whole'],
    [() => headPlan([0], 40, [0]), 'circle-not-whole'],
  ])('refuses what no head has (%#)', (run, code) => {
    expect(codeOf(run)).toBe(code);
  });
});

describe('counted teeth', () => {
  it('has no error where the teeth divide by the sets', () => {
    expect(toothPlan([0, 120, 240], 60)).toEqual([
      { tooth: 0, error: 0 },
      { tooth: 20, error: 0 },
      { tooth: 40, error: 0 },
    ]);
  });

  it('takes the nearest tooth', () => {
    const [, second] = toothPlan([0, 120], 40);
    expect(second!.tooth).toBe(13);
    expect(second!.error).toBeCloseTo(-3, 12);
  });

  it('is never out by more than half a tooth', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.integer({ min: 2, max: 200 }),
        (angle, teeth) => {
          expect(Math.abs(toothPlan([angle], teeth)[0]!.error)).toBeLessThanOrEqual(
            180 / teeth + 1e-9,
          );
        },
      ),
    );
  });

  it('refuses a part of a tooth', () => {
    expect(codeOf(() => toothPlan([0], 40.5))).toBe('teeth-not-whole');
    expect(codeOf(() => toothPlan([0], 1))).toBe('teeth-not-whole');
  });
});

describe('the choice of a hole circle', () => {
  // A third of a turn on a worm of 40 is 13 turns and a third: 9 holes of 27, 13 of 39; a circle of
  // 16 comes within a third of a hole, 1/3 × 360/(40 × 16) = 0.1875°.
  it.each([[[16, 39, 20, 27]], [[39, 27, 16]], [[27, 16]]])(
    'takes the smallest of those that are exact: %j',
    (circles) => {
      const { circle, settings } = headPlan([0, 120, 240], 40, circles);
      expect(circle).toBe(27);
      expect(settings.map(({ turns, holes }) => [turns, holes])).toEqual([
        [0, 0],
        [13, 9],
        [13, 9],
      ]);
      for (const { error } of settings) expect(error).toBeCloseTo(0, 10);
    },
  );

  it('takes the nearest where none is exact', () => {
    // 13 1/3 turns are 213.33 holes of 16 and 266.67 of 20: out by a third of a hole each.
    const { circle, settings } = headPlan([0, 120], 40, [16, 20]);
    expect(circle).toBe(20);
    expect(settings[1]!.turns).toBe(13);
    expect(settings[1]!.holes).toBe(7);
    expect(settings[1]!.error).toBeCloseTo(360 / (3 * 40 * 20), 10);
    expect(headPlan([0, 120], 40, [16]).settings[1]!.error).toBeCloseTo(-360 / (3 * 40 * 16), 10);
  });
});

describe('run-out', () => {
  it('halves the indicator’s movement and the clearance', () => {
    const { offCentre: distance, heelShift } = offCentre(0.06, 0.04, 11);
    expect(distance).toBeCloseTo(0.05, 12);
    expect(heelShift).toBe(distance);
  });

  it('moves an opening by the angle under which the shift is seen from the cam', () => {
    expect(offCentre(0.1, 0, 11).angleShift).toBeCloseTo((0.05 / 11) * (180 / Math.PI), 4);
    expect(offCentre(0, 0, 11).angleShift).toBe(0);
  });

  it.each([
    [() => offCentre(-0.1, 0, 11), 'negative'],
    [() => offCentre(0, -0.1, 11), 'negative'],
    [() => offCentre(0.1, 0, 0), 'heel-radius-not-positive'],
    [() => offCentre(20, 4, 11), 'off-centre-too-far'],
  ])('refuses what cannot be (%#)', (run, code) => {
    expect(codeOf(run)).toBe(code);
  });
});

describe('threads', () => {
  it('knows the threads by name and says which it knows', () => {
    expect(holesFor('M4').tappingDrill).toBe(3.3);
    const error = thrown(() => holesFor('M7'));
    expect(error.code).toBe('thread-unknown');
    expect(error.quantities).toEqual(['thread']);
    expect(error.message).toContain('M2, M2.5, M3, M4, M5, M6, M8');
  });

  it('asks for one and a half diameters of thread in aluminium, and for one in steel', () => {
    // Common practice.
    expect(leastEngagement(holesFor('M4').nominal, 'aluminium')).toBe(6);
    expect(leastEngagement(holesFor('M3').nominal, 'aluminium')).toBe(4.5);
    expect(leastEngagement(holesFor('M4').nominal, 'steel')).toBe(4);
  });

  // To M5 ASME B1.13M, class 6h, greatest minor diameter, which is the basic one (year not known); for M6
  // and M8 Yamawa, general catalogue 2016-2017, page 795, basic minor diameter.
  const fullThread = [1.567, 2.013, 2.458, 3.242, 4.134, 4.917, 6.647];

  it.each(threadHoles)('$thread: the drills lie in order round the screw', (entry) => {
    expect(entry.tappingDrill).toBeGreaterThan(fullThread[threadHoles.indexOf(entry)]!);
    expect(entry.tappingDrill).toBeLessThan(entry.nominal);
    expect(entry.fine).toBeGreaterThan(entry.nominal);
    expect(entry.medium).toBeGreaterThan(entry.fine);
    expect(entry.coarse).toBeGreaterThan(entry.medium);
  });
});
