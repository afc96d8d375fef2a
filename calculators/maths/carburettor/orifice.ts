import { circleArea } from '../numeric/circle-area.ts';
import { assertWithin } from '../numeric/within.ts';
import { STANDARD_GRAVITY } from '../units/standard.ts';

/**
 * A liquid that runs out of a hole under its own height: Q = C·A·√(2·g·h), Torricelli's speed through
 * the hole's area, of which the coefficient C is left by the narrowing and the friction of the stream.
 *
 * Source: the orifice relation of any text of fluid mechanics; A. K. Choudhary and O. Prakash, Fluid
 * Mechanics, 2nd edition, S. K. Kataria & Sons, 2009, chapter 6; Encyclopædia Britannica, 11th edition,
 * volume 14 (1911), Hydraulics, §§ 16 to 18 (about page 42).
 */
export interface Bench {
  /** Height of the liquid above the hole, mm, above 0; kept up while it runs. */
  readonly head: number;
  /** Coefficient of discharge, above 0 and at most 1: about 0.62 for a thin edge, more for a bore. */
  readonly coefficient: number;
}

function speed({ head, coefficient }: Bench): number {
  assertWithin(
    {
      quantity: 'head',
      words: 'The height of liquid over the jet',
      unit: 'mm',
      min: 0,
      above: true,
      why: 'Without a head nothing runs.',
    },
    head,
  );
  assertWithin(
    {
      quantity: 'coefficient',
      words: 'The coefficient of discharge',
      unit: '',
      min: 0,
      above: true,
      max: 1,
      why: 'No hole passes more than the speed of free fall through its whole area.',
    },
    coefficient,
  );
  return coefficient * Math.sqrt(2 * 1000 * STANDARD_GRAVITY * head);
}

/** Area, mm², of a round hole of `bore` mm, and the bore of an area. */
export const areaOfBore = circleArea;
export const boreOfArea = (area: number): number => Math.sqrt((4 * area) / Math.PI);

/**
 * The area, mm², of a hole that passes `volume` cc (above 0) in `time` s (above 0).
 *
 * @throws MathsError `out-of-range`.
 */
export function areaByFlow(volume: number, time: number, bench: Bench): number {
  assertWithin(
    {
      quantity: 'volume',
      words: 'The measured volume',
      unit: 'cc',
      min: 0,
      above: true,
      why: 'It is what has run through the jet in the measured time.',
    },
    volume,
  );
  assertWithin(
    {
      quantity: 'time',
      words: 'The measured time',
      unit: 's',
      min: 0,
      above: true,
      why: 'It is how long the measured volume took.',
    },
    time,
  );
  return (1000 * volume) / (time * speed(bench));
}
