import fc, { type Arbitrary } from 'fast-check';
import { knownKeys } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator, Input } from '../../calculators/frame/types.ts';
import { typedUnits } from '../../calculators/frame/field/typed-units.ts';
import { units, type UnitName } from '../../calculators/frame/text/units.ts';

/** Texts that would run, break out of markup or break a parser, if anything took them as such. */
const HOSTILE = [
  `"><script>window.hit=1</script>`,
  `<img src=x onerror=window.hit=1>`,
  `'-alert(1)-'`,
  'javascript:window.hit=1',
  '${window.hit=1}',
  '{{constructor.constructor("window.hit=1")()}}',
  '</data></output><svg onload=window.hit=1>',
  '\u202e2.2mm\u202c',
  '٢٫٢',
  '2.2',
  '\ud800',
  '\u0000',
  '🛵🛵🛵',
  '&lt;b&gt;&amp;',
  '__proto__',
  'constructor',
  'NaN',
  'Infinity',
  '-Infinity',
  '0x10',
  '1e309',
  '1e-400',
  '1/0',
  '0/0 in',
  '1 1/2/3 in',
  '..',
  ',',
  '-',
  '1,234,567.8',
  '9'.repeat(300),
  ' 2.2 '.repeat(50),
  '2.2\n\r\tmm',
] as const;

const hostile = fc.constantFrom(...HOSTILE);
const junk = fc.string({ unit: 'grapheme', maxLength: 30 });

const writings: readonly ((figure: number, token: string) => string)[] = [
  (figure) => String(figure),
  (figure) => String(figure).replace('.', ','),
  (figure, token) => `${figure}${token}`,
  (figure, token) => ` ${figure}  ${token.toUpperCase()} `,
  (figure) => figure.toExponential(3),
  (figure) => figure.toFixed(12),
  (figure) => `${Math.round(figure * 64)}/64`,
  (figure) => `−${Math.abs(figure)}`,
];

/** A figure as people and machines write it: mostly legal, often just at or beyond an end. */
function figure(unit: UnitName, min: number, max: number): Arbitrary<string> {
  const ends = [min, max, min - 1e-9, max + 1e-9, (min + max) / 2, 0, -0, 1e-12, -1, 1e300];
  const value = fc.oneof(
    { weight: 6, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 3, arbitrary: fc.constantFrom(...ends) },
    { weight: 1, arbitrary: fc.double() },
  );
  const tokens = [units[unit].token, ...Object.keys(typedUnits[units[unit].quantity] ?? {})];
  return fc
    .tuple(value, fc.constantFrom(...tokens), fc.constantFrom(...writings))
    .map(([number, token, write]) => write(number, token));
}

function textFor(input: Input): Arbitrary<string> {
  const rest = [
    { weight: 1, arbitrary: hostile },
    { weight: 1, arbitrary: junk },
  ];
  if (input.kind === 'choice') {
    return fc.oneof(
      { weight: 12, arbitrary: fc.constantFrom(...Object.keys(input.options)) },
      ...rest,
    );
  }
  if (input.kind === 'list' && input.order) {
    const order = fc
      .uniqueArray(fc.integer({ min: 0, max: 12 }), { maxLength: 9 })
      .map((parts) => parts.join('-'));
    return fc.oneof({ weight: 14, arbitrary: order }, ...rest);
  }
  const one = figure(input.unit, input.min, input.max);
  const several = fc.array(one, { maxLength: 8 }).map((parts) => parts.join(' '));
  return fc.oneof({ weight: 14, arbitrary: input.kind === 'list' ? several : one }, ...rest);
}

/** The input a key belongs to: `gap-2` to the series `gap`, `gap-error` to the ± of `gap`. */
function inputOf(calculator: AnyCalculator, key: string): Input {
  const inputs = calculator.inputs as Record<string, Input>;
  return inputs[key] ?? inputs[key.replace(/-(?:\d+|error)$/, '')]!;
}

/** Query strings for one calculator, from the sensible to the malicious. */
export function addresses(calculator: AnyCalculator): Arbitrary<string> {
  const pair = fc
    .constantFrom(...knownKeys(calculator))
    .chain((key) => textFor(inputOf(calculator, key)).map((text) => [key, text] as const));
  const stray = fc.tuple(fc.oneof(hostile, junk), fc.oneof(hostile, junk));
  const written = fc
    .array(fc.oneof({ weight: 12, arbitrary: pair }, { weight: 1, arbitrary: stray }), {
      maxLength: 8,
    })
    .map((pairs) => new URLSearchParams(pairs.map(([key, text]) => [key, text])).toString());
  const mangled = fc
    .tuple(written, fc.constantFrom('%', '%zz', '&&&', '=', '?', '#', '%00', '+', ';', '%c0%af'))
    .map(
      ([query, wedge]) => query.slice(0, query.length / 2) + wedge + query.slice(query.length / 2),
    );
  return fc.oneof({ weight: 9, arbitrary: written }, { weight: 1, arbitrary: mangled });
}
