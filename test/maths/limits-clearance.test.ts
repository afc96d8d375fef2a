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
  takes: [1, 500],
  refuses: [0.9, 501, NaN, Infinity],
};

holdsTo([
  {
    of: ['expansion'],
    run: (expansion) => grown(50, expansion, 100),
    takes: [0, 100],
    refuses: [-0.1, 101, NaN, Infinity],
    says: range('The expansion', 'from 0 to 100 ·10⁻⁶/K'),
  },
  {
    of: ['temperature'],
    run: (warmer) => grown(50, 20, warmer),
    takes: [-300, 1000],
    refuses: [-301, 1001, NaN, Infinity],
    says: range('The change of temperature', 'from -300 to 1000 K'),
  },
  {
    ...sizes,
    of: ['bore'],
    run: (size) => pistonClearance({ bore: part(size), piston: part(50), measuredAt: 20 }),
    says: range('The bore', 'from 1 to 500 mm'),
  },
  {
    ...sizes,
    of: ['piston'],
    run: (size) => pistonClearance({ bore: part(50), piston: part(size), measuredAt: 20 }),
    says: range('The diameter of the piston', 'from 1 to 500 mm'),
  },
  {
    ...sizes,
    of: ['bore'],
    run: (size) => fillsAt({ bore: part(size), piston: part(50), measuredAt: 20 }),
    says: range('The bore', 'from 1 to 500 mm'),
  },
  {
    ...sizes,
    of: ['piston'],
    run: (size) => fillsAt({ bore: part(50), piston: part(size), measuredAt: 20 }),
    says: range('The diameter of the piston', 'from 1 to 500 mm'),
  },
  {
    ...sizes,
    of: ['bore'],
    run: (size) => hotRingGap(part(size), part(0.05), 20),
    says: range('The bore', 'from 1 to 500 mm'),
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
    takes: [1, 500],
    refuses: [0.9, 501, NaN, Infinity],
    says: range('The standard bore', 'from 1 to 500 mm'),
  },
  {
    of: ['step'],
    run: (step) => nextOversize(50, 50, step, 0),
    takes: [0.01, 5],
    refuses: [0, -1, 5.1, NaN, Infinity],
    says: range('The step of the oversizes', 'from 0\\.01 to 5 mm'),
  },
  {
    of: ['cleanUp'],
    run: (cleanUp) => nextOversize(50, 50, 0.25, cleanUp),
    takes: [0, 5],
    refuses: [-0.01, 5.1, NaN, Infinity],
    says: range('What honing takes off', 'from 0 to 5 mm'),
  },
]);
