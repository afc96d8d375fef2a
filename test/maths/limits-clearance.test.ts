import { nextOversize } from '../../calculators/maths/cylinder/bore-wear.ts';
import { grown } from '../../calculators/maths/cylinder/expansion.ts';
import {
  fillsAt,
  hotRingGap,
  pistonClearance,
} from '../../calculators/maths/cylinder/piston-clearance.ts';
import { holdsTo, range } from './limits.ts';

const part = (size: number) => ({ size, expansion: 20, temperature: 100 });
const sizes = {
  takes: [0.001, 1e6],
  refuses: [0, -1, NaN, Infinity],
};

holdsTo([
  {
    of: ['expansion'],
    run: (expansion) => grown(50, expansion, 100),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The expansion', '0 ·10⁻⁶/K or more'),
  },
  {
    code: 'not-a-number',
    of: ['temperature'],
    run: (warmer) => grown(50, 20, warmer),
    takes: [-300, 1e6],
    refuses: [NaN, Infinity],
    says: /^The change of temperature is not a number\. Check both/,
  },
  {
    ...sizes,
    of: ['bore'],
    run: (size) => pistonClearance({ bore: part(size), piston: part(50), measuredAt: 20 }),
    says: range('The bore', 'more than 0 mm'),
  },
  {
    ...sizes,
    of: ['piston'],
    run: (size) => pistonClearance({ bore: part(50), piston: part(size), measuredAt: 20 }),
    says: range('The diameter of the piston', 'more than 0 mm'),
  },
  {
    ...sizes,
    of: ['bore'],
    run: (size) => fillsAt({ bore: part(size), piston: part(0.0005), measuredAt: 20 }),
    says: range('The bore', 'more than 0 mm'),
  },
  {
    ...sizes,
    of: ['piston'],
    run: (size) => fillsAt({ bore: part(2e6), piston: part(size), measuredAt: 20 }),
    says: range('The diameter of the piston', 'more than 0 mm'),
  },
  {
    ...sizes,
    of: ['bore'],
    run: (size) => hotRingGap(part(size), part(0), 20),
    says: range('The bore', 'more than 0 mm'),
  },
  {
    code: 'ring-gap',
    of: ['ringGap'],
    run: (gap) => hotRingGap(part(50), part(gap), 20),
    takes: [0, 5],
    refuses: [-0.01, 5.01, NaN],
    says: /^The ring gap must be from 0 mm to a tenth of the bore, 5 mm\./,
  },
  {
    of: ['standard'],
    run: (standard) => nextOversize(50, standard, 0.25, 0),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The standard bore', 'more than 0 mm'),
  },
  {
    of: ['step'],
    run: (step) => nextOversize(50, 50, step, 0),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The step of the oversizes', 'more than 0 mm'),
  },
  {
    of: ['cleanUp'],
    run: (cleanUp) => nextOversize(50, 50, 0.25, cleanUp),
    takes: [0, 1e6],
    refuses: [-0.01, NaN, Infinity],
    says: range('What honing takes off', '0 mm or more'),
  },
]);
