import { ticks } from 'd3-array';

/**
 * A linear scale from a quantity to user units, with the ticks of d3-array. It stands in for the
 * scale of d3-scale, whose colour and date arithmetic would be a quarter of a page's script.
 */
export interface LinearScale {
  (value: number): number;
  readonly invert: (place: number) => number;
  readonly ticks: (count: number) => number[];
  readonly domain: readonly [from: number, to: number];
  readonly range: readonly [from: number, to: number];
}

/** @throws RangeError when the domain has no width. */
export function scaleLinear(
  domain: readonly [from: number, to: number],
  range: readonly [from: number, to: number],
): LinearScale {
  const [from, to] = domain;
  const [start, end] = range;
  if (!(Math.abs(to - from) > 0)) throw new RangeError('A scale needs a domain with some width');
  const rate = (end - start) / (to - from);
  return Object.assign((value: number) => start + (value - from) * rate, {
    invert: (place: number) => from + (place - start) / rate,
    ticks: (count: number) => ticks(from, to, count),
    domain,
    range,
  });
}
