import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chargeTime,
  currentAfter,
  finalCurrent,
  meanCurrent,
  type Primary,
} from '../../calculators/maths/ignition/coil-charge.ts';
import { hoursAt, hoursByRule } from '../../calculators/maths/wiring/battery.ts';
import { FUSE_RATINGS, fuseFor } from '../../calculators/maths/wiring/fuse.ts';
import { energyLeft, settledCurrent, voltsLeft } from '../../calculators/maths/wiring/supply.ts';
import {
  copperResistance,
  greatestResistance,
  smallestWire,
  STANDARD_WIRES,
  standardWithin,
  warmth,
} from '../../calculators/maths/wiring/wire.ts';

const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 0.001, max, noNaN: true });

describe('copper', () => {
  it('of 58 m and 1 mm² has 1 ohm at 20 °C, and half of it when twice as thick', () => {
    expect(copperResistance(58, 1, 20)).toBeCloseTo(1, 12);
    expect(copperResistance(58, 2, 20)).toBeCloseTo(0.5, 12);
    expect(copperResistance(0, 2, 20)).toBe(0);
  });

  it('gains 4 per cent for 10 °C more', () => {
    expect(warmth(30) / warmth(20)).toBeCloseTo(1.0393, 4);
    expect(copperResistance(10, 1, 274.5 - 234.5) / copperResistance(10, 1, 20)).toBeCloseTo(
      274.5 / 254.5,
      12,
    );
  });

  it('is worse in every standard wire than ideal copper of its size, by a sixth or more', () => {
    for (const wire of STANDARD_WIRES) {
      const more = greatestResistance(wire, 5, 45) / copperResistance(5, wire.area, 45);
      expect(more, String(wire.area)).toBeGreaterThan(1.12);
      expect(more, String(wire.area)).toBeLessThan(1.21);
    }
  });

  it('has less resistance and bears more in every thicker standard wire', () => {
    STANDARD_WIRES.slice(1).forEach((wire, i) => {
      const thinner = STANDARD_WIRES[i]!;
      expect(wire.area).toBeGreaterThan(thinner.area);
      expect(wire.resistance).toBeLessThan(thinner.resistance);
      expect(wire.bears).toBeGreaterThan(thinner.bears);
    });
  });
});

describe('the standard wire', () => {
  it('within a measured cross-section is the next one down, and none below the thinnest', () => {
    expect(standardWithin(1)?.area).toBe(1);
    expect(standardWithin(1.49)?.area).toBe(1);
    expect(standardWithin(100)?.area).toBe(16);
    expect(standardWithin(0.49)).toBeUndefined();
  });

  it('is the smallest that suits', () => {
    expect(smallestWire(({ bears }) => bears >= 15).area).toBe(1.5);
    expect(smallestWire(() => true).area).toBe(0.5);
  });
});

describe('the fuse', () => {
  it('is the smallest of which the current is at most its share', () => {
    expect(fuseFor(7, 0.7)).toBe(10);
    expect(fuseFor(7.01, 0.7)).toBe(15);
    expect(fuseFor(5.2, 0.7)).toBe(7.5);
    for (const rating of FUSE_RATINGS) expect(fuseFor(rating, 1)).toBe(rating);
  });
});

describe('coils through one wire', () => {
  it('draw their full current where nothing is lost, and share what is left where something is', () => {
    const supply = { volts: 12, coils: 3, ohms: 4, others: 0 };
    expect(settledCurrent(supply, 0)).toBe(9);
    expect(settledCurrent({ ...supply, others: 2 }, 0)).toBe(11);
    fc.assert(
      fc.property(positive(100), positive(20), positive(5), (ohms, others, series) => {
        const current = settledCurrent({ volts: 12, coils: 3, ohms, others }, series);
        const left = 12 - current * series;
        expect((3 * left) / ohms + others).toBeCloseTo(current, 8);
      }),
    );
  });

  it('leave the lamp alone where there are none', () => {
    expect(settledCurrent({ volts: 12, coils: 0, ohms: 4, others: 1.5 }, 0.2)).toBe(1.5);
  });

  it('leave the volts that the way does not take, and the energy of their square', () => {
    expect(voltsLeft(12, 8, 0.15)).toBeCloseTo(10.8, 12);
    expect(energyLeft(10.8, 12)).toBeCloseTo(81, 12);
    expect(energyLeft(12, 12)).toBe(100);
    expect(energyLeft(-1, 12)).toBe(0);
  });
});

describe('the mean current of a coil', () => {
  const primary: Primary = { volts: 12, resistance: 4, ballast: 0, inductance: 8 };

  it('is the full current times the dwell when turned slowly, and falls with the speed', () => {
    const slow = chargeTime(360, 1, 1);
    expect(meanCurrent(primary, 0.55 * slow, slow)).toBeCloseTo(0.55 * 3, 3);
    let before = Infinity;
    for (const rpm of [50, 500, 1200, 3000, 6000, 12_000]) {
      const period = chargeTime(360, 1, rpm);
      const mean = meanCurrent(primary, 0.55 * period, period);
      expect(mean).toBeLessThan(before);
      before = mean;
    }
  });

  it('is never more than the dwell times the current at which the points break', () => {
    fc.assert(
      fc.property(positive(50), positive(1), (period, dwell) => {
        const mean = meanCurrent(primary, dwell * period, period);
        expect(mean).toBeGreaterThanOrEqual(0);
        expect(mean).toBeLessThanOrEqual(
          dwell * currentAfter(primary, dwell * period) * (1 + 1e-9),
        );
        expect(mean).toBeLessThanOrEqual(dwell * finalCurrent(primary) * (1 + 1e-9));
      }),
    );
  });

  it('is that of a straight rise for the shortest charge: half of V/L·t, times the dwell', () => {
    expect(meanCurrent(primary, 0.001, 0.002)).toBeCloseTo((0.5 * 12 * 0.001) / 8 / 2, 6);
  });
});

describe('the battery', () => {
  it('lasts capacity over current, and by the rule no longer', () => {
    expect(hoursAt(9, 3)).toBe(3);
    fc.assert(
      fc.property(positive(100), positive(100), (capacity, current) => {
        const plain = hoursAt(capacity, current);
        expect(hoursByRule(capacity, current, 10, 1)).toBeCloseTo(plain, 9);
        expect(hoursByRule(capacity, current, 10, 1.3)).toBeLessThanOrEqual(plain);
      }),
    );
  });

  it('gives what stands on it at its rated current and below', () => {
    expect(hoursByRule(9, 0.9, 10, 1.2)).toBeCloseTo(10, 12);
    expect(hoursByRule(9, 0.09, 10, 1.2)).toBeCloseTo(100, 9);
  });
});
