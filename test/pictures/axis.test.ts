import { describe, expect, it } from 'vitest';
import { ticks } from 'd3-array';
import { figured } from '../../calculators/picture/chart/axis.tsx';
import { textWidth } from '../../calculators/picture/common/text-width.ts';

const field = { left: 46, right: 338 };
const figures = (from: number, to: number, count = 6) =>
  figured(
    ticks(from, to, count).map((value) => ({
      value,
      place: field.left + ((value - from) / (to - from)) * (field.right - field.left),
    })),
    (value) => String(value).replace('-', '−'),
    field,
  );

describe('the figures of an axis', () => {
  it.each([
    [0, 7500, 8],
    [-160, 160, 8],
    [0, 10_000, 6],
    [0, 30_000, 12],
    [0, 1.05, 12],
    [-0.02, 0.02, 10],
    [850, 12_400, 12],
  ])('from %d to %d stand at every so many ticks, 0 among them, and apart', (from, to, count) => {
    const seen = figures(from, to, count);
    expect(seen.length).toBeGreaterThan(1);
    const steps = seen.slice(1).map(({ value }, i) => value - seen[i]!.value);
    for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 9);
    if (from <= 0 && to >= 0) expect(seen.map(({ value }) => value + 0)).toContain(0);
    seen.slice(1).forEach(({ middle, words }, i) => {
      const before = seen[i]!;
      const room = (textWidth(words) + textWidth(before.words)) / 2;
      expect(middle - before.middle).toBeGreaterThan(room);
    });
  });

  it('reach to the end where a figure stands out a hair too far', () => {
    expect(figures(0, 10_000, 6).at(-1)!.value).toBe(10_000);
  });
});
