import { area, line } from 'd3-shape';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { outline, polyline, type Edge, type Point } from '../../calculators/picture/chart/path.ts';

const place = fc.double({ min: -1000, max: 1000, noNaN: true });

it('a line is written as d3-shape writes it', () => {
  const theirs = line<Point>(
    ([x]) => x,
    ([, y]) => y,
  ).digits(1);
  fc.assert(
    fc.property(fc.array(fc.tuple(place, place), { maxLength: 5 }), (points) => {
      expect(polyline(points)).toBe(theirs(points) ?? '');
    }),
  );
});

it('an area is written as d3-shape writes it', () => {
  const theirs = area<Edge>()
    .x(([x]) => x)
    .y0(([, low]) => low)
    .y1(([, , high]) => high)
    .digits(1);
  fc.assert(
    fc.property(fc.array(fc.tuple(place, place, place), { maxLength: 5 }), (edges) => {
      expect(outline(edges)).toBe(theirs(edges) ?? '');
    }),
  );
});
