import { all, create } from 'mathjs';
import { boreWear, nextOversize } from '../../calculators/maths/cylinder/bore-wear.ts';
import { expansions } from '../../calculators/maths/cylinder/expansion.ts';
import {
  fillsAt,
  hotRingGap,
  pistonClearance,
} from '../../calculators/maths/cylinder/piston-clearance.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'piston-clearance';
const exact = create(all!, { number: 'BigNumber', precision: 40 });

const part = (size: number, expansion: number, temperature: number) => ({
  size,
  expansion,
  temperature,
});
const iron = { bore: part(52, 11.4, 110), piston: part(51.935, 20, 120), measuredAt: 20 };
const coated = { ...iron, bore: part(52, 21.5, 110) };

const callister =
  'W. D. Callister and D. G. Rethwisch, Fundamentals of Materials Science and Engineering, 3rd edition, Wiley 2008, table B.6, pages 815 and 816';

const worked = (
  what: string,
  source: string,
  unit: string,
  expected: number,
  ours: () => number,
  tolerance = 1e-9,
): OutsideCheck => ({
  topic,
  what,
  source: `By hand: ${source}`,
  kind: 'hand-worked',
  unit,
  expected,
  ours,
  tolerance,
});

/** The same sums in forty digits. */
const byMathjs = (what: string, sum: string, unit: string, ours: () => number): OutsideCheck => ({
  topic,
  what: `${what}: ${sum}`,
  source: 'mathjs 15.2.0 (npm), in numbers of forty digits',
  kind: 'library',
  unit,
  expected: () => Number(exact.evaluate(sum)),
  ours,
  tolerance: 1e-10,
  why: 'ordinary numbers hold sixteen digits, and sizes of fifty are taken from each other',
});

export const checks: readonly OutsideCheck[] = [
  {
    topic,
    what: 'Expansion of grey iron',
    source: callister,
    kind: 'published',
    unit: '10⁻⁶/K',
    expected: 11.4,
    ours: () => expansions.iron,
    tolerance: 0,
  },
  {
    topic,
    what: 'Expansion of cast aluminium 356.0',
    source: callister,
    kind: 'published',
    unit: '10⁻⁶/K',
    expected: 21.5,
    ours: () => expansions.aluminium,
    tolerance: 0,
  },
  {
    topic,
    what: 'Expansion of piston alloy with 12 % of silicon from 20 to 100 °C, 19.5 to 20.5',
    source:
      'Meteor Piston, Materials for gravity cast pistons, G-AlSi 12MgCuNi-P, thermal expansion coefficient from 20 °C to 100 °C; page and year not known',
    kind: 'published',
    unit: '10⁻⁶/K',
    expected: 20,
    ours: () => expansions.piston,
    tolerance: 0.5,
    why: 'the maker gives a range',
  },
  worked(
    'Clearance of 51.935 in 52 mm, cold',
    '52 − 51.935',
    'mm',
    0.065,
    () => pistonClearance(iron).cold,
  ),
  worked(
    'The same, of the bore',
    '1000 × 0.065 / 52',
    '‰',
    1.25,
    () => pistonClearance(iron).perMille,
  ),
  worked(
    'Hot in iron: bore 110 °C, piston 120 °C, measured at 20 °C',
    '52 × 11.4 × 90 = 53352 and 51.935 × 20 × 100 = 103870 millionths: 0.065 + 0.053352 − 0.103870',
    'mm',
    0.014482,
    () => pistonClearance(iron).hot,
  ),
  worked(
    'The same in aluminium',
    '52 × 21.5 × 90 = 100620 millionths: 0.065 + 0.100620 − 0.103870',
    'mm',
    0.06175,
    () => pistonClearance(coated).hot,
  ),
  worked(
    'Piston and bore of one metal and one heat',
    'both grow by 1 + 20 × 10⁻⁶ × 100: 0.065 × 1.002',
    'mm',
    0.06513,
    () =>
      pistonClearance({
        bore: part(52, 20, 120),
        piston: part(51.935, 20, 120),
        measuredAt: 20,
      }).hot,
  ),
  worked(
    'Skirt temperature at which it fills a bore of 110 °C',
    '20 + (0.065 + 0.053352) / (51.935 × 20 × 10⁻⁶)',
    '°C',
    20 + 0.118352 / (51.935 * 20e-6),
    () => fillsAt(iron),
    1e-6,
  ),
  worked(
    'Ring gap of 0.2 mm in 52 mm, iron in iron, ring 150 °C, bore 110 °C',
    'round of the bore grows by π × 0.053352 = 0.167610; the ring of π × 52 − 0.2 = 163.162818 by × 11.4 × 130 × 10⁻⁶ = 0.241807: 0.2 + 0.167610 − 0.241807',
    'mm',
    0.2 + 0.16761 - 0.241807,
    () => hotRingGap(iron.bore, part(0.2, 11.4, 150), 20),
    2e-6,
  ),
  byMathjs(
    'Hot clearance of a forged piston in iron',
    '76.2 * (1 + 11.4e-6 * 105) - 76.073 * (1 + 22e-6 * 128)',
    'mm',
    () =>
      pistonClearance({
        bore: part(76.2, 11.4, 120),
        piston: part(76.073, 22, 143),
        measuredAt: 15,
      }).hot,
  ),
  byMathjs(
    'Hot gap of a ring',
    'pi * 76.2 * (1 + 21.5e-6 * 105) - (pi * 76.2 - 0.31) * (1 + 11.4e-6 * 140)',
    'mm',
    () => hotRingGap(part(76.2, 21.5, 125), part(0.31, 11.4, 160), 20),
  ),
  worked(
    'Taper of readings 52.02, 52.01, 52.00 along and 52.035, 52.02, 52.005 across',
    '52.035 − 52.005, more than 52.02 − 52.00',
    'mm',
    0.03,
    () => boreWear({ along: [52.02, 52.01, 52], across: [52.035, 52.02, 52.005] }).taper,
  ),
  worked(
    'Ovality of the same',
    '52.035 − 52.020',
    'mm',
    0.015,
    () => boreWear({ along: [52.02, 52.01, 52], across: [52.035, 52.02, 52.005] }).ovality,
  ),
  worked(
    'Oversize of a bore worn to 52.21 mm, standard 52 mm, steps of 0.25 mm, 0.05 mm to clean up',
    '0.26 is more than 0.25: the second step',
    'mm',
    0.5,
    () => nextOversize(52.21, 52, 0.25, 0.05).over,
  ),
  worked(
    'The same worn to 52.20 mm',
    '0.25 is the first step',
    'mm',
    0.25,
    () => nextOversize(52.2, 52, 0.25, 0.05).over,
  ),
];
