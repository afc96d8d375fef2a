import { describe, expect, it } from 'vitest';
import { fitHoles } from '../../calculators/maths/plate/hole-pattern.ts';
import { apart, exactly } from './caliper.ts';
import { thrown } from './thrown.ts';
import { everyPair } from './every-pair.ts';

type Point = readonly [x: number, y: number];

describe('a hole that goes only to three others in a row may lie on either side of it', () => {
  const RADIANS = Math.PI / 180;
  // Five holes that hold each other, three of them in a row; a sixth 22 mm off the row.
  const turned = (slant: number, off = 22): Point[] => {
    const along = (far: number, aside = 0): Point => [
      45 + far * Math.cos(slant * RADIANS) - aside * Math.sin(slant * RADIANS),
      50 + far * Math.sin(slant * RADIANS) + aside * Math.cos(slant * RADIANS),
    ];
    return [[0, 0], [80, 0], along(-30), along(0), along(34), along(9, off)];
  };
  const pairs = [...everyPair(5), [2, 5], [3, 5], [4, 5]] as const;

  it.each([12, 30, 45, 63, 90, 117, 135, 150, 168])('whatever its slant: %d°', (slant) => {
    for (const off of [22, -22]) {
      const { code, message } = thrown(() => fitHoles(exactly(turned(slant, off), pairs)));
      expect(code).toBe('either-side');
      expect(message).toMatch(
        /^Hole 6 may lie on either side of the line through holes 3, 4 and 5, .* Measure also from hole [12] to 6\.$/,
      );
    }
  });

  it.each([12, 45, 90, 135])('and is placed by one distance more: %d°', (slant) => {
    const places = turned(slant);
    const fit = fitHoles(exactly(places, [...pairs, [0, 5]]));
    expect(fit.rms).toBeLessThan(1e-6);
    for (const [a, b] of everyPair(6)) {
      const between = Math.hypot(
        fit.places[a]!.x - fit.places[b]!.x,
        fit.places[a]!.y - fit.places[b]!.y,
      );
      expect(between).toBeCloseTo(apart(places[a]!, places[b]!), 5);
    }
  });
});

describe('a part that the first guess folds over is unfolded: places known, distances exact', () => {
  const pairsOf = (text: string): (readonly [number, number])[] =>
    text.split(' ').map((pair) => pair.split('-').map((hole) => Number(hole) - 1) as never);
  it.each([
    [
      'nine holes',
      [
        [38, 29],
        [20, 46],
        [57, 59],
        [11, 45],
        [96, 68],
        [80, 19],
        [21, 14],
        [52, 43],
        [57, 44],
      ],
      '1-2 1-3 2-3 2-4 3-4 1-4 3-5 2-5 4-5 4-6 1-6 2-6 6-7 1-7 2-7 2-8 4-8 5-8 1-9 6-9 7-9',
    ],
    [
      'eleven holes',
      [
        [98, 26],
        [57, 41],
        [47, 27],
        [32, 12],
        [4, 29],
        [28, 34],
        [68, 43],
        [84, 53],
        [83, 23],
        [3, 47],
        [81, 67],
      ],
      '1-2 1-3 2-3 3-4 2-4 1-4 1-5 4-5 2-5 2-6 5-6 3-6 1-7 2-7 6-7 2-8 4-8 7-8 1-9 2-9 3-9 7-10 1-10 2-10 4-11 3-11 7-11',
    ],
  ] as const)('%s', (_, places, text) => {
    const pairs = pairsOf(text);
    const fit = fitHoles(exactly(places, pairs));
    for (const [a, b] of everyPair(places.length)) {
      const [from, to] = [fit.places[a]!, fit.places[b]!];
      expect(Math.hypot(from.x - to.x, from.y - to.y)).toBeCloseTo(
        apart(places[a]!, places[b]!),
        5,
      );
    }
  });
});
