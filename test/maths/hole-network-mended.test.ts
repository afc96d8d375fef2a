import { expect, it } from 'vitest';
import { heldBy, type Pair } from '../../calculators/maths/plate/hole-network.ts';
import { spreader } from '../calculators/states.ts';
import { everyPair } from './every-pair.ts';

const nameOf = ([a, b]: Pair): string => `${String(Math.min(a, b))}-${String(Math.max(a, b))}`;

/** Random networks of three to nine holes, from all but empty to all but full. */
function* networks(seed: number, count: number): Generator<readonly [holes: number, Pair[]]> {
  const next = spreader(seed);
  for (let i = 0; i < count; i += 1) {
    const holes = 3 + Math.floor(next() * 7);
    const wanted = Math.round((2 * holes - 3) * (0.5 + 0.8 * next()));
    const pairs = everyPair(holes)
      .map((pair) => ({ pair, at: next() }))
      .sort((a, b) => a.at - b.at)
      .slice(0, wanted)
      .map(({ pair }) => pair);
    yield [holes, pairs];
  }
}

it('what it says to measure besides does hold the holes, and none of it was measured or is named twice', () => {
  const kinds = new Set<string>();
  for (const [holes, pairs] of networks(3, 150)) {
    const { kind, measure } = heldBy(holes, pairs);
    kinds.add(kind);
    expect(heldBy(holes, [...pairs, ...measure])).toEqual({
      kind: 'held',
      holes: [],
      measure: [],
    });
    const names = [...pairs, ...measure].map(nameOf);
    expect(new Set(names).size).toBe(names.length);
    if (kind !== 'held') expect(measure.length).toBeGreaterThan(0);
  }
  expect([...kinds].sort()).toEqual(['hanging', 'held', 'loose', 'mirrored']);
});

it('asks for nothing idle where only stiffness is wanting: each distance named is one that stiffens', () => {
  let loose = 0;
  for (const [holes, pairs] of networks(4, 300)) {
    const { kind, holes: apart, measure } = heldBy(holes, pairs);
    if (kind !== 'loose') continue;
    loose += 1;
    // The two that can move against each other are those of the first distance named.
    expect(apart).toEqual([...measure[0]!].sort((a, b) => a - b));
    // With that one the rest still has a fault, or none; measured over again it changes nothing.
    const after = heldBy(holes, [...pairs, measure[0]!]);
    expect(after.measure).toEqual(measure.slice(1));
    // Fewer distances than it takes to place the holes can never hold them.
    expect(pairs.length + measure.length).toBeGreaterThanOrEqual(2 * holes - 3);
  }
  expect(loose).toBeGreaterThan(10);
});

/** How many ways a network of bars at places chosen at random resists, by elimination. */
function resists(places: readonly (readonly [number, number])[], pairs: readonly Pair[]): number {
  const rows = pairs.map(([a, b]) => {
    const row = places.flatMap(() => [0, 0]);
    [0, 1].forEach((axis) => {
      const along = places[a]![axis]! - places[b]![axis]!;
      row[2 * a + axis] = along;
      row[2 * b + axis] = -along;
    });
    return row;
  });
  let rank = 0;
  for (let column = 0; column < 2 * places.length; column += 1) {
    const size = (row: number[] | undefined): number => Math.abs(row?.[column] ?? 0);
    const lead = rows.slice(rank).reduce((a, b) => (size(b) > size(a) ? b : a), rows[rank] ?? []);
    if (size(lead) < 1e-7) continue;
    rows.splice(rows.indexOf(lead), 1);
    rows.splice(rank, 0, lead);
    for (const row of rows.slice(rank + 1)) {
      const share = row[column]! / lead[column]!;
      lead.forEach((entry, k) => (row[k]! -= share * entry));
    }
    rank += 1;
  }
  return rank;
}

it('names no distance that stiffens nothing while something can still move', () => {
  const next = spreader(12);
  let asked = 0;
  for (const [holes, pairs] of networks(9, 250)) {
    const places = Array.from({ length: holes }, () => [next() * 10, next() * 10] as const);
    const so = [...pairs];
    for (const pair of heldBy(holes, pairs).measure) {
      const before = resists(places, so);
      so.push(pair);
      // A hole that hangs free, or a part that moves, is held by one way more.
      if (before === 2 * holes - 3) continue;
      expect(resists(places, so)).toBe(before + 1);
      asked += 1;
    }
  }
  expect(asked).toBeGreaterThan(50);
});

it('goes by no order, no direction, and counts what was measured twice once', () => {
  const next = spreader(5);
  for (const [holes, pairs] of networks(6, 60)) {
    const turned = pairs.map(([a, b]): Pair => (next() < 0.5 ? [a, b] : [b, a]));
    const twice = [...turned, ...turned.map(([a, b]): Pair => [b, a])];
    expect(heldBy(holes, turned)).toEqual(heldBy(holes, pairs));
    expect(heldBy(holes, twice)).toEqual(heldBy(holes, pairs));
  }
});

it('names the smaller part where one may lie on either side of a line', () => {
  let mirrored = 0;
  for (const [holes, pairs] of networks(8, 350)) {
    const { kind, holes: part, line, measure } = heldBy(holes, pairs);
    if (kind !== 'mirrored') continue;
    mirrored += 1;
    const rest = everyPair(holes).flat();
    const others = [...new Set(rest)].filter(
      (hole) => !part.includes(hole) && !line!.includes(hole),
    );
    expect(part.length).toBeLessThanOrEqual(others.length);
    // No distance goes from that part past the line.
    for (const [a, b] of pairs) {
      expect(part.includes(a) && others.includes(b)).toBe(false);
      expect(part.includes(b) && others.includes(a)).toBe(false);
    }
    // The first that is named does.
    const [a, b] = measure[0]!;
    expect(part.includes(a) !== part.includes(b)).toBe(true);
    expect(others.includes(a) || others.includes(b)).toBe(true);
  }
  expect(mirrored).toBeGreaterThan(10);
});

it('holds two triangles on three distances by one more, which is none of those measured', () => {
  const prism = ['0-1', '0-2', '1-2', '3-4', '3-5', '4-5', '0-3', '1-4', '2-5'].map(
    (name): Pair => name.split('-').map(Number) as unknown as Pair,
  );
  const { kind, holes, measure } = heldBy(6, prism);
  expect(kind).toBe('twofold');
  // It is about a distance that was measured, and that nothing checks.
  expect(prism.map(nameOf)).toContain(nameOf(holes as unknown as Pair));
  expect(measure).toHaveLength(1);
  expect(prism.map(nameOf)).not.toContain(nameOf(measure[0]!));
  expect(heldBy(6, [...prism, ...measure]).kind).toBe('held');
});
