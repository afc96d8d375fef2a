import type { Onward } from '../../frame/types.ts';
import { firedBySets, setDirections, withinTurn } from '../../maths/crank/firing-order.ts';
import type { Computed, Values } from './compute.ts';

const degrees = (angle: number): string => `${String(Number(angle.toFixed(6)))}deg`;

/**
 * Degrees from each set on to the next, in the order of their cylinders, the way the cam turns.
 * Cylinders that fire together take one set.
 */
function plateSpacings(computed: Computed): readonly number[] {
  const sets = setDirections(computed.set as readonly number[]);
  return sets.slice(1).map((set, i) => withinTurn(set - sets[i]!));
}

/** What the coils fire, where all are alike: a coil for each set of points, of one plug or of two. */
function wiring(computed: Computed): Onward['query'] | undefined {
  const fired = firedBySets(computed.set as readonly number[]);
  const most = Math.max(...fired);
  if (most > 2 || fired.some((each) => each !== most)) return undefined;
  return { coils: String(fired.length), ...(most === 2 ? { leads: 'two' } : {}) };
}

export function onwards(v: Values, computed: Computed): readonly Onward[] {
  const spacings = plateSpacings(computed);
  const shared = spacings.length + 1 < v.cylinders;
  const from = ['cylinders', 'firing-order', 'pin', 'lean', 'turning'] as const;
  const coils = wiring(computed);
  return [
    {
      slug: 'plate-layout',
      words: 'Lay out a plate with these directions',
      query: {
        sets: String(spacings.length + 1),
        ...(spacings.length > 0 ? { turning: v.turning } : {}),
        ...Object.fromEntries(spacings.map((angle, i) => [`spacing-${i + 2}`, degrees(angle)])),
      },
      from,
    },
    {
      slug: 'plate-setting',
      // Cylinders that fire together are set as one: they share a set of points.
      words: `Set these ${shared ? 'sets of points' : 'cylinders'} from one plate`,
      query: {
        cylinders: String(spacings.length + 1),
        stroke: `${String(v.stroke)}mm`,
        rod: `${String(v.rod)}mm`,
      },
      from: [...from, 'stroke', 'rod'],
    },
    ...(coils
      ? [{ slug: 'wiring', words: 'Wire their coils from one battery', query: coils, from }]
      : []),
  ];
}
