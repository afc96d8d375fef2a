import { assertWithin } from '../numeric/within.ts';

function assertBattery(capacity: number, current: number): void {
  assertWithin(
    {
      quantity: 'capacity',
      words: 'The capacity of the battery',
      unit: 'Ah',
      min: 0,
      above: true,
      why: 'It stands on the battery, in ampere-hours.',
    },
    capacity,
  );
  assertWithin(
    {
      quantity: 'current',
      words: 'The current drawn',
      unit: 'A',
      min: 0,
      above: true,
      why: 'With no current drawn a battery lasts until it has emptied itself.',
    },
    current,
  );
}

/**
 * Hours for which a battery of `capacity` Ah (above 0) gives `current` A (above 0): one divided by
 * the other, which no lead battery betters at a current above that of its rating.
 *
 * @throws MathsError `out-of-range`.
 */
export function hoursAt(capacity: number, current: number): number {
  assertBattery(capacity, current);
  return capacity / current;
}

/**
 * The same by Peukert's rule, t = H·(C/(I·H))^k, since a lead battery that is emptied faster gives
 * less: `capacity` Ah is what it gives in `ratedHours` H (above 0), and `exponent` k is from 1 (no
 * loss) to 2. Below the current of its rating nothing is added. A rule fitted to whole discharges at
 * one current, one temperature and a sound battery.
 *
 * Source: W. Peukert, Über die Abhängigkeit der Kapazität von der Entladestromstärke bei
 * Bleiakkumulatoren, Elektrotechnische Zeitschrift 20 (1897), in the form with rated hours.
 * @throws MathsError `out-of-range`.
 */
export function hoursByRule(
  capacity: number,
  current: number,
  ratedHours: number,
  exponent: number,
): number {
  assertWithin(
    {
      quantity: 'ratedHours',
      words: 'The hours for which the capacity is given',
      unit: 'h',
      min: 0,
      above: true,
      why: 'Most are given for 10 or for 20 hours.',
    },
    ratedHours,
  );
  assertWithin(
    {
      quantity: 'exponent',
      words: 'The exponent of the rule',
      unit: '',
      min: 1,
      why: 'A battery without loss has 1, and lead batteries some 1.1 to 1.4.',
    },
    exponent,
  );
  const plain = hoursAt(capacity, current);
  return plain * Math.min(1, (plain / ratedHours) ** (exponent - 1));
}
