import type { Evaluation } from './evaluate.ts';
import type { AnyCalculator } from './types.ts';

/** Halvings after which two places of a handle are one on any screen. */
const HALVINGS = 12;

/** The furthest possible place on the way from a possible one to a wanted one: where a dragged handle stops. */
export function lastPossible(
  from: number,
  wanted: number,
  possible: (value: number) => boolean,
): number {
  if (possible(wanted)) return wanted;
  let [good, bad] = [from, wanted];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (good + bad) / 2;
    if (possible(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

/** The number that an input holds, by its key in the address: a member of a series by its own. */
export function numberAt(
  { inputs }: AnyCalculator,
  { values }: Evaluation,
  key: string,
): number | undefined {
  const whole = values[key];
  if (typeof whole === 'number') return whole;
  const [, name, index] = /^(.*)-(\d+)$/.exec(key) ?? [];
  const series = name === undefined ? undefined : inputs[name];
  const members = name === undefined ? undefined : values[name];
  if (series?.kind !== 'series' || !Array.isArray(members)) return undefined;
  return (members as readonly number[])[Number(index) - (series.first ?? 1)];
}
