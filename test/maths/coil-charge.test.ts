import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assertDwell,
  assertPrimary,
  assertSpeed,
  ballastForCurrent,
  chargeTime,
  currentAfter,
  finalCurrent,
  highestSwing,
  meanHeat,
  sparksPerMinute,
  speedAtShare,
  stoppedHeat,
  storedEnergy,
  timeConstant,
  type Primary,
} from '../../calculators/maths/ignition/coil-charge.ts';
import { thrown } from './thrown.ts';

const primary: Primary = { volts: 12, resistance: 3, ballast: 1, inductance: 8 };

describe('coil charge', () => {
  it('half a turn of a crank-speed cam at 6000 rpm is 5 ms, at half speed 10 ms', () => {
    expect(chargeTime(180, 1, 6000)).toBeCloseTo(5, 12);
    expect(chargeTime(180, 0.5, 6000)).toBeCloseTo(10, 12);
  });

  it('counts the ballast in the loop', () => {
    expect(finalCurrent(primary)).toBe(3);
    expect(timeConstant(primary)).toBe(2);
    expect(currentAfter(primary, 2)).toBeCloseTo(3 * (1 - 1 / Math.E), 12);
    expect(storedEnergy(primary, 3)).toBe(36);
  });

  it('grows without a break towards the final current, and never passes it', () => {
    const time = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(time, time, (a, b) => {
        const [early, late] = a < b ? [a, b] : [b, a];
        expect(currentAfter(primary, late)).toBeGreaterThanOrEqual(currentAfter(primary, early));
        expect(currentAfter(primary, late)).toBeLessThanOrEqual(finalCurrent(primary));
      }),
    );
  });

  it('at the speed for a share the current is that share', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.999, noNaN: true }),
        fc.double({ min: 20, max: 300, noNaN: true }),
        (share, dwell) => {
          const rpm = speedAtShare(primary, dwell, 1, share);
          const reached = currentAfter(primary, chargeTime(dwell, 1, rpm));
          expect(reached / finalCurrent(primary)).toBeCloseTo(share, 10);
        },
      ),
    );
  });

  it('a ballast for a limit gives that limit', () => {
    const ballast = ballastForCurrent(primary, 2.5);
    expect(finalCurrent({ ...primary, ballast })).toBeCloseTo(2.5, 12);
    expect(ballastForCurrent(primary, 4)).toBe(0);
    expect(ballastForCurrent(primary, 5)).toBe(0);
  });

  it('heats less the faster it is switched, and stopped the most', () => {
    const heat = (time: number) => meanHeat(primary, time, time * 2);
    expect(heat(2)).toBeLessThan(heat(5));
    expect(meanHeat(primary, 1e6, 1e6)).toBeCloseTo(stoppedHeat(primary), 3);
    expect(stoppedHeat(primary)).toBe(27);
  });

  it('a condenser four times as large halves the swing', () => {
    expect(highestSwing(3, 8, 0.8)).toBeCloseTo(highestSwing(3, 8, 0.2) / 2, 10);
  });

  it('counts sparks', () => {
    expect(sparksPerMinute(2, 0.5, 6000)).toBe(6000);
  });

  it.each([
    ['volts', () => assertPrimary({ ...primary, volts: 0 }), /above 0 V/],
    ['resistance', () => assertPrimary({ ...primary, resistance: 0 }), /above 0 ohm/],
    ['ballast', () => assertPrimary({ ...primary, ballast: -1 }), /0 ohm or more/],
    ['inductance', () => assertPrimary({ ...primary, inductance: 0 }), /above 0 mH/],
    ['rpm', () => assertSpeed(0), /above 0/],
    ['rpm', () => assertSpeed(Number.NaN), /above 0/],
    ['dwell-beyond-pitch', () => assertDwell(90, 4), /below 90 cam degrees/],
    ['dwell-beyond-pitch', () => assertDwell(0, 1), /above 0/],
    ['share', () => speedAtShare(primary, 180, 1, 1), /below 100/],
    ['capacitance', () => highestSwing(3, 8, 0), /more than 0 µF/],
    ['current-limit', () => ballastForCurrent(primary, 0), /above 0 A/],
  ])('says %s', (code, action, sentence) => {
    const error = thrown(action);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(sentence);
  });

  it('takes sound figures', () => {
    expect(() => {
      assertPrimary(primary);
      assertSpeed(6000);
      assertDwell(200, 1);
    }).not.toThrow();
  });
});
