import { fraction, type Fraction } from 'mathjs';
import {
  mixedRatio,
  oilFor,
  oilToReach,
  ratioOfPercent,
} from '../../calculators/maths/fuel/fuel-and-oil.ts';
import { convert } from '../../calculators/maths/units/units.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'fuel-and-oil';
const exact = 'mathjs 15.2, exact fractions';
const NIST =
  'A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units, NIST Special Publication 811 (2008), Appendix B.8';

interface Tankful {
  readonly fuel: number;
  readonly ratio: number;
  readonly already: number;
  readonly there: number;
}

const tankfuls: readonly Tankful[] = [
  { fuel: 5, ratio: 25, already: 2, there: 50 },
  { fuel: 8, ratio: 32, already: 3, there: 33 },
  { fuel: 1, ratio: 16, already: 7, there: 24 },
  { fuel: 12, ratio: 20, already: 0, there: 25 },
];

const over = (a: number, b: number): Fraction => fraction(a, b);

/** Petrol and oil there: of `already` litres, 1 part in `there` + 1 is oil. */
const parts = ({ already, there }: Tankful) => ({
  petrol: over(already * there, there + 1),
  oil: over(already, there + 1),
});

const litres = (volume: number): string => `${volume} ${volume === 1 ? 'litre' : 'litres'}`;
const words = ({ fuel, ratio, already, there }: Tankful): string =>
  `${litres(fuel)} at ${ratio} to 1 onto ${litres(already)} of ${there} to 1`;

export const checks: readonly OutsideCheck[] = [
  ...tankfuls.flatMap((tankful): OutsideCheck[] => {
    const { fuel, ratio, already, there } = tankful;
    const tank = { volume: already, ratio: there };
    return [
      {
        topic,
        what: `Ratio in the tank: ${words(tankful)}`,
        source: exact,
        kind: 'library',
        unit: ': 1',
        expected: () => {
          const { petrol, oil } = parts(tankful);
          return Number(
            petrol
              .add(fuel)
              .div(oil.add(over(fuel, ratio)))
              .valueOf(),
          );
        },
        ours: () => mixedRatio(fuel, oilFor(fuel, ratio), tank),
        tolerance: 1e-12,
      },
      {
        topic,
        what: `Oil that brings the whole tank to ${ratio} to 1: ${words(tankful)}`,
        source: exact,
        kind: 'library',
        unit: 'litres',
        expected: () => {
          const { petrol, oil } = parts(tankful);
          return Number(petrol.add(fuel).div(ratio).sub(oil).valueOf());
        },
        ours: () => oilToReach(fuel, ratio, tank),
        tolerance: 1e-14,
      },
    ];
  }),
  {
    topic,
    what: 'Oil for 1 US gallon at 50 to 1',
    source: `${NIST}: 1 gallon (US) is 3.785 412 litres; divided by 50`,
    kind: 'standard',
    unit: 'ml',
    expected: 75.70824,
    ours: () => 1000 * oilFor(convert(1, 'US gal', 'l'), 50),
    tolerance: 1e-5,
    why: 'seven figures printed',
  },
  {
    topic,
    what: 'Oil for 1 imperial gallon at 20 to 1: two fifths of a pint',
    source: `${NIST}: 1 gallon (imperial) is 4.546 09 litres; divided by 20`,
    kind: 'standard',
    unit: 'ml',
    expected: 227.3045,
    ours: () => 1000 * oilFor(convert(1, 'imp gal', 'l'), 20),
    tolerance: 1e-10,
  },
  {
    topic,
    what: 'Ratio that 3 per cent of oil means',
    source: `${exact}: 100/3`,
    kind: 'library',
    unit: ': 1',
    expected: () => Number(over(100, 3).valueOf()),
    ours: () => ratioOfPercent(3),
    tolerance: 0,
  },
];
