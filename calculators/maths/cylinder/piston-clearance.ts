/**
 * Clearance of piston and ring, cold and hot. Each part grows by its length, its expansion and how much
 * warmer it is than when it was measured; the clearance is what is left between. The parts are taken to
 * grow alike all round, and each to have one temperature.
 *
 * Lengths in mm, temperatures in °C, expansion in 10⁻⁶ for each K.
 */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertWithin } from '../numeric/within.ts';
import { grown } from './expansion.ts';
import { convert } from '../units/units.ts';

export interface Warmed {
  /** What it measures at the temperature of the bench. */
  readonly size: number;
  readonly expansion: number;
  readonly temperature: number;
}

export interface PistonInBore {
  /** Sizes are diameters: the bore, and the skirt of the piston at its widest. */
  readonly bore: Warmed;
  readonly piston: Warmed;
  /** Temperature at which both were measured. */
  readonly measuredAt: number;
}

export interface Clearance {
  /** On the diameter, as measured; negative where the piston is the larger. */
  readonly cold: number;
  /** Of the bore, in thousandths. */
  readonly perMille: number;
  /** On the diameter at the running temperatures; negative where the parts would jam. */
  readonly hot: number;
}

const THOUSAND = 1000;
const PARTS = 1e-6;
/** Nothing is colder, °C. */
const ABSOLUTE_ZERO = convert(0, 'K', '°C');

function assertDiameter(quantity: 'bore' | 'piston', size: number): void {
  assertWithin(
    {
      quantity,
      words: quantity === 'bore' ? 'The bore' : 'The diameter of the piston',
      unit: 'mm',
      min: 0,
      above: true,
      why: 'Measure the diameter, not the radius.',
    },
    size,
  );
}

/** A part's size at its running temperature, mm. */
const hotSize = ({ size, expansion, temperature }: Warmed, measuredAt: number): number =>
  grown(size, expansion, temperature - measuredAt);

/** @throws MathsError `out-of-range` for `bore`, `piston`, `expansion` or `temperature`. */
export function pistonClearance({ bore, piston, measuredAt }: PistonInBore): Clearance {
  assertDiameter('bore', bore.size);
  assertDiameter('piston', piston.size);
  const cold = bore.size - piston.size;
  return {
    cold,
    perMille: (THOUSAND * cold) / bore.size,
    hot: hotSize(bore, measuredAt) - hotSize(piston, measuredAt),
  };
}

/**
 * The temperature of the piston, °C, at which it fills the bore, which keeps its own.
 *
 * @throws MathsError `no-growth` for a piston that does not grow, `no-room` for one that does not go
 *   into the bore cold, `too-cold` where the piston would have to be colder than anything can be.
 */
export function fillsAt({ bore, piston, measuredAt }: PistonInBore): number {
  assertDiameter('bore', bore.size);
  assertDiameter('piston', piston.size);
  if (!(piston.expansion > 0)) {
    throw new MathsError(
      'no-growth',
      ['expansion'],
      'A piston that does not grow never fills the bore. Its expansion must be more than 0.',
    );
  }
  if (piston.size >= bore.size) {
    throw new MathsError(
      'no-room',
      ['bore', 'piston'],
      'The piston does not go into the cold bore, so that no warmth makes it fill it. Measure both again.',
    );
  }
  const room = hotSize(bore, measuredAt) / piston.size - 1;
  const fills = measuredAt + room / (piston.expansion * PARTS);
  if (fills < ABSOLUTE_ZERO) {
    throw new MathsError(
      'too-cold',
      ['piston', 'expansion'],
      'In so cold a bore the piston fills it at any temperature.',
    );
  }
  return fills;
}

/**
 * The gap of a ring at its running temperature, mm: the round of the hot bore less the length of the hot
 * ring. Negative where its ends would have met.
 *
 * @param bore Where the ring runs.
 * @param ring Its size is the gap between its ends in the cold bore, 0 to a tenth of the bore.
 */
export function hotRingGap(bore: Warmed, ring: Warmed, measuredAt: number): number {
  assertDiameter('bore', bore.size);
  if (!(ring.size >= 0 && ring.size <= bore.size / 10)) {
    throw new MathsError(
      'ring-gap',
      ['ringGap'],
      `The ring gap must be from 0 mm to a tenth of the bore, ${sayNumber(bore.size / 10)} mm. Push the ring square into the bore with the piston, and measure between its ends.`,
    );
  }
  const round = Math.PI * hotSize(bore, measuredAt);
  const length = Math.PI * bore.size - ring.size;
  return round - grown(length, ring.expansion, ring.temperature - measuredAt);
}
