import { plainDecimal } from '../../maths/numeric/rounding.ts';
import { convert, type Unit } from '../../maths/units/units.ts';
import { fieldUnit, type Ranged } from './field-unit.ts';
import { withUnit } from '../text/format.ts';
import { IMPLIED, numberAndUnit, parse, writtenOut } from './parse.ts';
import { toShown, units, type LengthDisplay, type UnitName } from '../text/units.ts';

/** Units of one quantity that are taken for one another, or typed and not seen, by home unit. */
export const TAKEN_FOR: Partial<Record<UnitName, readonly Unit[]>> = {
  mm: ['mm', 'in', 'thou'],
  uF: ['µF', 'nF', 'pF'],
  kPa: ['kPa', 'psi', 'bar'],
  air: ['kPa', 'inHg', 'mbar', 'psi'],
  degC: ['°C', '°F'],
  g: ['g', 'oz', 'lb'],
};

/** A figure so many times the usual one, or so small a part of it, is seldom meant. */
const FAR = 8;
/** The same of pressures: 7 times apart are kPa and psi, 3.4 times kPa and inches of mercury. */
const FAR_OFF: Partial<Record<UnitName, number>> = { kPa: 4, air: 3 };
/** The same of what engines are alike in. */
const FAR_WHERE_ALIKE = 6;
/** In another unit it was meant where it comes as near as this to the usual one. */
const NEAR = 3.2;

/** No figure is typed with more digits. */
const SLIP_DIGITS = 6;

/** How many times as large as another a figure is, or as small. */
export const timesApart = (value: number, other: number): number =>
  Math.exp(Math.abs(Math.log(Math.abs(value / other))));

/** Whether a figure is so far from the usual one that another unit is likely meant. */
export const isFar = (value: number, usual: number, unit: UnitName): boolean =>
  timesApart(value, usual) >= (FAR_OFF[unit] ?? FAR);

/** A figure typed without its unit, and the unit in which it is read; nothing of any other text. */
function bareIn(kept: string, home: UnitName): { typed: string; unit: UnitName } | undefined {
  const [typed = '', implied] = kept.split(IMPLIED);
  if (numberAndUnit(typed)?.unit !== '') return undefined;
  if (implied === undefined) return { typed: typed.trim(), unit: home };
  const unit = (['in', 'thou', 'psi', 'ft'] as const).find((name) => units[name].token === implied);
  return unit === undefined ? undefined : { typed: typed.trim(), unit };
}

/** What is said of a figure that would be near the usual one with its point one place on; nothing of another. */
function slipOf(
  { alike }: Ranged,
  value: number,
  usual: number,
  read: UnitName,
): string | undefined {
  const meant = Math.abs(value) > Math.abs(usual) ? value / 10 : value * 10;
  if (!alike || timesApart(meant, usual) > NEAR) return undefined;
  const digits = plainDecimal(Number(toShown(meant, read).toPrecision(SLIP_DIGITS)));
  return `If the point stands in the wrong place, type “${digits} ${units[read].label}”.`;
}

/**
 * A doubt about a figure that was typed bare: it is far from what is usual, and the same digits in
 * another unit would be near. Nothing where there is none, or where nothing is usual.
 *
 * @param usual About what is read there, in the home unit; nothing known where 0 or missing.
 */
export function doubtOf(
  spec: Ranged,
  value: number,
  kept: string,
  lengths: LengthDisplay,
  usual: number | undefined,
): string | undefined {
  const names = TAKEN_FOR[spec.unit];
  const home = units[spec.unit].factor;
  if (home === undefined || spec.isError || value === 0) return undefined;
  if (usual === undefined || usual === 0) return undefined;
  const bare = bareIn(kept, spec.unit);
  // Typed with the other choice of lengths, it stands in the box turned into these.
  if (bare?.unit !== fieldUnit(spec, lengths)) return undefined;
  const stamped = stampIn(spec, bare.typed);
  if (stamped !== undefined && timesApart(stamped, usual) < timesApart(value, usual)) {
    return `Read as ${bare.typed} ${units[bare.unit].label}. ${asStamped(spec, kept)!} If it is right, type “${bare.typed} ${units[bare.unit].label}”.`;
  }
  const far = spec.alike ? FAR_WHERE_ALIKE : (FAR_OFF[spec.unit] ?? FAR);
  if (timesApart(value, usual) < far) return undefined;
  const read = units[bare.unit].factor;
  const digits = read === home ? value : convert(value, home, read ?? home);
  const [meant] = (names ?? [])
    .filter((name) => name !== read)
    .map((name) => ({ name, as: convert(digits, name, home) }))
    .filter(({ as }) => as >= spec.min && as <= spec.max && timesApart(as, usual) <= NEAR)
    .sort((a, b) => timesApart(a.as, usual) - timesApart(b.as, usual));
  const otherwise =
    meant === undefined
      ? slipOf(spec, value, usual, bare.unit)
      : `If it is ${bare.typed} ${meant.name}, type “${bare.typed} ${meant.name}”.`;
  if (otherwise === undefined) return undefined;
  const about = Number(toShown(usual, fieldUnit(spec, lengths)).toPrecision(2));
  const mostly = withUnit(String(about).replace('-', '−'), fieldUnit(spec, lengths));
  const as = `${bare.typed} ${units[bare.unit].label}`;
  return `Read as ${as}, far from what is usual here, about ${mostly}. ${otherwise} If it is right, type “${as}”.`;
}

/** A fraction smaller than one, or with a whole number before it, as of an inch. */
const OF_AN_INCH = /^[+\-−]?\s*(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)$/u;

/** A bare fraction in a box of millimetres or thou, which are not divided so; nothing of any other text. */
export function bareFraction(
  kept: string,
  home: UnitName,
): { readonly typed: string; readonly unit: string } | undefined {
  if (home !== 'mm') return undefined;
  const bare = bareIn(kept, home);
  if (bare === undefined || (bare.unit !== 'mm' && bare.unit !== 'thou')) return undefined;
  const [found, whole, above, below] = OF_AN_INCH.exec(writtenOut(bare.typed)) ?? [];
  // What is larger than one is as likely a reading that is shared out, as 181/2.
  if (found === undefined || (whole === undefined && Number(above) >= Number(below))) {
    return undefined;
  }
  return { typed: bare.typed, unit: bare.unit };
}

const IN_WORDS: Partial<Record<UnitName, string>> = {
  mm: 'millimetres',
  in: 'inches',
  m: 'metres',
  ft: 'feet',
};

/** What a refused bare figure is told: in which unit it was read, and in which other one it would be taken. */
export interface ReadIn {
  readonly sentence: string;
  /** Whether it would be taken in another. */
  readonly remedy: boolean;
}

/** The bore of a jet that is told by a whole number of hundredths of a millimetre; nothing where none can be. */
function stampIn({ stamped, min, max }: Ranged, typed: string): number | undefined {
  const bore = stamped && /^\d+$/.test(typed) ? Number(typed) / 100 : NaN;
  return bore >= min && bore <= max ? bore : undefined;
}

/** What is said of a bare whole number that may be stamped on a jet; nothing of any other text. */
export function asStamped(spec: Ranged, kept: string): string | undefined {
  const { typed = '' } = bareIn(kept, spec.unit) ?? {};
  const bore = stampIn(spec, typed);
  if (bore === undefined) return undefined;
  return `If ${typed} is stamped on it and is its bore in hundredths of a millimetre, type “${String(bore)} mm”. A number may also be a flow: measure.`;
}

/**
 * In which unit a bare figure was read, and the unit in which it would be taken and come nearest to the
 * usual figure, if near it at all; nothing of any other text, and of a quantity that is told in one unit.
 */
export function readIn(spec: Ranged, kept: string, usual: number): ReadIn | undefined {
  const names = TAKEN_FOR[spec.unit];
  const home = units[spec.unit].factor;
  const bare = bareIn(kept, spec.unit);
  if (names === undefined || bare === undefined || home === undefined) return undefined;
  const parsed = parse(bare.typed, spec.unit);
  if (parsed.kind !== 'value') return undefined;
  const [found] = names
    .filter((name) => name !== (units[bare.unit].factor ?? bare.unit))
    .map((name) => ({ name, as: convert(parsed.value, name, home) }))
    .filter(({ as }) => as >= spec.min && as <= spec.max && timesApart(as, usual) <= NEAR)
    .sort((a, b) => timesApart(a.as, usual) - timesApart(b.as, usual));
  const read = `This box reads a bare figure in ${IN_WORDS[bare.unit] ?? units[bare.unit].label}`;
  if (found === undefined) return { sentence: `${read}.`, remedy: false };
  const other = `${bare.typed} ${found.name}`;
  return { sentence: `${read}: for ${other} type “${other}”.`, remedy: true };
}
