import { create, parseDependencies, type MathNode } from 'mathjs/number';
import { convert, type Unit } from '../../maths/units/units.ts';
import { parse as parseFigure, quote, withoutMarks } from './parse.ts';
import { sumWithUnit, type Total } from './sums.ts';
import { isHomeUnit, unitTyped } from './typed-units.ts';
import { units, type UnitName } from '../text/units.ts';

const { parse } = create({ parseDependencies: parseDependencies! });

/** A figure within a sum. */
interface Part {
  readonly value: number;
  /** Whether it is a quantity of the field's kind, and not a bare number. */
  readonly measured: boolean;
  /** Whether a unit other than the home unit is behind it. */
  readonly foreign: boolean;
}

/** Thrown with the sentence for the reader. */
class Refused extends Error {}

const FIGURE = String.raw`(?:\d+(?:[.,]\d*)?|[.,]\d+)`;
const UNIT = String.raw`[\p{L}µμ°"″%²³]+(?:\/[\p{L}²³]+)?`;
/** In this order: 24°30′, then 1 1/4 in and 3/32 in, then 2.2 mm and 2.2. */
const TERM = new RegExp(
  String.raw`^(?:\d+\s*°\s*\d+(?:[.,]\d*)?\s*['’′]|(?:\d+\s+)?\d+\s*[/⁄]\s*\d+\s*${UNIT}|${FIGURE}(?:\s*${UNIT})?)`,
  'u',
);
const SIGNS: Readonly<Record<string, string>> = {
  '+': '+',
  '-': '-',
  '−': '-',
  '–': '-',
  '*': '*',
  '×': '*',
  '·': '*',
  '/': '/',
  '÷': '/',
  '(': '(',
  ')': ')',
};

/** The sum with a name for each of its terms, and the terms as typed. */
function named(text: string): { readonly expression: string; readonly terms: readonly string[] } {
  const terms: string[] = [];
  let expression = '';
  for (let rest = text.trim(); rest !== '';) {
    const sign = SIGNS[rest[0]!];
    const term = sign === undefined ? TERM.exec(rest)?.[0] : undefined;
    if (sign === undefined && term === undefined) {
      throw new Refused(`${quote(rest)} in ${quote(text)} is neither a figure nor a sign.`);
    }
    if (term === undefined) expression += sign!;
    else expression += ` t${String(terms.push(term.trim()) - 1)} `;
    rest = rest.slice(term?.length ?? 1).trimStart();
  }
  return { expression, terms };
}

const mixed = (text: string): never => {
  throw new Refused(
    `${quote(text)} adds a figure with a unit to one without. Type the unit behind each of them.`,
  );
};

/** Sums and differences need terms of one kind: both quantities, or both bare. */
function alike(a: Part, b: Part, text: string): Pick<Part, 'measured' | 'foreign'> {
  const foreign = a.foreign || b.foreign;
  if (a.measured !== b.measured && foreign) mixed(text);
  return { measured: a.measured || b.measured, foreign };
}

/** Works a sum's tree out. Nothing is let through but the four signs, brackets and the named terms. */
function worked(node: MathNode, terms: readonly Part[], text: string): Part {
  const part = (inner: MathNode): Part => worked(inner, terms, text);
  if ('isParenthesisNode' in node) return part((node as unknown as { content: MathNode }).content);
  if ('isSymbolNode' in node) {
    const term = terms[Number(/^t(\d+)$/.exec((node as unknown as { name: string }).name)?.[1])];
    if (term) return term;
  }
  if ('isOperatorNode' in node) {
    const { op, implicit, args } = node as unknown as {
      readonly op: string;
      readonly implicit: boolean;
      readonly args: readonly MathNode[];
    };
    const [a, b] = args.map(part) as [Part, Part | undefined];
    if (implicit) {
      throw new Refused(
        `${quote(text)} has two figures with no sign between them: type + − × or /.`,
      );
    }
    if (b === undefined) {
      if (op === '+') return a;
      if (op === '-') return { ...a, value: -a.value };
    } else if (op === '+' || op === '-') {
      return { ...alike(a, b, text), value: op === '+' ? a.value + b.value : a.value - b.value };
    } else if (op === '*' || op === '/') {
      if (b.measured && (a.measured || (op === '/' && b.foreign))) {
        throw new Refused(
          `${quote(text)} ${op === '*' ? 'multiplies' : 'divides'} by a figure that has a unit. Leave that unit out.`,
        );
      }
      return {
        value: op === '*' ? a.value * b.value : a.value / b.value,
        measured: a.measured || b.measured,
        foreign: a.foreign || b.foreign,
      };
    }
  }
  throw new Refused(`${quote(text)} is more than a sum: only + − × / and brackets are read.`);
}

/** A figure of the sum in the unit that a bare one has. */
function termOf(
  term: string,
  unit: Unit | undefined,
  home: UnitName,
  like: (() => string) | undefined,
): Part {
  const typed = term.replace(/^[\d.,\s/⁄]+/u, '');
  const read = parseFigure(term, home, like);
  if (read.kind === 'bad') throw new Refused(read.sentence);
  const { factor } = units[home];
  const inUnit = unit !== undefined && factor !== undefined;
  if (typed === '') return { value: read.value, measured: false, foreign: false };
  return {
    value: inUnit ? convert(read.value, factor, unit) : read.value,
    measured: true,
    // Degrees with minutes are degrees.
    foreign: inUnit ? unit !== factor : !/\d/.test(typed) && !isHomeUnit(typed, home),
  };
}

/** The unit behind the brackets of a whole sum. */
function unitOf(typed: string, home: UnitName): Unit {
  const found = unitTyped(typed, units[home].quantity);
  if (found.kind === 'unit') return found.unit;
  throw new Refused(
    found.kind === 'refused' ? found.sentence : `${quote(typed)} is not a unit this field knows.`,
  );
}

/**
 * Works out a sum of readings: + − × / and brackets, bare figures in the home unit or in the unit
 * behind brackets round all of it.
 */
export function readSum(text: string, home: UnitName, like?: () => string): Total {
  try {
    const whole = sumWithUnit(withoutMarks(text));
    const unit = whole && unitOf(whole.unit, home);
    const { expression, terms } = named(whole?.sum ?? text);
    const parts = terms.map((term) => termOf(term, unit, home, like));
    const { value } = worked(parse(expression), parts, text);
    if (!Number.isFinite(value)) throw new Refused(`${quote(text)} divides by zero.`);
    const { factor } = units[home];
    return {
      kind: 'value',
      value: unit !== undefined && factor !== undefined ? convert(value, unit, factor) : value,
    };
  } catch (error) {
    if (error instanceof Refused) return { kind: 'bad', sentence: error.message };
    if (!(error instanceof SyntaxError)) throw error;
    return {
      kind: 'bad',
      sentence: `${quote(text)} is not a whole sum. Check its signs and brackets.`,
    };
  }
}
