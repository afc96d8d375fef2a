import { describe, expect, it } from 'vitest';
import { uncoveredArea } from '../../calculators/maths/cylinder/port-area.ts';
import { windowArea } from './whole-window.ts';

const port = { width: 20, height: 10, cornerRadius: 2, count: 1 };

describe('area of a port with rounded corners', () => {
  // A square of 10 mm with corners of 5 mm is a circle of 10 mm: 78.540 mm²; its upper half 39.270.
  const round = { width: 10, height: 10, cornerRadius: 5, count: 1 };

  it('is that of a circle where the corners meet', () => {
    expect(windowArea(round)).toBeCloseTo(25 * Math.PI, 10);
    expect(uncoveredArea(round, 5)).toBeCloseTo(12.5 * Math.PI, 10);
  });

  // Segment of a circle of radius 5 mm and height 2.5 mm: r² (acos(1/2) − sin(120°)/2) = 15.355 mm².
  it('is that of a segment on the way, from above as from below', () => {
    const segment = 25 * (Math.PI / 3 - Math.sqrt(3) / 4);
    expect(uncoveredArea(round, 2.5)).toBeCloseTo(segment, 10);
    expect(uncoveredArea(round, 7.5)).toBeCloseTo(25 * Math.PI - segment, 10);
  });

  it('is nothing above the port and the whole below it, for each of the ports', () => {
    expect(uncoveredArea(port, -1)).toBe(0);
    expect(uncoveredArea(port, 0)).toBe(0);
    expect(uncoveredArea(port, 11)).toBe(windowArea(port));
    expect(windowArea({ ...port, count: 3 })).toBeCloseTo(3 * windowArea(port), 10);
    // 20 × 10 less four corners of 2 mm, each (1 − π/4) × 4: 196.566 mm².
    expect(windowArea(port)).toBeCloseTo(196.566, 3);
  });
});
