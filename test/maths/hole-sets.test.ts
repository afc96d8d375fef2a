import { describe, expect, it } from 'vitest';
import { setsAbout, type Polar } from '../../calculators/maths/plate/hole-sets.ts';

const hole = (radius: number, angle: number, diameter = 5): Polar => ({ radius, angle, diameter });

/** A set of three holes put down about so many directions, in the order of the round. */
const put = (directions: readonly number[]): Polar[] =>
  directions.flatMap((at) => [hole(30, at, 4), hole(40, at + 15), hole(35, at + 40, 6)]);

const turned = (angle: number): number => ((angle % 360) + 360) % 360;

describe('holes as so many like sets', () => {
  it.each([
    ['two', [0, 180]],
    ['three', [10, 130, 250]],
    ['three from before the line', [-20, 100, 220]],
    ['three unevenly', [0, 100, 250]],
    ['four', [45, 135, 225, 315]],
  ])('finds %s where they were put, whatever hole comes first', (_, directions) => {
    const round = put(directions);
    for (let first = 0; first < round.length; first += 1) {
      const sets = setsAbout([...round.slice(first), ...round.slice(0, first)], directions.length)!;
      expect(sets.worst).toBeCloseTo(0, 9);
      const found = sets.directions.map(turned).sort((a, b) => a - b);
      directions
        .map(turned)
        .sort((a, b) => a - b)
        .forEach((at, i) => expect(found[i]).toBeCloseTo(at, 9));
      expect(sets.holes.map(({ radius }) => radius)).toEqual([30, 40, 35]);
      expect(sets.holes.map(({ diameter }) => diameter)).toEqual([4, 5, 6]);
      sets.holes.forEach(({ angle }, i) => expect(angle).toBeCloseTo([0, 15, 40][i]!, 9));
    }
  });

  it('takes them in any order', () => {
    const round = put([0, 120, 240]);
    const mixed = [4, 0, 8, 3, 7, 1, 5, 2, 6].map((i) => round[i]!);
    expect(setsAbout(mixed, 3)!.worst).toBeCloseTo(0, 9);
  });

  // Worked by hand: of two holes 0.2 apart from alike each lies 0.1 from the mean of both.
  it('tells how far the worst lies from the mean: outwards, along its circle, and across', () => {
    const off = (change: Partial<Polar>): number =>
      setsAbout([...put([0]), { ...hole(30, 180, 4), ...change }, ...put([180]).slice(1)], 2)!
        .worst;
    expect(off({})).toBeCloseTo(0, 9);
    expect(off({ radius: 30.2 })).toBeCloseTo(0.1, 9);
    expect(off({ diameter: 4.6 })).toBeCloseTo(0.3, 9);
    // The first is 0.6° behind the others of its set: a third of that is taken up by the set's own turn,
    // and the two sets share the rest, 0.2° each, at the radius of 30 mm.
    const along = off({ angle: 179.4 });
    expect(along).toBeCloseTo((30 * 0.2 * Math.PI) / 180, 3);
  });

  it('cuts the round where the holes of a set lie closest, where all cuts fit', () => {
    const pairs = [0, 120, 240].flatMap((at) => [hole(30, at), hole(30, at + 20)]);
    for (let first = 0; first < pairs.length; first += 1) {
      const sets = setsAbout([...pairs.slice(first), ...pairs.slice(0, first)], 3)!;
      expect(sets.holes[1]!.angle).toBeCloseTo(20, 9);
    }
  });

  it('leaves a closer cut that fits worse by more than a fifth of a millimetre', () => {
    // Neighbours 20° apart differ in size from pair to pair; those 100° apart are like each other.
    const round = [
      hole(30, 0, 5),
      hole(30, 20, 6),
      hole(30, 120, 5),
      hole(30, 140, 6),
      hole(30, 240, 5),
      hole(31, 260, 6),
    ];
    const sets = setsAbout(round, 3)!;
    expect(sets.holes.map(({ diameter }) => diameter)).toEqual([5, 6]);
    expect(sets.worst).toBeCloseTo(2 / 3, 9);
    const otherwise = [0, 120, 240].flatMap((at, i) => [
      hole(30, at, 5 + i),
      hole(30, at + 20, 5 + ((i + 1) % 3)),
    ]);
    // Here 120° − 20° on stands a hole of the same size, and the set reaches further for it.
    expect(setsAbout(otherwise, 3)!.holes[1]!.angle).toBeCloseTo(20, 9);
  });

  it('is nothing where they cannot be shared out', () => {
    const round = put([0, 120, 240]);
    expect(setsAbout(round, 2)).toBeUndefined();
    expect(setsAbout(round, 0)).toBeUndefined();
    expect(setsAbout(round, -3)).toBeUndefined();
    expect(setsAbout([], 3)).toBeUndefined();
    expect(setsAbout(round, 9)!.holes).toHaveLength(1);
    expect(setsAbout(round, 1)!.holes).toHaveLength(9);
  });
});
