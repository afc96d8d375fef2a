import { Arc, point, segment } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { landOutline, type Edge } from '../../calculators/maths/plate/land-outline.ts';
import { spreader } from '../calculators/states.ts';
import { thrown } from './thrown.ts';
import { bar, land } from './lands.ts';

const RADIANS = Math.PI / 180;

describe('an outline that crosses itself is refused', () => {
  it('where two edges bow through each other: says which, where, and how much is too much', () => {
    const error = thrown(() => landOutline(bar, [-17, 0, -17, 0]));
    expect([error.code, ...error.quantities]).toEqual(['edges-cross', 'bulge-1', 'bulge-3']);
    expect(error.message).toMatch(/^The edges on from holes 1 and 3 are so hollow that they cross/);
    // By symmetry they meet on the line halfway between them.
    expect(error.message).toMatch(/near X and Y of [\d.]+ and 10 mm: the part would fall in two/);
    // Half of 30 mm each: the tenth below 15.
    expect(error.message).toMatch(/hollow by no more than (15 and 15|14\.9 and 14\.9) mm/);
  });

  it.each([
    [[-14.9, 0, -14.9, 0], true],
    [[-15.1, 0, -15.1, 0], false],
    [[-20, 0, -9.9, 0], true],
    [[-20, 0, -10.1, 0], false],
    [[-29.9, 0, 0, 0], true],
    [[-30.1, 0, 0, 0], false],
    // One that bows out makes room for the other.
    [[-31.9, 0, 2, 0], true],
    [[-32.1, 0, 2, 0], false],
  ] as const)('with long edges 30 mm apart that bulge by %j: may it be? %s', (bulges, may) => {
    if (may) expect(landOutline(bar, bulges).length).toBeGreaterThan(4);
    else expect(thrown(() => landOutline(bar, bulges)).code).toBe('edges-cross');
  });

  it('what it says to be enough is enough', () => {
    const { message } = thrown(() => landOutline(bar, [-22, 0, -16, 0]));
    const [, first, second] = /no more than ([\d.]+) and ([\d.]+) mm/.exec(message)!;
    expect(() => landOutline(bar, [-Number(first), 0, -Number(second), 0])).not.toThrow();
  });

  it('where an edge bows through a straight one, or through the land of another hole', () => {
    const straight = thrown(() => landOutline(bar, [-31, 0, 0, 0]));
    expect(straight.quantities).toEqual(['bulge-1']);
    expect(straight.message).toMatch(
      /on from hole 1 is so hollow that it crosses the edge on from hole 3/,
    );
    expect(straight.message).toMatch(/no more than (30|29\.9) mm/);
    const three = [land(0, 0, 5), land(60, 0, 5), land(30, 25, 5)];
    const apex = thrown(() => landOutline(three, [-36, 0, 0]));
    expect(apex.message).toMatch(/crosses the (land of|edge on from) hole [23]/);
  });
});

/** An edge as @flatten-js/core 1.6.15 has it. */
const shape = (edge: Edge) =>
  edge.kind === 'line'
    ? segment(edge.x1, edge.y1, edge.x2, edge.y2)
    : new Arc(point(edge.x, edge.y), edge.radius, edge.from * RADIANS, edge.to * RADIANS, true);

/** How often two edges that are no neighbours meet, by that library. */
function meetings(edges: readonly Edge[]): number {
  let count = 0;
  edges.forEach((a, j) => {
    edges.slice(0, Math.max(0, j - 1)).forEach((b, i) => {
      if (i === 0 && j === edges.length - 1) return;
      count += shape(a).intersect(shape(b) as never).length;
    });
  });
  return count;
}

it('of random parts none that is drawn crosses itself, by the same library, and some are refused', () => {
  const next = spreader(411);
  const codes: string[] = [];
  let drawn = 0;
  for (let i = 0; i < 300; i += 1) {
    const lands = Array.from({ length: 3 + Math.floor(next() * 4) }, () =>
      land(100 * next(), 60 * next(), 3 + 5 * next()),
    );
    const bulges = lands.map(() => (next() < 0.4 ? 0 : 5 - 40 * next()));
    try {
      const edges = landOutline(lands, bulges);
      drawn += 1;
      expect(meetings(edges)).toBe(0);
    } catch (problem) {
      if (!(problem instanceof MathsError)) throw problem;
      codes.push(problem.code);
    }
  }
  expect(drawn).toBeGreaterThan(40);
  expect(codes.filter((code) => code === 'edges-cross').length).toBeGreaterThan(20);
});
