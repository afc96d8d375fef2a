import { Arc, Circle, point, segment } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { fromEdge } from '../../calculators/maths/plate/from-edge.ts';
import {
  landOutline,
  reachOf,
  type Edge,
  type Land,
  type RoundEdge,
} from '../../calculators/maths/plate/land-outline.ts';
import { pitchCircle } from '../../calculators/maths/plate/pitch-circle.ts';
import { expectClosed } from './outline-ends.ts';
import { thrown } from './thrown.ts';
import { land } from './lands.ts';

const RADIANS = Math.PI / 180;

const line = (x1: number, y1: number, x2: number, y2: number): Edge => ({
  kind: 'line',
  x1,
  y1,
  x2,
  y2,
});
const round = (x: number, y: number, radius: number, from: number, to: number): RoundEdge => ({
  kind: 'arc',
  x,
  y,
  radius,
  from,
  to,
  hollow: false,
});

const lines = [
  [0, 0, 10, 0],
  [3, 4, -5, 2],
  [-2, -7, 1, 9],
  [4, 4, 4, -6],
] as const;
const arcs = [
  [0, 0, 5, 0, 90],
  [2, -3, 4, 200, 290],
  [-1, 6, 3, -30, 45],
  [5, 5, 8, 10, 350],
  [1, 2, 3, 300, 420],
] as const;
/** The numbers of the lands that an outline goes round, in its order. */
const landsOf = (lands: readonly Land[]): number[] =>
  landOutline(lands, [])
    .filter((edge) => edge.kind === 'arc')
    .map(({ x, y, radius }) =>
      lands.findIndex((each) => each.x === x && each.y === y && each.radius === radius),
    );

const around = [-11, -4, -1, 0.5, 3, 7, 12];

describe('how far a place lies from an edge, as @flatten-js/core 1.6.15 has it', () => {
  it.each(lines)('straight from %d, %d to %d, %d', (...ends) => {
    const [x1, y1, x2, y2] = ends;
    const other = segment(x1, y1, x2, y2);
    for (const x of around) {
      for (const y of around) {
        const [apart] = point(x, y).distanceTo(other);
        expect(fromEdge(line(...ends), x, y)).toBeCloseTo(apart, 9);
      }
    }
  });

  it('straight without a length: from its one place', () => {
    expect(fromEdge(line(1, 2, 1, 2), 4, 6)).toBe(5);
  });

  it.each(arcs)('round about %d, %d of %d from %d° to %d°', (...of) => {
    const [x0, y0, radius, from, to] = of;
    const other = new Arc(point(x0, y0), radius, from * RADIANS, to * RADIANS, true);
    for (const x of around) {
      for (const y of around) {
        if (x === x0 && y === y0) continue;
        const [apart] = point(x, y).distanceTo(other);
        expect(fromEdge(round(...of), x, y), `${String(x)}, ${String(y)}`).toBeCloseTo(apart, 9);
      }
    }
  });

  it('round all the way', () => {
    const other = new Circle(point(2, 1), 6);
    for (const x of around) {
      const [apart] = point(x, 3).distanceTo(other);
      expect(fromEdge(round(2, 1, 6, 0, 360), x, 3)).toBeCloseTo(apart, 9);
    }
  });
});

describe('the upright rectangle round edges, as @flatten-js/core 1.6.15 has it', () => {
  it.each(lines)('of a straight one from %d, %d to %d, %d', (...ends) => {
    const { xmin, xmax, ymin, ymax } = segment(...ends).box;
    expect(reachOf([line(...ends)])).toEqual({ left: xmin, right: xmax, bottom: ymin, top: ymax });
  });

  it.each([
    ...arcs,
    [0, 0, 4, 90, 180],
    [0, 0, 4, 91, 179],
    [0, 0, 4, -45, 225],
    [3, 3, 2, 0, 360],
  ])('of a round one about %d, %d of %d from %d° to %d°', (...of) => {
    const [x, y, radius, from, to] = of as [number, number, number, number, number];
    const whole = to - from >= 360;
    const other = whole
      ? new Circle(point(x, y), radius)
      : new Arc(point(x, y), radius, from * RADIANS, to * RADIANS, true);
    const { xmin, xmax, ymin, ymax } = other.box;
    const reach = reachOf([round(x, y, radius, from, to)]);
    expect(reach.left).toBeCloseTo(xmin, 9);
    expect(reach.right).toBeCloseTo(xmax, 9);
    expect(reach.bottom).toBeCloseTo(ymin, 9);
    expect(reach.top).toBeCloseTo(ymax, 9);
  });
});

const square = [land(0, 0, 3), land(20, 0, 3), land(20, 20, 3), land(0, 20, 3)];

describe('the lands that an outline goes round', () => {
  it.each<readonly [string, readonly number[], readonly Land[]]>([
    ['four at the corners', [0, 1, 2, 3], square],
    ['four and one in the middle', [0, 1, 2, 3], [...square, land(10, 10, 3)]],
    [
      'four of which one stands far in',
      [0, 1, 3],
      [...square.slice(0, 2), land(11, 9, 1), square[3]!],
    ],
    ['numbered crosswise', [0, 2, 1, 3], [square[0]!, square[2]!, square[1]!, square[3]!]],
    [
      'three in a line: the middle one takes no part',
      [0, 2],
      [land(0, 0, 2), land(5, 0, 2), land(10, 0, 2)],
    ],
    [
      'three in a line, the middle one wide',
      [0, 1, 2, 1],
      [land(0, 0, 2), land(5, 0, 3), land(10, 0, 2)],
    ],
    ['one on the edge between two others', [0, 1, 2, 3], [...square, land(10, 0, 3)]],
    ['one within another', [1, 2], [land(1, 0, 1), land(0, 0, 5), land(20, 0, 3)]],
    ['one within another, touching it', [1, 2], [land(4, 0, 1), land(0, 0, 5), land(20, 0, 3)]],
    ['all within one', [], [land(1, 0, 1), land(0, 0, 9), land(0, 3, 2)]],
    ['two alike in one place', [], [land(3, 3, 4), land(3, 3, 4)]],
  ])('%s', (_, numbers, lands) => {
    const found = numbers.length === 0 ? [] : landsOf(lands);
    const first = found.indexOf(numbers[0]!);
    expect([...found.slice(first), ...found.slice(0, Math.max(0, first))]).toEqual(numbers);
    if (numbers.length > 0) expectClosed(landOutline(lands, []));
  });

  it('are one full circle where one holds all others', () => {
    const lands = [land(1, 0, 1), land(0, 0, 9), land(0, 3, 2)];
    expect(landOutline(lands, [])).toEqual([
      { kind: 'arc', x: 0, y: 0, radius: 9, from: 0, to: 360, hollow: false },
    ]);
    expect(landOutline([land(3, 3, 4), land(3, 3, 4)], [])).toHaveLength(1);
  });

  // Worked by hand: four quarters of a circle of 3 and four edges of 20.
  it('at the corners of a square have straight edges and quarters between them', () => {
    const edges = landOutline(square, []);
    expect(edges.map(({ kind }) => kind)).toEqual([
      'arc',
      'line',
      'arc',
      'line',
      'arc',
      'line',
      'arc',
      'line',
    ]);
    for (const edge of edges) {
      if (edge.kind === 'arc') {
        expect(edge.to - edge.from).toBeCloseTo(90, 9);
        expect(edge.radius).toBe(3);
      } else expect(Math.hypot(edge.x2 - edge.x1, edge.y2 - edge.y1)).toBeCloseTo(20, 9);
    }
  });

  it('without a width leave no arc at their corners', () => {
    const edges = landOutline(
      square.map(({ x, y }) => land(x, y, 0)),
      [],
    );
    expect(edges.map(({ kind }) => kind)).toEqual(['line', 'line', 'line', 'line']);
    expectClosed(edges);
  });
});

describe('an edge that bulges', () => {
  it.each([-4, -1, 0.5, 2, 2.9])(
    'by %d stands as far beyond a straightedge, and the outline shuts',
    (bulge) => {
      const edges = landOutline(square, [bulge, 0, 0, 0]);
      expectClosed(edges);
      // The straightedge lies along −3; the arc is furthest from it halfway.
      const lowest = Math.min(...edges.map((edge) => fromEdge(edge, 10, -3 - bulge)));
      expect(lowest).toBeLessThan(1e-6);
      const bent = edges.find((edge) => edge.kind === 'arc' && edge.radius !== 3) as RoundEdge;
      expect(bent.hollow).toBe(bulge < 0);
      expect(bent.x).toBeCloseTo(10, 6);
    },
  );

  it('between lands of two sizes runs smoothly into both', () => {
    const lands = [land(0, 0, 6), land(30, 0, 3), land(15, 25, 4)];
    for (const bulge of [-3, 1.2]) {
      const edges = landOutline(lands, [bulge]);
      expectClosed(edges);
      const bent = edges.find(
        (edge) => edge.kind === 'arc' && lands.every(({ radius }) => radius !== edge.radius),
      ) as RoundEdge;
      for (const { x, y, radius } of lands.slice(0, 2)) {
        const apart = Math.hypot(bent.x - x, bent.y - y);
        expect(apart).toBeCloseTo(bulge < 0 ? bent.radius + radius : bent.radius - radius, 6);
      }
    }
  });

  it.each([[[]], [[2, 0, 1.5, -2]], [[-1, -1, -1, -1]]])(
    'of %j between lands of five sizes is closed, touches each outer land and cuts into none',
    (bulges) => {
      const lands = [
        land(0, 0, 8),
        land(66, 0, 9),
        land(72, 48, 10),
        land(-4, 52, 11),
        land(33, 29, 12),
      ];
      const edges = landOutline(lands, bulges);
      expectClosed(edges, 1e-9);
      for (const { x, y, radius } of lands.slice(0, 4)) {
        const least = Math.min(...edges.map((edge) => fromEdge(edge, x, y)));
        expect(least).toBeCloseTo(radius, 7);
      }
    },
  );

  it('stands out by the bulge where a straightedge is laid on', () => {
    const two = [0, 60].map((x) => ({ x, y: 0, radius: 10 }));
    const straight = reachOf(landOutline(two, []));
    expect(straight).toEqual({ left: -10, right: 70, bottom: -10, top: 10 });
    expect(reachOf(landOutline(two, [4, 0])).bottom).toBeCloseTo(-14, 7);
    const hollow = landOutline(two, [-3, 0]);
    expect(
      fromEdge(
        hollow.find((edge) => edge.kind === 'arc' && edge.hollow)!,
        30,
        0,
      ),
    ).toBeCloseTo(7, 7);
  });

  it('takes a bulge that no straightedge shows for a straight edge', () => {
    const lands = [0, 30].map((x) => ({ x, y: 0, radius: 5 }));
    for (const bulge of [5e-324, -7.4e-323, 1e-9]) {
      expect(landOutline(lands, [bulge])).toEqual(landOutline(lands, [0]));
    }
  });

  it('by so much that no arc runs into the lands is refused, and said of its own hole', () => {
    const error = thrown(() => landOutline(square, [0, 0, 40, 0]));
    expect(error.code).toBe('bulge-too-large');
    expect(error.quantities).toEqual(['bulge-3']);
    expect(error.message).toContain('on from hole 3 cannot bulge by 40 mm');
  });
});

describe('the circle through places', () => {
  it('is refused with the name of what is at fault', () => {
    const inLine = [0, 1, 2, 5].map((x) => ({ x, y: 3 - 2 * x }));
    for (const places of [[], inLine.slice(0, 2), inLine]) {
      const error = thrown(() => pitchCircle(places));
      expect(error.quantities).toEqual(['places']);
    }
    expect(thrown(() => pitchCircle(inLine)).code).toBe('places-in-line');
    // In line to a thousandth of their reach counts as in line, and a slope does not.
    const nearly = inLine.map(({ x, y }, i) => ({ x: x + (i % 2) * 0.001, y }));
    expect(thrown(() => pitchCircle(nearly)).code).toBe('places-in-line');
    const bow = inLine.map(({ x, y }, i) => ({ x: x + (i % 2) * 0.1, y }));
    expect(pitchCircle(bow).radius).toBeGreaterThan(0);
  });

  it('far from where they were counted from is the same circle', () => {
    const at = [10, 80, 200, 310].map((angle) => ({
      x: 500 + 40 * Math.cos(angle * RADIANS),
      y: -300 + 40 * Math.sin(angle * RADIANS),
    }));
    const { x, y, radius, rms } = pitchCircle(at);
    expect(x).toBeCloseTo(500, 8);
    expect(y).toBeCloseTo(-300, 8);
    expect(radius).toBeCloseTo(40, 8);
    expect(rms).toBeCloseTo(0, 8);
  });

  // Four places on two circles of 39 and 41 mm in turn, at right angles: 40, each 1 off, so the rms is 1.
  it('tells how far the places lie off it', () => {
    const places = [39, 41, 39, 41].map((radius, i) => ({
      x: radius * Math.cos((i * Math.PI) / 2),
      y: radius * Math.sin((i * Math.PI) / 2),
    }));
    const { off, rms } = pitchCircle(places);
    [-1, 1, -1, 1].forEach((one, i) => expect(off[i]).toBeCloseTo(one, 6));
    expect(rms).toBeCloseTo(1, 6);
  });
});
