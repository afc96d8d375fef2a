import { describe, expect, it } from 'vitest';
import { picture } from './support/draw.tsx';
import type { ShapeMark, Sheet } from './support/marks.ts';
import type { Point } from './support/paths.ts';
import { distance, middleOf, pointsOf, shapeOf, shapesOf } from './support/shapes.ts';

const given = { cylinders: '3', 'pin-1': '0', 'pin-2': '240', 'pin-3': '120' };
const sheets = (texts: Record<string, string>): Sheet[] =>
  picture('firing-order', { ...given, ...texts });

/** Middles of the crank and of the plate on their sheets. */
const CRANK: Point = [170, 180];
const PLATE: Point = [170, 134];

/** Degrees clockwise of upright. */
const bearing = ([x, y]: Point, [cx, cy]: Point): number =>
  ((Math.atan2(x - cx, cy - y) * 180) / Math.PI + 360) % 360;

/** How far on, clockwise, from −180 to 180. */
const onFrom = (from: number, to: number): number => ((to - from + 540) % 360) - 180;

/** Which way the arrow of turning goes, and whether its barbs are at its end: +1 clockwise. */
function turning(arrow: ShapeMark, centre: Point): number {
  const [arc, ...barbs] = arrow.lines;
  const [start, end] = [arc![0]!, arc!.at(-1)!];
  for (const barb of barbs) {
    const [from, to] = [barb[0]!, barb.at(-1)!];
    expect(Math.min(distance(from, end), distance(to, end))).toBeLessThan(0.1);
    const free = distance(from, end) < 0.1 ? to : from;
    // A barb lies behind the tip, towards where the arrow came from.
    expect(distance(free, start)).toBeLessThan(distance(end, start));
  }
  return Math.sign(onFrom(bearing(start, centre), bearing(end, centre)));
}

describe('the plate of a crank', () => {
  it.each([
    ['clockwise', 1],
    ['anticlockwise', -1],
  ] as const)(
    'turned %s has sets, lobe and intervals on that way from set 1 at the top',
    (way, sign) => {
      // Tops at 0, 120 and 240; the lobe is at the set of the cylinder whose top has come.
      for (const turned of [30, 120, 240]) {
        const plate = sheets({ turning: way, turned: String(turned) })[2]!;
        expect(turning(shapesOf(plate, 'turning')[0]!, PLATE)).toBe(sign);
        const marks = shapeOf(plate, 'set-marks').lines.map((line) => line.at(-1)!);
        marks.forEach((mark, i) => {
          expect(onFrom(sign * 120 * i, bearing(mark, PLATE))).toBeCloseTo(0, 0);
        });
        const tip = pointsOf(shapeOf(plate, 'cam')).reduce((far, point) =>
          distance(point, PLATE) > distance(far, PLATE) ? point : far,
        );
        expect(onFrom(sign * turned, bearing(tip, PLATE))).toBeCloseTo(0, 0);
      }
      // A pin 90° on comes to its top 270° after the first, and the first 90° after it.
      const uneven = { cylinders: '2', 'pin-2': '90', turning: way };
      const { texts } = picture('firing-order', uneven)[2]!;
      const placeOf = (figure: string): number => {
        const { area } = texts.find(({ words }) => words === figure)!;
        return bearing([(area.left + area.right) / 2, (area.top + area.bottom) / 2], PLATE);
      };
      expect(Math.abs(onFrom(sign * 135, placeOf('270°')))).toBeLessThan(8);
      expect(Math.abs(onFrom(sign * 315, placeOf('90°')))).toBeLessThan(8);
    },
  );
});

describe('the crank from its end', () => {
  it('turns the way that its arrow and its words say', () => {
    const [end] = sheets({ turned: '30' });
    expect(turning(shapesOf(end!, 'turning')[0]!, CRANK)).toBe(1);
    expect(end!.texts.map(({ words }) => words)).toContain('from the end where it turns clockwise');
    // Pin 1 stands where it has been turned to.
    const pin = middleOf(shapesOf(end!, 'big-end')[0]!);
    expect(bearing(pin, CRANK)).toBeCloseTo(30, 0);
  });
});

describe('the crank from its side', () => {
  // r/l = 25/100: at its top a piston pushes with 1 + 0.25 of m r ω², at its bottom with 1 − 0.25 the other way.
  const single = { cylinders: '1', stroke: '50', rod: '100' };
  const force = (turned: number): number => {
    const [, side] = picture('firing-order', { ...single, turned: String(turned) });
    const [from, to] = shapesOf(side!, 'force-shaft').at(-1)!.lines[0]!;
    return from![1] - to![1];
  };

  it('has the force of each piston by both orders', () => {
    expect(force(0)).toBeGreaterThan(0);
    expect(force(0) / -force(180)).toBeCloseTo(1.25 / 0.75, 1);
    // A quarter turn on the first order is nothing, and the second is a quarter of m r ω², downwards.
    expect(force(90) / force(0)).toBeCloseTo(-0.25 / 1.25, 1);
  });

  it('has each cylinder on the throw of its own pin, whatever their order along the crank', () => {
    const [, side] = sheets({ turned: '0', 'place-1': '176', 'place-2': '88', 'place-3': '0' });
    const pistons = shapesOf(side!, 'piston').map(middleOf);
    expect(pistons[0]![0]).toBeGreaterThan(pistons[1]![0]);
    expect(pistons[1]![0]).toBeGreaterThan(pistons[2]![0]);
    // The shaft goes from left to right and never back, and its throws are under the pistons.
    const shaft = shapesOf(side!, 'web').find(({ classes }) => !classes.includes('rod'))!;
    const across = pointsOf(shaft).map(([x]) => x);
    across.forEach((x, i) => expect(x).toBeGreaterThanOrEqual((across[i - 1] ?? 0) - 0.1));
  });
});

describe('the polygons', () => {
  it('are named, each with the most that it comes to over a turn', () => {
    // 200 g on 25 mm at 6000 rpm: 0.2 × 0.025 × (200π)² = 1974 N. Of a row of three at 120° and 100 mm the
    // forces close and the couples are √3 of one piston’s on one spacing, the second order a quarter.
    const { texts } = sheets({
      ...{ 'place-1': '0', 'place-2': '100', 'place-3': '200', reciprocating: '200' },
      ...{ rpm: '6000', stroke: '50', rod: '100', factor: '50' },
    })[3]!;
    const below = (name: string): string => {
      const title = texts.find(({ words }) => words === name)!.area;
      const middle = ({ left, right }: { left: number; right: number }): number =>
        (left + right) / 2;
      return texts
        .filter(({ area }) => Math.abs(middle(area) - middle(title)) < 1 && area.top > title.bottom)
        .sort((a, b) => a.area.top - b.area.top)[0]!.words;
    };
    expect(below('primary force')).toBe('none');
    expect(below('secondary force')).toBe('none');
    expect(below('primary couple')).toBe('most 341.9 N m');
    expect(below('secondary couple')).toBe('most 85.5 N m');
    const twin = picture('firing-order', {
      ...{ cylinders: '1', reciprocating: '200', rpm: '6000', stroke: '50', rod: '100' },
    })[3]!.texts.map(({ words }) => words);
    expect(twin).toEqual(expect.arrayContaining(['most 1974 N', 'most 493 N']));
  });
});
