import { expect, it } from 'vitest';
import { calculators } from '../../site/all-calculators.ts';

/** What + or − means, in the words beside the figure. */
const told = /[+−]|\bminus\b|\bpositive\b|\badd (?:it|this|the correction)\b/i;

it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s says what the sign of a signed result means',
  (_, calculator) => {
    const silent = Object.entries(calculator.results)
      .filter(([, result]) => result.signed === true)
      .filter(([, { label, help }]) => !told.test(`${label} ${help ?? ''}`))
      .map(([name]) => name);
    expect(silent).toEqual([]);
  },
);
