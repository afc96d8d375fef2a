import { circleArea } from '../../maths/numeric/circle-area.ts';
import { convert } from '../../maths/units/units.ts';
import { americanGaugeArea } from '../../maths/wiring/gauge.ts';

const AMERICAN = /^(?:(0{1,4}|[1-4]?\d)\s*a\.?w\.?g\.?|a\.?w\.?g\.?\s*(0{1,4}|[1-4]?\d))$/iu;
const GAUGE = /^(?:swg\s*)?\d{1,2}\s*(?:swg|gauge|ga\.?|g)$|^swg\s*\d{1,2}$/iu;
/** Strands and the diameter of one, as wire is labelled: 14/0.30. */
const STRANDS = /^(\d{1,3})\s*[/⁄]\s*(\d?[.,]\d+)\s*(?:mm)?$/iu;
/** No strand is thinner than this, mm: what is less is in inches. */
const THINNEST = 0.05;

const short = (area: number): string => String(Number(area.toPrecision(3)));

/** The gauges of more than one nought are numbered downwards from 0. */
const gaugeOf = (digits: string): number =>
  /^0+$/.test(digits) ? 1 - digits.length : Number(digits);

/**
 * What is said of a text that names a wire otherwise than by its cross-section: by the American gauge,
 * `16 AWG`, or by strands and the diameter of one, `14/0.30`; nothing of any other text.
 */
export function otherSizes(typed: string): string | undefined {
  const text = typed.trim();
  const [, before, after] = AMERICAN.exec(text) ?? [];
  const digits = before ?? after;
  if (digits !== undefined && gaugeOf(digits) <= 40) {
    return `“${text}” is a size of the American wire gauge: type “${short(americanGaugeArea(gaugeOf(digits)))} mm²”.`;
  }
  if (GAUGE.test(text)) {
    return `“${text}” may be American or British, and a British one may have half as much copper again. If it is American, type it with AWG. Else count the strands and measure one.`;
  }
  const [, strands, across] = STRANDS.exec(text) ?? [];
  if (strands === undefined) return undefined;
  const written = Number(across!.replace(',', '.'));
  const isInches = written < THINNEST;
  const diameter = isInches ? convert(written, 'in', 'mm') : written;
  if (!(diameter > 0)) return undefined;
  return `“${text}” on a reel of wire means ${strands} strands of ${String(written)} ${isInches ? 'in' : 'mm'}: type “${short(Number(strands) * circleArea(diameter))} mm²”.`;
}
