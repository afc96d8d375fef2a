import {
  clearanceVolume,
  geometricRatio,
  headVolumeFor,
  clearanceForRatio,
  sweptVolume,
  trappedRatio,
} from '../../calculators/maths/cylinder/compression.ts';
import { plugHoleVolume } from '../../calculators/maths/cylinder/head-volume.ts';
import { convert } from '../../calculators/maths/units/units.ts';
import { evaluate } from 'mathjs';
import type { OutsideCheck } from './types.ts';

const topic = 'compression';

/** Throw 30, rod 50: at 90° the piston is 40 mm down of 60. */
const triangle = { stroke: 60, rodLength: 50, pinOffset: 0 };
/** A clearance space as high as 10 mm of a 50 mm bore. */
const tenHigh = (Math.PI / 4) * 50 * 50 * 0.01;

export const checks: readonly OutsideCheck[] = [
  {
    topic,
    what: 'piston displacement of a cylinder of 3 1/2 inches bore and 4 inches stroke',
    source:
      'Construction Mechanic Basic, Volume 1, NAVEDTRA 14264, US Navy, February 1998, “Linear Measurements”, the text to figure 2-24',
    kind: 'published',
    unit: 'cu in',
    expected: 38.43,
    ours: () =>
      convert(
        sweptVolume(
          { stroke: convert(4, 'in', 'mm'), rodLength: 200, pinOffset: 0 },
          convert(3.5, 'in', 'mm'),
        ),
        'cc',
        'cu in',
      ),
    tolerance: 0.06,
    why: 'the manual rounds π to 3.14 and 1.75² to 3.06, which makes it smaller by one part in 700',
  },
  {
    topic,
    what: 'swept volume of 52.5 mm bore and 51 mm stroke',
    source: 'mathjs 15.2.0, with 64 decimal digits',
    kind: 'library',
    unit: 'cc',
    expected: () => Number(evaluate('number(bignumber(pi) / 4 * 52.5^2 * 51 / 1000)')),
    ours: () => sweptVolume({ stroke: 51, rodLength: 104, pinOffset: 0 }, 52.5),
    tolerance: 1e-10,
  },
  {
    topic,
    what: 'geometric ratio of an engine whose clearance is a fifth of its displacement',
    source:
      'Scilab Textbook Companion, FOSSEE, IIT Bombay, book 2417, problem 9.9 of chapter 9, Gas Power Cycles (page 469 of the book it accompanies, edition not known)',
    kind: 'published',
    unit: ': 1',
    expected: 6,
    ours: () => geometricRatio(100, 20),
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'geometric ratio of a cylinder of 60 mm bore and 100 mm stroke with 60 cc of clearance',
    source:
      'Figures and method, (Vs + Vc)/Vc, of example 17.17 of book 443 in the Scilab Textbook Companion, FOSSEE, IIT Bombay; worked by hand from them: (282.743 + 60) / 60',
    kind: 'hand-worked',
    unit: ': 1',
    expected: 5.71239,
    ours: () => geometricRatio(sweptVolume({ stroke: 100, rodLength: 200, pinOffset: 0 }, 60), 60),
    tolerance: 5e-6,
    why: 'worked to that digit',
  },
  {
    topic,
    what: 'geometric ratio of 60 mm of stroke over 10 mm of clearance: 70 / 10',
    source: 'Worked by hand: heights in the same bore',
    kind: 'hand-worked',
    unit: ': 1',
    expected: 7,
    ours: () => geometricRatio(sweptVolume(triangle, 50), tenHigh),
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'trapped ratio of the same engine, exhaust opening at 90° with 40 mm of stroke above it: 50 / 10',
    source:
      'Worked by hand: heights in the same bore, and the triangle 3-4-5 of throw, rod and bore',
    kind: 'hand-worked',
    unit: ': 1',
    expected: 5,
    ours: () => trappedRatio(triangle, 50, tenHigh, 90),
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'clearance volume of a hemispherical head over a piston domed to the same hemisphere, gasket 1 mm, deck 1 mm, bore 60 mm: what is left is 2 mm of the bore',
    source: 'Worked by hand: two equal solids cancel (Archimedes’ sphere in both)',
    kind: 'hand-worked',
    unit: 'cc',
    expected: 1.8 * Math.PI,
    ours: () => {
      const half = (2 / 3) * Math.PI * 27;
      return clearanceVolume({
        bore: 60,
        headVolume: half,
        gasketThickness: 1,
        gasketBore: 60,
        deckClearance: 1,
        domeVolume: half,
      });
    },
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'head volume for a geometric ratio of 7 to 1 with 1 mm of gasket and 1 mm of deck, stroke 60 and bore 50 mm: 8 mm of the bore',
    source: 'Worked by hand: heights in the same bore',
    kind: 'hand-worked',
    unit: 'cc',
    expected: 0.8 * 6.25 * Math.PI,
    ours: () =>
      headVolumeFor(clearanceForRatio(sweptVolume(triangle, 50), 7), {
        bore: 50,
        gasketThickness: 1,
        gasketBore: 50,
        deckClearance: 1,
        domeVolume: 0,
      }),
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'volume of a plug hole of M14 × 1.25, 12.7 mm deep, taken at the pitch diameter of 13.188 mm',
    source:
      'ANSI/ASME B1.13M-1995, table of internal metric threads, class 6H: least pitch diameter of M14 × 1.25, which is the basic one',
    kind: 'standard',
    unit: 'cc',
    expected: (Math.PI / 4) * 13.188 ** 2 * 0.0127,
    ours: () => plugHoleVolume(14, 1.25, 12.7),
    tolerance: 2e-4,
    why: 'the standard gives the diameter to a thousandth of a millimetre',
  },
];
