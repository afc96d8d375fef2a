import { areaByFlow, areaOfBore } from '../../maths/carburettor/orifice.ts';

/** How the jets of a bag are measured, and the size that is wanted of them. */
export interface Bench {
  readonly by: 'pin' | 'flow' | 'number';
  readonly volume: number;
  readonly head: number;
  readonly coefficient: number;
  readonly 'number-means': 'size' | 'flow';
  readonly 'known-number': number;
  readonly 'known-bore': number;
  readonly size: number | undefined;
}

/** What is read of each jet. */
interface Readings extends Bench {
  readonly bore: readonly number[];
  readonly time: readonly number[];
  readonly number: readonly number[];
}

/** The input that holds the readings, by the way they are taken. */
export const seriesOf = { pin: 'bore', flow: 'time', number: 'number' } as const;

/** Stamped by size, a number is hundredths of a mm. */
const HUNDREDTHS = 100;

/** Area of each jet, mm², however it was measured. */
export function areasOf(v: Readings): readonly number[] {
  if (v.by === 'pin') return v.bore.map(areaOfBore);
  if (v.by === 'flow') {
    const bench = { head: v.head, coefficient: v.coefficient };
    return v.time.map((time) => areaByFlow(v.volume, time, bench));
  }
  if (v['number-means'] === 'size') {
    return v.number.map((number) => areaOfBore(number / HUNDREDTHS));
  }
  const each = areaOfBore(v['known-bore']) / v['known-number'];
  return v.number.map((number) => each * number);
}

/** The reading that a jet of `bore` mm would give, the other way round. */
export function readingOf(v: Bench, bore: number): number {
  const area = areaOfBore(bore);
  if (v.by === 'pin') return bore;
  if (v.by === 'flow') {
    return areaByFlow(v.volume, 1, { head: v.head, coefficient: v.coefficient }) / area;
  }
  if (v['number-means'] === 'size') return bore * HUNDREDTHS;
  return (v['known-number'] * area) / areaOfBore(v['known-bore']);
}

/**
 * What a figure of the example’s bag becomes for a `size` that was given: a bag of that size spreads as
 * the example’s does about its own, so that nobody is told to look for other jets by jets that are
 * nobody’s.
 */
export function aboutSize(own: number, ofExample: number, v: Bench): number | undefined {
  return v.size === undefined ? undefined : (own * readingOf(v, v.size)) / ofExample;
}
