/** `value` on the nearest multiple of `step`, without rounding error. */
export function onStep(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}

/** `value`, or the end of the range that it lies beyond: where a thing that is dragged comes to a stop. */
export const intoRange = (
  { min, max }: { readonly min: number; readonly max: number },
  value: number,
): number => Math.min(max, Math.max(min, value));

/** `count + 1` evenly spaced numbers from `from` to `to`. */
export function evenly(from: number, to: number, count: number): number[] {
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

/** A place in a picture to a hundredth of a user unit: finer than any screen or printer shows. */
export const hundredth = (value: number): number => Math.round(value * 100) / 100;
