import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate } from '../../calculators/maths/numeric/integrate.ts';
import { uncoveredArea, type PortWindow } from '../../calculators/maths/cylinder/port-area.ts';
import { crownPort } from '../../calculators/maths/cylinder/port-timing.ts';
import {
  blowdownAngleArea,
  crownAngleArea,
  discAngleArea,
  discOpenArea,
  skirtAngleArea,
  specificTimeArea,
  timeArea,
} from '../../calculators/maths/cylinder/time-area.ts';
import { travelAt } from '../../calculators/maths/crank/slider-crank.ts';
import { barrels } from './barrels.ts';
import { codeOf } from './code-of.ts';
import { windowArea } from './whole-window.ts';

const window: PortWindow = { width: 34, height: 16, cornerRadius: 4, count: 1 };
const barrel = { stroke: 51, rodLength: 104, pinOffset: 0, deckClearance: 0 };
const windows = fc
  .record({
    width: fc.double({ min: 5, max: 50, noNaN: true }),
    height: fc.double({ min: 5, max: 25, noNaN: true }),
    round: fc.double({ min: 0, max: 1, noNaN: true }),
    count: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ width, height, round, count }): PortWindow => ({
    width,
    height,
    count,
    cornerRadius: (round * Math.min(width, height)) / 2,
  }));

describe('the open area', () => {
  it('ends as a rectangle less its corners', () => {
    fc.assert(
      fc.property(windows, (any) => {
        const { width, height, cornerRadius, count } = any;
        const whole = count * (width * height - (4 - Math.PI) * cornerRadius ** 2);
        expect(windowArea(any)).toBeCloseTo(whole, 8);
        expect(uncoveredArea(any, height + 5)).toBeCloseTo(whole, 8);
        expect(uncoveredArea(any, -1)).toBe(0);
      }),
    );
  });

  it('is half of it half-way, and the two ends are alike', () => {
    fc.assert(
      fc.property(windows, fc.double({ min: 0, max: 1, noNaN: true }), (any, at) => {
        const whole = windowArea(any);
        const depth = at * any.height;
        expect(uncoveredArea(any, depth) + uncoveredArea(any, any.height - depth)).toBeCloseTo(
          whole,
          8,
        );
      }),
    );
  });
});

describe('the integral', () => {
  it('copes with a bend at its ends', () => {
    expect(integrate(Math.sqrt, 0, 4)).toBeCloseTo(16 / 3, 11);
    expect(integrate((x) => Math.sqrt(1 - x * x), -1, 1)).toBeCloseTo(Math.PI / 2, 11);
    expect(integrate(Math.sin, 2, 2)).toBe(0);
  });
});

describe('angle-area', () => {
  it('of the exhaust is more than that of the blowdown, and less than fully open throughout', () => {
    fc.assert(
      fc.property(barrels, windows, (any, port) => {
        const topEdge = any.deckClearance + 0.6 * any.stroke;
        const transferEdge = any.deckClearance + 0.75 * any.stroke;
        const exhaust = { ...port, topEdge };
        const whole = crownAngleArea(any, exhaust);
        const blowdown = blowdownAngleArea(any, exhaust, transferEdge);
        expect(blowdown).toBeGreaterThan(0);
        expect(blowdown).toBeLessThan(whole / 2);
        expect(whole).toBeLessThan(windowArea(port) * crownPort(any, topEdge).duration);
      }),
    );
  });

  it('has no blowdown where the transfer opens first', () => {
    expect(blowdownAngleArea(barrel, { ...window, topEdge: 38 }, 30)).toBe(0);
  });

  it('of an inlet is that of a crown port in a mirror', () => {
    const skirt = skirtAngleArea(barrel, { ...window, bottomEdge: 95, skirtLength: 60 });
    const widest = windowArea(window) * 360;
    expect(skirt).toBeGreaterThan(0);
    expect(skirt).toBeLessThan(widest);
  });

  it('of ports of every shape is what a sum over small steps comes to', () => {
    const offset = { stroke: 51, rodLength: 90, pinOffset: 4, deckClearance: 1 };
    const steps = 36_000;
    const summed = (from: number, to: number, area: (angle: number) => number): number => {
      const step = (to - from) / steps;
      let sum = 0;
      for (let i = 0; i < steps; i += 1) sum += area(from + (i + 0.5) * step) * step;
      return sum;
    };
    for (const cornerRadius of [0, 3, 6]) {
      const port = { width: 30, height: 12, cornerRadius, count: 2 };
      const crown = summed(0, 360, (angle) =>
        uncoveredArea(port, 1 + travelAt(offset, angle) - 30),
      );
      expect(crownAngleArea(offset, { ...port, topEdge: 30 }) / crown).toBeCloseTo(1, 6);
      const skirt = summed(-180, 180, (angle) =>
        uncoveredArea(port, 85 - (1 + 60 + travelAt(offset, angle))),
      );
      expect(
        skirtAngleArea(offset, { ...port, bottomEdge: 85, skirtLength: 60 }) / skirt,
      ).toBeCloseTo(1, 6);
    }
  });

  it('of a disc counts half of the opening and half of the closing', () => {
    expect(discAngleArea(500, 180, 40)).toBe(500 * 140);
    expect(codeOf(() => discAngleArea(0, 180, 40))).toBe('disc-area');
    expect(codeOf(() => discAngleArea(500, 180, 91))).toBe('disc-edge');
  });

  it('of a disc opens and closes evenly', () => {
    expect([-1, 0, 10, 20, 90, 170, 180, 181].map((at) => discOpenArea(500, 180, 20, at))).toEqual([
      0, 0, 250, 500, 500, 250, 0, 0,
    ]);
    expect(discOpenArea(500, 180, 0, 1)).toBe(500);
  });

  it('halves its time when the speed doubles', () => {
    expect(timeArea(36_000, 6000)).toBeCloseTo(1, 12);
    expect(timeArea(36_000, 12_000)).toBeCloseTo(0.5, 12);
    expect(specificTimeArea(1, 100)).toBeCloseTo(0.01, 12);
  });

  it('says what is wrong', () => {
    const skirt = { ...window, bottomEdge: 95, skirtLength: 60 };
    expect(codeOf(() => skirtAngleArea(barrel, { ...skirt, width: 0 }))).toBe('port-width');
    expect(codeOf(() => timeArea(1, 0))).toBe('rpm');
    expect(codeOf(() => specificTimeArea(1, 0))).toBe('swept-volume');
    expect(codeOf(() => crownAngleArea(barrel, { ...window, width: 0, topEdge: 30 }))).toBe(
      'port-width',
    );
    expect(codeOf(() => crownAngleArea(barrel, { ...window, height: 0, topEdge: 30 }))).toBe(
      'port-height',
    );
    expect(codeOf(() => crownAngleArea(barrel, { ...window, cornerRadius: 9, topEdge: 30 }))).toBe(
      'corner-radius',
    );
    expect(codeOf(() => crownAngleArea(barrel, { ...window, count: 1.5, topEdge: 30 }))).toBe(
      'port-count',
    );
  });
});
