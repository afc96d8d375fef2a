import type { Onward } from '../../frame/types.ts';
import { MOST_SETS } from '../../maths/plate/plate-layout.ts';
import { setsAbout, type Sets } from '../../maths/plate/hole-sets.ts';
import { inputs } from './inputs.ts';
import { centreOf, fitted, patternOf, polarOf, type Values } from './compute.ts';

/** Most holes of a set that the plate’s layout takes. */
const MOST_OF_A_SET = 6;
/** Sets whose holes lie further from alike than this are none, mm. */
const ALIKE = 1;

/** The holes about the centre as like sets; nothing where they are none. */
export function setsOf(v: Values): Sets | undefined {
  const { places } = fitted(patternOf(v));
  const centre = centreOf(v, places);
  const holes = polarOf(places, centre).flatMap((polar, i) =>
    i === centre.hole ? [] : [{ ...polar, diameter: v.hole[i]! }],
  );
  const sets = setsAbout(holes, v.sets);
  return sets && sets.worst <= ALIKE ? sets : undefined;
}

const figure = (value: number): string => String(Number(value.toFixed(3)));
const wrapped = (angle: number): number => ((((angle + 180) % 360) + 360) % 360) - 180;

/** The plate’s layout with these places, where they are a set or several about a centre. */
export function onwards(v: Values): readonly Onward[] {
  // The middle of the holes is no place that anybody chose for a shaft.
  const sets = v.about === 'middle' ? undefined : setsOf(v);
  if (!sets || v.sets > MOST_SETS || sets.holes.length > MOST_OF_A_SET) return [];
  if (sets.holes.some(({ radius }) => radius < 0.5 || radius > 200)) return [];
  const { directions, holes } = sets;
  const numbered = (key: string, unit: string, figures: readonly number[], first = 1) =>
    figures.map((one, i): [string, string] => [`${key}-${i + first}`, `${figure(one)}${unit}`]);
  const spacing = directions
    .slice(1)
    .map((direction, s) => (((direction - directions[s]!) % 360) + 360) % 360);
  return [
    {
      slug: 'plate-layout',
      words: 'Lay out a breaker plate with these places',
      query: Object.fromEntries([
        ['sets', String(v.sets)],
        ...(v.sets > 1 ? [['turning', 'anticlockwise']] : []),
        ['start', `${figure(wrapped(directions[0]!))}deg`],
        ...numbered('spacing', 'deg', spacing, 2),
        ...(v.outline === 'round' && v.outside >= 20 && v.outside <= 400
          ? [['outside', `${figure(v.outside)}mm`]]
          : []),
        ['holes', String(holes.length)],
        ...numbered(
          'radius',
          'mm',
          holes.map(({ radius }) => radius),
        ),
        ...numbered(
          'angle',
          'deg',
          holes.map(({ angle }) => wrapped(angle)),
        ),
        ...numbered(
          'drill',
          'mm',
          holes.map(({ diameter }) => Math.min(60, diameter)),
        ),
      ]) as Readonly<Record<string, string>>,
      from: Object.keys(inputs),
    },
  ];
}
