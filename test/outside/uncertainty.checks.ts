import { propagate } from '../../calculators/maths/numeric/uncertainty.ts';
import type { OutsideCheck } from './types.ts';

/** All lengths in nm, temperatures in °C. */
const endGauge = () =>
  propagate(
    ([standard, difference, expansion, temperature, standardExpansion, warmth]) =>
      standard! +
      difference! -
      standard! * (expansion! * temperature! + standardExpansion! * warmth!),
    [50_000_623, 215, 0, -0.1, 11.5e-6, 0],
    [25, 9.7, 0.58e-6, 0.41, 1.2e-6, 0.029],
  );

const source =
  'JCGM 100:2008, Guide to the expression of uncertainty in measurement, annex H.1: end-gauge calibration';

const asPrinted = (
  what: string,
  expected: number,
  ours: () => number,
  tolerance: number,
): OutsideCheck => ({
  topic: 'uncertainty',
  what,
  source,
  kind: 'standard',
  unit: 'nm',
  expected,
  ours,
  tolerance,
  why: 'printed to that digit',
});

export const checks: readonly OutsideCheck[] = [
  asPrinted('Length of the end gauge at 20 °C', 50_000_838, () => endGauge().value, 0.5),
  asPrinted('Combined standard uncertainty of that length', 32, () => endGauge().plusMinus, 0.5),
  asPrinted('Part of it due to the standard', 25, () => endGauge().contributions[0]!, 0.5),
  asPrinted(
    'Part of it due to the difference in expansion',
    2.9,
    () => endGauge().contributions[2]!,
    0.05,
  ),
  asPrinted(
    'Part of it due to the difference in temperature',
    16.6,
    () => endGauge().contributions[5]!,
    0.1,
  ),
];
