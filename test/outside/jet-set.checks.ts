import { evaluate, max, mean, min, type Unit } from 'mathjs';
import { neighbouringSets } from '../../calculators/maths/carburettor/jet-set.ts';
import { areaByFlow, areaOfBore, boreOfArea } from '../../calculators/maths/carburettor/orifice.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'jet-set';

/** Every choice of `count` of the places from `from` on. */
function choices(places: number, count: number, from = 0): number[][] {
  if (count === 0) return [[]];
  const found: number[][] = [];
  for (let first = from; first <= places - count; first += 1) {
    for (const rest of choices(places, count - 1, first + 1)) found.push([first, ...rest]);
  }
  return found;
}

interface Tried {
  readonly chosen: readonly number[];
  readonly spread: number;
}

/** The set that spreads least, every one tried, the sums by mathjs. */
function everyTried(bores: readonly number[], wanted: number): Tried {
  const areas = bores.map((bore) => (Math.PI * bore ** 2) / 4);
  const all = choices(areas.length, wanted).map((chosen): Tried => {
    const those = chosen.map((place) => areas[place]!);
    return { chosen, spread: (100 * (max(those) - min(those))) / Number(mean(those)) };
  });
  return all.reduce((best, each) => (each.spread < best.spread - 1e-9 ? each : best));
}

const bags: readonly (readonly [wanted: number, bores: readonly number[]])[] = [
  [3, [1.1, 1.125, 1.08, 1.115, 1.105, 1.17, 1.09, 1.14]],
  [2, [0.95, 1.2, 1.03, 0.98, 1.11, 1.07]],
  [4, [1.05, 1.3, 0.9, 1.02, 1.18, 0.97, 1.25, 1.11, 1.4, 1.14, 0.88, 1.21]],
  [6, [2.1, 1.95, 2.3, 2.05, 1.8, 2.2, 2.15, 1.9, 2.25, 2.0]],
  [3, [1.2, 1.1, 1.2, 1.1, 1.1, 1.2]],
];

const setChecks = bags.flatMap(([wanted, bores]): OutsideCheck[] => {
  const what = `${String(wanted)} of ${String(bores.length)} jets, ${bores.join(' ')} mm`;
  const source = `Every one of the ${String(choices(bores.length, wanted).length)} sets tried, largest, smallest and mean by mathjs 15.2.0`;
  const found = () => neighbouringSets(bores.map(areaOfBore), wanted)[0]!;
  return [
    {
      topic,
      what: `least spread of area of ${what}`,
      source,
      kind: 'library',
      unit: '%',
      expected: () => everyTried(bores, wanted).spread,
      ours: () => found().spread,
      tolerance: 1e-9,
    },
    ...Array.from({ length: wanted }, (_, i): OutsideCheck => ({
      topic,
      what: `jet ${String(i + 1)} of the best set of ${what}`,
      source,
      kind: 'library',
      unit: 'number',
      expected: () => everyTried(bores, wanted).chosen[i]! + 1,
      ours: () => found().chosen[i]! + 1,
      tolerance: 0,
    })),
  ];
});

const BOOK =
  'A. K. Choudhary and O. Prakash, Fluid Mechanics, 2nd edition, S. K. Kataria & Sons, New Delhi, 2009, chapter 6 (Orifices)';

export const checks: readonly OutsideCheck[] = [
  ...setChecks,
  {
    topic,
    what: 'bore of the orifice that passes 0.85 litres a second under 1 m of water, coefficient 0.611',
    source: `${BOOK}, example 6.7: the orifice has 20 mm, and the coefficient comes to 0.611`,
    kind: 'published',
    unit: 'mm',
    expected: 20,
    ours: () => boreOfArea(areaByFlow(850, 1, { head: 1000, coefficient: 0.611 })),
    tolerance: 0.01,
    why: 'three digits of the coefficient; the book has 9.81 m/s²',
  },
  {
    topic,
    what: 'bore of the orifice that fills 1 m of a tank 1.5 m wide in 25 s under 10 m, coefficient 0.643',
    source: `${BOOK}, example 6.8: the orifice has 10 cm, and the coefficient comes to 0.643`,
    kind: 'published',
    unit: 'mm',
    expected: 100,
    ours: () => {
      const volume = (Math.PI / 4) * 150 ** 2 * 100;
      return boreOfArea(areaByFlow(volume, 25, { head: 10_000, coefficient: 0.643 }));
    },
    tolerance: 0.06,
    why: 'three digits of the coefficient; the book has 9.81 m/s²',
  },
  {
    topic,
    what: 'bore that passes 191.69 cc a second under 1 ft, coefficient 0.620',
    source:
      'Encyclopædia Britannica, 11th edition, volume 14 (1911), Hydraulics: sharp-edged circular orifice of 0.196 sq. in., coefficient 0.620 at 1 ft; the flow by its relation Q = c·ω·√(2·g·h), § 18, by hand: 0.620 × 0.196 / 144 × √(2 × 32.174) = 0.0067695 cubic feet. Its diameter is half an inch, as the area says',
    kind: 'published',
    unit: 'mm',
    expected: 12.7,
    ours: () => boreOfArea(areaByFlow(191.69, 1, { head: 304.8, coefficient: 0.62 })),
    tolerance: 0.02,
    why: '0.196 is π / 16 to three digits',
  },
  {
    topic,
    what: 'area of the jet that passes 1 cc a second under 300 mm, coefficient 0.7',
    source: 'mathjs 15.2.0 with units: the flow over 0.7 × the root of 2 × 9.80665 m/s² × head',
    kind: 'library',
    unit: 'mm²',
    expected: () =>
      (evaluate('(1 cm^3/s) / (0.7 * sqrt(2 * 9.80665 m/s^2 * 300 mm))') as Unit).toNumber('mm^2'),
    ours: () => areaByFlow(1, 1, { head: 300, coefficient: 0.7 }),
    tolerance: 1e-9,
  },
  {
    topic,
    what: 'area of a jet that takes twice the time for the same volume',
    source: 'By hand: the flow goes with the area, so half of the other’s',
    kind: 'hand-worked',
    unit: '1',
    expected: 0.5,
    ours: () => {
      const bench = { head: 250, coefficient: 0.7 };
      return areaByFlow(100, 124, bench) / areaByFlow(100, 62, bench);
    },
    tolerance: 1e-9,
  },
];
