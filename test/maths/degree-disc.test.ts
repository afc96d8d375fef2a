import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assertDisc,
  marksAfter,
  marksBefore,
  offCentreDiscError,
  scaleMarks,
  stretchedDiscError,
  stretchedTapeError,
  tapeLength,
  tapePlace,
} from '../../calculators/maths/crank/degree-disc.ts';
import { travelAt } from '../../calculators/maths/crank/slider-crank.ts';
import { codeOf } from './code-of.ts';

const engine = { stroke: 51, rodLength: 104, pinOffset: 1 };

describe('marks', () => {
  it('has 360, of which every tenth bears a number', () => {
    const marks = scaleMarks('one-way');
    expect(marks.map(({ angle }) => angle)).toEqual(Array.from({ length: 360 }, (_, i) => i));
    expect(marks.filter(({ number }) => number !== undefined)).toHaveLength(36);
    expect(marks.filter(({ rank }) => rank === 5)).toHaveLength(36);
    expect(marks[350]!.number).toBe(350);
  });

  it('counts both ways from zero to 180', () => {
    const marks = scaleMarks('both-ways');
    expect(marks[350]!.number).toBe(10);
    expect(marks[180]!.number).toBe(180);
    expect(marks[170]!.number).toBe(marks[190]!.number);
  });

  it('stands where the piston is as far down as the mark says', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 40, noNaN: true }), (travel) => {
        const [before] = marksBefore(engine, [travel]);
        const [after] = marksAfter(engine, [travel]);
        expect(travelAt(engine, -before!)).toBeCloseTo(travel, 8);
        expect(travelAt(engine, after!)).toBeCloseTo(travel, 8);
      }),
    );
  });

  it('needs room on the disc', () => {
    expect(() => assertDisc(180, 12)).not.toThrow();
    expect(codeOf(() => assertDisc(39, 0))).toBe('disc-too-small');
    expect(codeOf(() => assertDisc(180, 91))).toBe('disc-hole-out-of-range');
    expect(codeOf(() => assertDisc(180, -1))).toBe('disc-hole-out-of-range');
    expect(codeOf(() => assertDisc(Number.NaN, 0))).toBe('disc-too-small');
  });

  it('refuses a position beyond the stroke', () => {
    expect(codeOf(() => marksBefore(engine, [2, 60]))).toMatch(/travel/);
  });
});

describe('tape', () => {
  it('is longer than the rim by pi times its thickness', () => {
    expect(tapeLength(96, 0.2) - tapeLength(96, 0)).toBeCloseTo(Math.PI * 0.2, 12);
  });

  it('shares its length evenly among the degrees', () => {
    expect(tapePlace(96, 0.2, 360)).toBe(tapeLength(96, 0.2));
    expect(tapePlace(96, 0.2, -90)).toBeCloseTo(-tapeLength(96, 0.2) / 4, 12);
  });

  it.each([
    [() => tapeLength(0, 0), 'diameter-not-positive'],
    [() => tapeLength(96, -0.1), 'tape-too-thick'],
    [() => tapeLength(96, 10), 'tape-too-thick'],
  ])('refuses what cannot be bent (%#)', (run, code) => {
    expect(codeOf(run)).toBe(code);
  });
});

describe('how wrong a print is', () => {
  it('leaves a disc true that is stretched alike both ways', () => {
    expect(stretchedDiscError(98, 98)).toBe(0);
  });

  it('is the largest error found by turning through all directions', () => {
    const [across, up] = [101, 99.5];
    let largest = 0;
    for (let angle = 0; angle < 90; angle += 0.01) {
      const a = (angle * Math.PI) / 180;
      const seen = Math.atan2(up * Math.sin(a), across * Math.cos(a));
      largest = Math.max(largest, Math.abs(seen - a) * (180 / Math.PI));
    }
    expect(stretchedDiscError(across, up)).toBeCloseTo(largest, 6);
    expect(stretchedDiscError(up, across)).toBeCloseTo(largest, 6);
  });

  it('puts the end of a tape out by the share of the whole round', () => {
    expect(stretchedTapeError(101, 100)).toBeCloseTo(3.6, 12);
    expect(stretchedTapeError(100, 100)).toBe(0);
  });

  it('sees a disc off centre under an angle', () => {
    expect(offCentreDiscError(0, 90)).toBe(0);
    expect(offCentreDiscError(0.5, 90)).toBeCloseTo(0.3183, 4);
  });

  it.each([
    [() => stretchedDiscError(0, 100), 'bar-not-positive'],
    [() => stretchedTapeError(-1, 100), 'bar-not-positive'],
    [() => offCentreDiscError(90, 90), 'off-centre-too-far'],
    [() => offCentreDiscError(-1, 90), 'off-centre-too-far'],
  ])('refuses what cannot be (%#)', (run, code) => {
    expect(codeOf(run)).toBe(code);
  });
});
