import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertWithin } from '../numeric/within.ts';

/**
 * Resistance of annealed copper at 20 °C, Ω·mm²/m: a wire of 1 m and 1 mm² has 1/58 Ω.
 *
 * Source: IEC 60028:1925, International standard of resistance for copper.
 */
const COPPER = 1 / 58;

/** A size of stranded wire and what the standards let it have and bear. */
export interface StandardWire {
  /** Nominal cross-section, mm². */
  readonly area: number;
  /** Greatest resistance at 20 °C, Ω/km: class 5 (flexible), strands coated with metal. */
  readonly resistance: number;
  /** Current it bears in free air at 30 °C with insulation for 60 °C, A. */
  readonly bears: number;
}

/**
 * Flexible wire up to 16 mm², thinnest first. Tinned strands have a little more than plain ones; the
 * limit for them holds for both.
 *
 * Source: sizes and resistance: IEC 60228:2004, Conductors of insulated cables, Table 3 (class 5,
 * metal-coated wires). Current: BS 7671:2018, Requirements for electrical installations, Appendix 4,
 * Table 4F3A up to 2.5 mm² and Table 4F1A above, one two-core cable, d.c.
 */
export const STANDARD_WIRES: readonly StandardWire[] = [
  { area: 0.5, resistance: 40.1, bears: 3 },
  { area: 0.75, resistance: 26.7, bears: 6 },
  { area: 1, resistance: 20, bears: 10 },
  { area: 1.5, resistance: 13.7, bears: 16 },
  { area: 2.5, resistance: 8.21, bears: 25 },
  { area: 4, resistance: 5.09, bears: 30 },
  { area: 6, resistance: 3.39, bears: 39 },
  { area: 10, resistance: 1.95, bears: 51 },
  { area: 16, resistance: 1.24, bears: 73 },
];

/**
 * What a copper wire has at `temperature` °C (more than −234.5) for 1 at 20 °C: resistance
 * grows in a straight line from −234.5 °C.
 *
 * Source: IEC 60228:2004, Annex B.
 * @throws MathsError `out-of-range`.
 */
export function warmth(temperature: number): number {
  assertWithin(
    {
      quantity: 'temperature',
      words: 'The temperature of the wire',
      unit: '°C',
      min: -234.5,
      above: true,
      why: 'At that cold the straight line of the standard has come down to no resistance at all.',
    },
    temperature,
  );
  return (234.5 + temperature) / 254.5;
}

function assertLength(length: number): void {
  assertWithin(
    {
      quantity: 'length',
      words: 'The length of wire',
      unit: 'm',
      min: 0,
      why: 'Count the way there and the way back, in metres.',
    },
    length,
  );
}

/**
 * Resistance, Ω, of `length` m (0 or more) of copper with `area` mm² (above 0) at `temperature` °C
 * (more than −234.5): pure annealed copper, which no wire betters.
 *
 * @throws MathsError `out-of-range`.
 */
export function copperResistance(length: number, area: number, temperature: number): number {
  assertLength(length);
  assertWithin(
    {
      quantity: 'area',
      words: 'The cross-section of the wire',
      unit: 'mm²',
      min: 0,
      above: true,
      why: 'Count the strands, measure one, and take strands × diameter² × 0.785.',
    },
    area,
  );
  return (COPPER * warmth(temperature) * length) / area;
}

/** The greatest resistance, Ω, that the standard lets `length` m of a standard wire have. */
export function greatestResistance(
  { resistance }: StandardWire,
  length: number,
  temperature: number,
): number {
  assertLength(length);
  return (resistance * warmth(temperature) * length) / 1000;
}

/** The thickest standard wire that is not thicker than `area` mm²; nothing where all are. */
export const standardWithin = (area: number): StandardWire | undefined =>
  STANDARD_WIRES.findLast((wire) => wire.area <= area * (1 + 1e-9));

/**
 * The smallest standard wire that `suits`.
 *
 * @throws MathsError `no-wire` where none up to 16 mm² does.
 */
export function smallestWire(suits: (wire: StandardWire) => boolean): StandardWire {
  const found = STANDARD_WIRES.find(suits);
  if (found) return found;
  const { area } = STANDARD_WIRES.at(-1)!;
  throw new MathsError(
    'no-wire',
    ['length', 'loss'],
    `Even ${sayNumber(area)} mm² would lose more than is allowed, or bear too little. Clean the contacts, bring the battery nearer, or allow more.`,
  );
}
