import { Arc, Circle, point, segment } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { bandOpenings, type InnerEdge } from '../../calculators/maths/plate/band-openings.ts';
import { areaWithin, depthWithin } from '../../calculators/maths/plate/edge-parts.ts';
import { landOutline, type Edge, type Land } from '../../calculators/maths/plate/land-outline.ts';
import { spreader, type Next } from '../calculators/states.ts';
import { expectClosed } from './outline-ends.ts';
import { thrown } from './thrown.ts';

const RADIANS = Math.PI / 180;
const land = (x: number, y: number, radius = 8): Land => ({ x, y, radius });
const corners = [land(0, 0), land(60, 0), land(60, 40), land(0, 40)];

const edgesOf = (border: readonly InnerEdge[]): Edge[] => border.map(({ edge }) => edge);
const areas = (openings: readonly (readonly InnerEdge[])[]): number[] =>
  openings.map((border) => areaWithin(edgesOf(border)));
const opened = (band: number, lands: readonly Land[], bulges: readonly number[] = []) =>
  bandOpenings(landOutline(lands, bulges), band, lands);

describe('the opening inside a band, by hand', () => {
  // Lands of 8 mm about 60 by 40 mm: the outline lies 8 mm outside of their centres.
  it('as wide as the lands reach in has its corners at their centres, less a quarter of each', () => {
    const [border, ...more] = opened(8, corners);
    expect(more).toEqual([]);
    expect(areaWithin(edgesOf(border!))).toBeCloseTo(60 * 40 - Math.PI * 64, 8);
    expect(border!.map(({ edge }) => edge.kind)).toEqual(
      Array.from({ length: 4 }, () => ['line', 'arc']).flat(),
    );
    expect(border!.flatMap(({ land: of }) => of ?? []).sort()).toEqual([0, 1, 2, 3]);
  });

  it('that just touches the lands is a plain rectangle', () => {
    const [border] = opened(16, corners);
    expect(border).toHaveLength(4);
    expect(areaWithin(edgesOf(border!))).toBeCloseTo(44 * 24, 8);
  });

  it('wider than the lands has sharp corners and knows of no land', () => {
    const [border] = opened(19.5, corners);
    expect(areaWithin(edgesOf(border!))).toBeCloseTo(37 * 17, 8);
    expect(border!.every(({ land: of }) => of === undefined)).toBe(true);
  });

  it('of a round part is a circle, into which a land stands', () => {
    const outline: Edge[] = [
      { kind: 'arc', x: 0, y: 0, radius: 50, from: 0, to: 360, hollow: false },
    ];
    const [ring] = bandOpenings(outline, 10, []);
    expect(ring).toEqual([{ edge: { ...outline[0], radius: 40 } }]);
    // A land of 40 mm about a place on the ring of 40 mm takes off the lens of two equal circles.
    const [border] = bandOpenings(outline, 10, [land(40, 0, 40)]);
    const lens = 2 * 40 ** 2 * Math.acos(0.5) - (40 / 2) * Math.sqrt(4 * 40 ** 2 - 40 ** 2);
    expect(areaWithin(edgesOf(border!))).toBeCloseTo(Math.PI * 1600 - lens, 6);
  });

  it('is two where lands meet across it, the larger first', () => {
    const lands = [...corners, land(25, 0, 20), land(25, 40, 20)];
    const outline = landOutline(corners, []);
    const both = bandOpenings(outline, 6, lands);
    expect(both).toHaveLength(2);
    const [larger, smaller] = areas(both);
    expect(larger).toBeGreaterThan(smaller!);
    // The lands touch: each opening is closed by itself and runs round both of them once.
    for (const border of both) {
      expectClosed(edgesOf(border), 2e-3);
      expect(border.filter(({ land: of }) => of === 4 || of === 5)).toHaveLength(2);
    }
  });

  it('takes no notice of a land of no width', () => {
    const [border] = opened(8, [...corners, land(30, 20, 0)]);
    expect(areaWithin(edgesOf(border!))).toBeCloseTo(60 * 40 - Math.PI * 64, 8);
    const numbers = bandOpenings(landOutline(corners, []), 8, [land(30, 20, 0), ...corners])[0]!;
    expect(numbers.flatMap(({ land: of }) => of ?? []).sort()).toEqual([1, 2, 3, 4]);
  });
});

describe('a band that cannot be', () => {
  it('meets itself: says how narrow it must be', () => {
    // The outline is 56 mm across: half of it.
    const error = thrown(() => opened(30, corners));
    expect([error.code, ...error.quantities]).toEqual(['no-opening', 'band', 'land']);
    expect(error.message).toMatch(/must be narrower than (28|27\.99) mm/);
  });

  it('where the lands fill the part: says so', () => {
    const error = thrown(() =>
      bandOpenings(landOutline(corners, []), 5, [...corners, land(30, 20, 60)]),
    );
    expect(error.code).toBe('no-opening');
    expect(error.message).toContain('The lands alone fill the part');
  });

  it('from which a land would fall: names its hole and by how much it hangs free', () => {
    // 20 mm from the centre to the inner edge 3 mm below the holes, less 5 mm of land.
    const error = thrown(() =>
      bandOpenings(landOutline(corners, []), 5, [...corners, land(30, 20, 5)]),
    );
    expect([error.code, ...error.quantities]).toEqual(['loose-land', 'band', 'land-5']);
    expect(error.message).toMatch(/^Hole 5 with its land stands free .* 18 mm part it/);
    const two = thrown(() =>
      bandOpenings(landOutline(corners, []), 5, [...corners, land(27, 20, 5), land(34, 20, 5)]),
    );
    expect(two.message).toMatch(/^Holes 5 and 6 with their lands stand free .* part them/);
  });
});

/** How far a place lies from an edge, by the registry's library. */
function apart(edge: Edge, x: number, y: number): number {
  const there = point(x, y);
  if (edge.kind === 'line') {
    return there.distanceTo(segment(edge.x1, edge.y1, edge.x2, edge.y2))[0];
  }
  const { radius, from, to } = edge;
  const middle = point(edge.x, edge.y);
  return to - from >= 360
    ? there.distanceTo(new Circle(middle, radius))[0]
    : there.distanceTo(new Arc(middle, radius, from * RADIANS, to * RADIANS, true))[0];
}

/** Places along an edge, its ends among them. */
function along(edge: Edge): (readonly [number, number])[] {
  return [0, 0.13, 0.5, 0.87, 1].map((share) => {
    if (edge.kind === 'line') {
      const { x1, y1, x2, y2 } = edge;
      return [x1 + (x2 - x1) * share, y1 + (y2 - y1) * share] as const;
    }
    const angle = (edge.from + (edge.to - edge.from) * share) * RADIANS;
    return [
      edge.x + edge.radius * Math.cos(angle),
      edge.y + edge.radius * Math.sin(angle),
    ] as const;
  });
}

interface Made {
  readonly outline: readonly Edge[];
  readonly lands: readonly Land[];
  readonly band: number;
  readonly openings: readonly (readonly InnerEdge[])[];
}

/** Lands put down at random, every other time on whole millimetres, where edges touch and meet. */
function made(next: Next, whole: boolean): Made | string {
  const to = (value: number): number => (whole ? Math.round(value) : value);
  const lands = Array.from({ length: 2 + Math.floor(next() * 8) }, () =>
    land(to(100 * next()), to(80 * next()), to(3 + 9 * next())),
  );
  const bulges = lands.map(() => (next() < 0.6 ? 0 : to(8 * next() - 4)));
  const band = Math.max(1, to(1 + 16 * next()));
  try {
    const outline = landOutline(lands, bulges);
    return { outline, lands, band, openings: bandOpenings(outline, band, lands) };
  } catch (problem) {
    if (problem instanceof MathsError) return problem.code;
    throw problem;
  }
}

describe.each([false, true])('openings of parts made up at random (whole mm: %s)', (whole) => {
  const next = spreader(whole ? 71 : 37);
  const parts = Array.from({ length: 150 }, () => made(next, whole));
  const some = parts.filter((part) => typeof part !== 'string');

  it('are there for most, and the others are refused by a word of their own', () => {
    expect(some.length).toBeGreaterThan(60);
    const refusals = parts.filter((part) => typeof part === 'string');
    expect(new Set(refusals)).toEqual(new Set(['no-opening', 'loose-land', 'bulge-too-large']));
  });

  it('are closed', () => {
    for (const { openings } of some) {
      for (const border of openings) expectClosed(edgesOf(border), 1e-5);
    }
  });

  it('keep the band from the outer edge and each land whole, as @flatten-js/core 1.6.15 has it', () => {
    for (const { openings, outline, lands, band } of some) {
      for (const { edge, land: of } of openings.flat()) {
        for (const [x, y] of along(edge)) {
          const far = Math.min(...outline.map((one) => apart(one, x, y)));
          expect(far).toBeGreaterThan(band - 1e-5);
          if (of === undefined) expect(far).toBeLessThan(band + 1e-5);
          lands.forEach((one, i) => {
            const away = Math.hypot(x - one.x, y - one.y);
            expect(away).toBeGreaterThan(one.radius - 1e-5);
            if (of === i) expect(away).toBeLessThan(one.radius + 1e-5);
          });
        }
      }
    }
  });

  it('cross themselves and each other nowhere, as the same library has it', () => {
    const shape = (edge: Edge) =>
      edge.kind === 'line'
        ? segment(edge.x1, edge.y1, edge.x2, edge.y2)
        : edge.to - edge.from >= 360
          ? new Circle(point(edge.x, edge.y), edge.radius)
          : new Arc(
              point(edge.x, edge.y),
              edge.radius,
              edge.from * RADIANS,
              edge.to * RADIANS,
              true,
            );
    for (const { openings } of some) {
      const edges = openings.flatMap(edgesOf);
      const tips = edges.flatMap((edge) => [along(edge)[0]!, along(edge)[4]!]);
      edges.forEach((one, i) => {
        for (const other of edges.slice(0, i)) {
          for (const { x, y } of shape(one).intersect(shape(other) as never)) {
            const nearest = Math.min(...tips.map(([u, v]) => Math.hypot(u - x, v - y)));
            expect(nearest).toBeLessThan(2e-3);
          }
        }
      });
    }
  });

  it('hold as much as a count of places that keep their distance', () => {
    const PLACES = 6000;
    for (const { openings, outline, lands, band } of some.slice(0, 40)) {
      let inside = 0;
      for (let i = 0; i < PLACES; i += 1) {
        // A lattice that fills the square evenly.
        const x = -20 + 140 * ((i * 0.7548776662) % 1);
        const y = -20 + 120 * ((i * 0.5698402909) % 1);
        const free = lands.every((one) => Math.hypot(x - one.x, y - one.y) >= one.radius);
        if (free && depthWithin(outline, x, y) >= band) inside += 1;
      }
      const counted = (inside / PLACES) * 140 * 120;
      const ours = areas(openings).reduce((a, b) => a + b, 0);
      expect(Math.abs(ours - counted)).toBeLessThan(90);
    }
  });
});
