import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chord,
  equalSpacing,
  holePlace,
  holePlaces,
  setAngles,
  steps,
} from '../../calculators/maths/plate/plate-layout.ts';
import { codeOf } from './code-of.ts';

const radius = fc.double({ min: 1, max: 200, noNaN: true });
const angle = fc.double({ min: -720, max: 720, noNaN: true });

describe('directions of the sets', () => {
  it('puts three sets 120° apart', () => {
    expect(equalSpacing(3)).toBe(120);
    expect(setAngles(90, [120, 120])).toEqual([90, 210, 330]);
  });

  it('has one direction for a single set', () => {
    expect(setAngles(15, [])).toEqual([15]);
  });

  it('comes back to the start in one turn', () => {
    fc.assert(
      fc.property(
        angle,
        fc.array(fc.double({ min: 1, max: 50, noNaN: true }), { maxLength: 7 }),
        (start, spacings) => {
          const angles = setAngles(start, spacings);
          const sum = steps(angles).reduce((a, b) => a + b, 0);
          expect(sum).toBeCloseTo(spacings.length === 0 ? 0 : 360, 9);
        },
      ),
    );
  });

  it('names the spacing that is not positive', () => {
    expect(codeOf(() => setAngles(0, [120, 0]))).toBe('spacing-not-positive');
    expect(() => setAngles(0, [120, -5])).toThrow(/set 2 to set 3 .* more than 0°, not -5°/);
  });

  it('refuses two sets on one line, and takes sets that are not numbered round the plate', () => {
    expect(codeOf(() => setAngles(0, [180, 180]))).toBe('sets-on-one-line');
    expect(codeOf(() => setAngles(0, [90, 270, 90]))).toBe('sets-on-one-line');
    // A triple that fires 1, 3, 2 has set 2 at 240° and set 3 at 120°.
    expect(setAngles(0, [240, 240])).toEqual([0, 240, 480]);
    expect(steps([0, 240, 480])).toEqual([240, 240, 240]);
  });

  it.each([0, 9, 2.5])('refuses %d sets', (sets) => {
    expect(codeOf(() => equalSpacing(sets))).toBe('sets-out-of-range');
  });

  it('refuses what is no number', () => {
    expect(codeOf(() => setAngles(Number.NaN, []))).toBe('not-a-number');
    expect(codeOf(() => setAngles(0, [Number.POSITIVE_INFINITY]))).toBe('not-a-number');
  });
});

describe('places of the holes', () => {
  it('lies on the axes where the angle says so', () => {
    const up = holePlace(0, { pitchRadius: 30, holeAngle: 90 });
    expect(up.x).toBeCloseTo(0, 12);
    expect(up.y).toBeCloseTo(30, 12);
    expect(holePlace(0, { pitchRadius: 30, holeAngle: 0 })).toEqual({ x: 30, y: 0 });
  });

  it('is as far from the centre as its pitch circle, whatever the angle', () => {
    fc.assert(
      fc.property(radius, angle, angle, (pitchRadius, setAngle, holeAngle) => {
        const { x, y } = holePlace(setAngle, { pitchRadius, holeAngle });
        expect(Math.hypot(x, y)).toBeCloseTo(pitchRadius, 9);
      }),
    );
  });

  it('turns with the start and nothing else', () => {
    fc.assert(
      fc.property(
        radius,
        angle,
        fc.double({ min: -90, max: 90, noNaN: true }),
        (pitchRadius, start, turn) => {
          const hole = { pitchRadius, holeAngle: 7 };
          const before = holePlace(start, hole);
          const after = holePlace(start + turn, hole);
          const radians = (turn * Math.PI) / 180;
          expect(after.x).toBeCloseTo(
            before.x * Math.cos(radians) - before.y * Math.sin(radians),
            8,
          );
          expect(after.y).toBeCloseTo(
            before.x * Math.sin(radians) + before.y * Math.cos(radians),
            8,
          );
        },
      ),
    );
  });

  it('gives a row for each set and a place for each hole', () => {
    const places = holePlaces(
      [0, 120, 240],
      [
        { pitchRadius: 30, holeAngle: 0, drill: 3 },
        { pitchRadius: 35, holeAngle: 20, drill: 3 },
      ],
    );
    expect(places.map((set) => set.length)).toEqual([2, 2, 2]);
  });

  it.each([
    [{ pitchRadius: 0, holeAngle: 0, drill: 3 }, 'pitch-radius-not-positive', 'pitchRadius-1'],
    [{ pitchRadius: 30, holeAngle: 0, drill: 0 }, 'drill-not-positive', 'drill-1'],
    [{ pitchRadius: 30, holeAngle: Number.NaN, drill: 3 }, 'not-a-number', 'holeAngle-1'],
  ])('names the quantity of hole %o', (hole, code, quantity) => {
    expect(() => holePlaces([0], [hole])).toThrow(
      expect.objectContaining({ code, quantities: [quantity] }),
    );
  });
});

describe('chords', () => {
  it('is the radius for 60° and the diameter for 180°', () => {
    expect(chord(30, 60)).toBeCloseTo(30, 12);
    expect(chord(30, 180)).toBeCloseTo(60, 12);
  });

  it('is the distance between the two places', () => {
    fc.assert(
      fc.property(
        radius,
        angle,
        fc.double({ min: 0.5, max: 359, noNaN: true }),
        (pitchRadius, start, between) => {
          const a = holePlace(start, { pitchRadius, holeAngle: 0 });
          const b = holePlace(start + between, { pitchRadius, holeAngle: 0 });
          expect(chord(pitchRadius, between)).toBeCloseTo(Math.hypot(a.x - b.x, a.y - b.y), 8);
        },
      ),
    );
  });

  it('refuses a radius of nothing', () => {
    expect(codeOf(() => chord(0, 120))).toBe('pitch-radius-not-positive');
  });
});
