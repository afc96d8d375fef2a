import {
  create,
  createUnitDependencies,
  fractionDependencies,
  unitDependencies,
  type Unit,
} from 'mathjs';
import type { Converter } from './parse.ts';

const math = create(
  { ...createUnitDependencies, ...fractionDependencies, ...unitDependencies },
  {},
);

// Conventional inch of mercury, NIST SP 811 (2008), B.8: 3.386 389 kPa.
math.createUnit('inHg', '3386.389 Pa');
// Imperial gallon exactly 4.546 09 L (NIST SP 811, B.8); pint an eighth, fluid ounce a 160th.
math.createUnit('imperialgallon', '4.54609 L');
math.createUnit('imperialpint', '0.56826125 L');
math.createUnit('imperialfloz', '28.4130625 mL');

/** Typed units and fractions, by mathjs. A separate chunk: imported only when needed. */
export const converter: Converter = {
  convert: (value, from, to) => (math.unit(value, from) as Unit).toNumber(to),
  fraction: (numerator, denominator) =>
    Number(math.fraction(`${numerator}/${denominator}`).valueOf()),
};
