import { chain, bignumber, sqrt, type BigNumber } from 'mathjs';
import { jetAreaRatio, jetOfArea, mixtureRatio } from '../../calculators/maths/carburettor/jets.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'air-and-jet';

/** Relative density in the example: pressure from height by a common logarithm, temperature by 6.5 °C a km. */
const thinAir = (10 ** (-5000 / 19_200) * 300) / (300 - 32.5);

const fourthRoot = (value: number): BigNumber =>
  chain(bignumber(value)).sqrt().sqrt().done() as unknown as BigNumber;

export const checks: readonly OutsideCheck[] = [
  {
    topic,
    what: 'Air-fuel ratio at 5000 m of a carburettor that gives 14 to 1 at sea level and 27 °C',
    source:
      'By hand: fuel and air pass under the same drop, so the ratio goes with the root of the density: 14·√(0.4157/0.6751)',
    kind: 'hand-worked',
    unit: ': 1',
    expected: 10.99,
    ours: () => 14 / mixtureRatio(thinAir),
    tolerance: 0.005,
    why: 'two decimals',
  },
  ...[0.7, 0.85, 0.96, 1.08].map((density): OutsideCheck => ({
    topic,
    what: `Jet of 1 mm for air of relative density ${density}`,
    source: 'mathjs 15.2, big numbers: the fourth root, since area goes with the square root',
    kind: 'library',
    unit: 'mm',
    expected: () => Number(fourthRoot(density)),
    ours: () => jetOfArea(1, jetAreaRatio(density)),
    tolerance: 1e-14,
  })),
  {
    topic,
    what: 'Flow of fuel over flow of air with the kept mixture, by Bernoulli and continuity step by step in SI units, density 1.2 before and 0.96 now',
    source: 'Worked step by step: velocity 80 m/s in the venturi, fuel 740 kg/m³, mathjs 15.2',
    kind: 'hand-worked',
    unit: '1',
    expected: () => {
      const ratioFor = (air: number, jetArea: number): BigNumber => {
        const drop = bignumber(air).times(80).times(80).div(2);
        const fuel = sqrt(drop.times(2).times(740)) as BigNumber;
        return fuel.times(jetArea).div(bignumber(air).times(80));
      };
      return Number(ratioFor(1.2, 1).div(ratioFor(0.96, 1)));
    },
    ours: () => jetAreaRatio(0.96 / 1.2),
    tolerance: 1e-14,
  },
];
