import {
  ethanolDensity,
  fuelDensity,
  petrolDensity,
  USUAL_OIL,
  USUAL_PETROL,
} from '../../calculators/maths/fuel/fuel-density.ts';
import { pureEthanol } from './references/alcohol-tables.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'float-level';

export const checks: readonly OutsideCheck[] = [
  {
    topic,
    what: 'Loss of density of petrol for each °C',
    source: 'Common practice in the fuel trade: petrol loses 0.8 to 1.0 kg/m³ for each °C',
    kind: 'common practice',
    unit: 'kg/m³',
    expected: 0.9,
    ours: () => petrolDensity(USUAL_PETROL, 15) - petrolDensity(USUAL_PETROL, 16),
    tolerance: 0.1,
  },
  {
    topic,
    what: 'Density at 35 °C of petrol of 745 kg/m³ at 15 °C',
    source:
      'By hand after ASTM D1250-80, table 54B: expansion 346.4228/745² + 0.4388/745 = 0.00121315 for each °C; 20 of them are x = 0.0242629; 745·exp(−x·(1 + 0.8·x))',
    kind: 'hand-worked',
    unit: 'kg/m³',
    expected: 726.799,
    ours: () => petrolDensity(745, 35),
    tolerance: 1e-3,
  },
  ...[0, 15, 20, 40].map((temperature): OutsideCheck => ({
    topic,
    what: `Density of pure ethanol at ${temperature} °C`,
    source:
      'Council Directive 76/766/EEC of 27 July 1976, annex, section 4: formula of the international alcohol tables (that of OIML R 22), all ethanol and no water',
    kind: 'standard',
    unit: 'kg/m³',
    expected: () => pureEthanol(temperature),
    ours: () => ethanolDensity(temperature),
    tolerance: 0.3,
    why: 'ours is a straight line about 20 °C',
  })),
  {
    topic,
    what: 'Density of petrol of 745 kg/m³ with 25 to 1 of oil of 870 kg/m³, at 15 °C',
    source: 'By hand: (25 × 745 + 870) / 26',
    kind: 'hand-worked',
    unit: 'kg/m³',
    expected: 749.807692,
    ours: () =>
      fuelDensity(
        {
          petrolDensity: USUAL_PETROL,
          ethanolPercent: 0,
          oilRatio: 25,
          oilDensity: USUAL_OIL,
        },
        15,
      ),
    tolerance: 1e-6,
  },
  {
    topic,
    what: 'Petrol of 745 kg/m³ with 10 % ethanol at 15 °C: middle of what the standard for petrol allows',
    source:
      'EN 228:2012, density at 15 °C from 720.0 to 775.0 kg/m³, as quoted in a specification sheet of petrol to that standard; table not known',
    kind: 'standard',
    unit: 'kg/m³',
    expected: 747.5,
    ours: () =>
      fuelDensity(
        {
          petrolDensity: USUAL_PETROL,
          ethanolPercent: 10,
          oilRatio: Infinity,
          oilDensity: USUAL_OIL,
        },
        15,
      ),
    tolerance: 27.5,
    why: 'the width that the standard allows',
  },
];
