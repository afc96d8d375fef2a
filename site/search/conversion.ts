import { parse } from '../../calculators/frame/field/parse.ts';
import { unitTyped } from '../../calculators/frame/field/typed-units.ts';
import { convert, type Unit } from '../../calculators/maths/units/units.ts';
import type { UnitName } from '../../calculators/frame/text/units.ts';

/** For each quantity asked about: the unit that it is read in, and those that it is told in. */
const TOLD = [
  { quantity: 'length', home: 'mm', units: ['mm', 'in', 'thou'] },
  { quantity: 'volume', home: 'cc', units: ['cc', 'l', 'US fl oz', 'imp fl oz'] },
  { quantity: 'pressure', home: 'kPa', units: ['kPa', 'bar', 'psi'] },
  { quantity: 'temperature', home: 'degC', units: ['°C', '°F'] },
  { quantity: 'mass', home: 'g', units: ['g', 'oz'] },
] as const satisfies readonly { quantity: string; home: UnitName; units: readonly Unit[] }[];

/** More digits than these no figure of a workshop has. */
const DIGITS = 4;
const FIGURE =
  /(?:^|\s)((?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[ -]\d+)?(?:\s*[/⁄]\s*\d+)?)\s*([^\d\s?!,;/⁄]+)/u;

/**
 * A figure in a question with what it is in other units, such as `0.015 in = 0.381 mm = 15 thou`; nothing
 * where there is none.
 */
export function conversionOf(question: string): string | undefined {
  const [, number, unit] = FIGURE.exec(question) ?? [];
  if (number === undefined || unit === undefined) return undefined;
  for (const { quantity, home, units } of TOLD) {
    const typed = unitTyped(unit, quantity);
    if (typed.kind !== 'unit') continue;
    const read = parse(`${number} ${unit}`, home);
    if (read.kind !== 'value') return undefined;
    const base = units[0];
    const others = units
      .map((name) => [name, Number(convert(read.value, base, name).toPrecision(DIGITS))] as const)
      .filter(([name, figure]) => name !== typed.unit && Math.abs(figure) >= 1e-3)
      .map(([name, figure]) => `${String(figure)} ${name}`);
    return [`${number} ${unit}`, ...others].join(' = ');
  }
  return undefined;
}
