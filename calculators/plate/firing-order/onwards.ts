import type { Onward } from '../../frame/types.ts';
import type { Computed, Values } from './compute.ts';

const degrees = (angle: number): string => `${String(Number(angle.toFixed(6)))}deg`;

/**
 * The sets of a plate laid out anticlockwise: the angles from set to set in the order of firing where
 * the cam turns so, and backwards from set 1 where it turns clockwise. Cylinders that fire together
 * take one set.
 */
export function plateSpacings(v: Values, computed: Computed): readonly number[] {
  const apart = (computed.interval as readonly number[]).filter((interval) => interval > 0);
  const onwards = v.seen === 'anticlockwise' ? apart : apart.toReversed();
  return onwards.slice(0, -1);
}

export function onwards(v: Values, computed: Computed): readonly Onward[] {
  const spacings = plateSpacings(v, computed);
  const from = ['cylinders', 'pin', 'lean'] as const;
  return [
    {
      slug: 'plate-layout',
      words: 'Lay out a plate with these directions',
      query: {
        sets: String(spacings.length + 1),
        ...Object.fromEntries(spacings.map((angle, i) => [`spacing-${i + 2}`, degrees(angle)])),
      },
      from,
    },
    {
      slug: 'plate-setting',
      words: 'Set these cylinders from one plate',
      query: { cylinders: String(v.cylinders) },
      from,
    },
  ];
}
