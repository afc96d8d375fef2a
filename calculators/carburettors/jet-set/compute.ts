import { attempt, ifThere } from '../../frame/attempt.ts';
import { Absent, type ComputedOf, type ValuesOf } from '../../frame/types.ts';
import {
  areaAgainst,
  mean,
  neighbouringSets,
  spreadOf,
  type JetSet,
} from '../../maths/carburettor/jet-set.ts';
import { areaOfBore, boreOfArea } from '../../maths/carburettor/orifice.ts';
import { MathsError } from '../../maths/numeric/errors.ts';
import { areasOf, seriesOf } from './readings.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

const within = (against: number, tolerance: number): boolean =>
  Math.abs(against) <= tolerance * (1 + 1e-9);

/** The sets to choose from, best first, by the places of the jets: of all, or of those that fit the size. */
function setsOf(v: Values, areas: readonly number[]): readonly JetSet[] {
  const { size } = v;
  if (size === undefined && v.wanted === 1 && areas.length > 1) {
    throw new MathsError(
      'nothing-to-match',
      ['size'],
      'One carburettor has no other to be matched with: it takes the jet nearest to the size that it asks for. Give the size wanted.',
    );
  }
  const places = areas.flatMap((area, place) =>
    size === undefined || within(areaAgainst(area, areaOfBore(size)), v.tolerance) ? [place] : [],
  );
  if (size !== undefined && places.length < v.wanted && areas.length >= v.wanted) {
    const few =
      places.length === 0
        ? 'None of the jets is'
        : `Only ${String(places.length)} of the jets ${places.length === 1 ? 'is' : 'are'}`;
    throw new MathsError(
      'too-few-fit',
      ['size', 'tolerance', seriesOf[v.by]],
      `${few} near enough to the size wanted, and ${String(v.wanted)} ${v.wanted === 1 ? 'is' : 'are'} needed. Allow more, or look for more jets.`,
    );
  }
  return neighbouringSets(
    places.map((place) => areas[place]!),
    v.wanted,
    size === undefined ? undefined : areaOfBore(size),
  ).map(({ chosen, spread }) => ({ chosen: chosen.map((one) => places[one]!), spread }));
}

type Decided = readonly JetSet[] | Absent;

/** Which jets make the sets, by the readings as they are: a ± does not choose others. */
export const decide = (v: Values): Decided => attempt(() => setsOf(v, areasOf(v)));

const areasIn = ({ chosen }: JetSet, areas: readonly number[]): readonly number[] =>
  chosen.map((place) => areas[place]!);

export function compute(v: Values, decided?: unknown): Computed {
  const areas = areasOf(v);
  if (areas.length < v.wanted) neighbouringSets(areas, v.wanted);
  const sets = (decided ?? decide(v)) as Decided;
  const best = ifThere(sets, ([first]) => areasIn(first!, areas));
  const next = ifThere(sets, ([first, second]) => areasIn((second ?? first)!, areas));
  const reference = v.size === undefined ? ifThere(best, mean) : areaOfBore(v.size);
  const against = ifThere(reference, (area) => areas.map((one) => areaAgainst(one, area)));
  return {
    spread: ifThere(best, spreadOf),
    'set-size': ifThere(best, (set) => boreOfArea(mean(set))),
    rejected: ifThere(against, (all) => all.filter((one) => !within(one, v.tolerance)).length),
    'next-spread': ifThere(next, spreadOf),
    chosen: ifThere(sets, ([first]) => first!.chosen.map((place) => place + 1)),
    'chosen-size': ifThere(best, (set) => set.map(boreOfArea)),
    'jet-size': areas.map(boreOfArea),
    'jet-area': areas,
    against,
  };
}

/** Whether a jet is further off than is allowed. */
export const isRejected = (v: Values, against: number): boolean => !within(against, v.tolerance);

/** The numbers of the jets chosen; none where no set fits. */
export const chosenOf = ({ chosen }: Computed): readonly number[] =>
  chosen instanceof Absent ? [] : (chosen as readonly number[]);
