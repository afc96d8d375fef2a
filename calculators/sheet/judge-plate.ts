import { listed } from '../maths/numeric/listed.ts';
import { fixed, withUnit } from '../frame/text/format.ts';
import { setPlaces, spacingsOf } from '../maths/plate/set-places.ts';
import {
  against,
  allOf,
  amount,
  empty,
  isWithin,
  unfinished,
  unjudged,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';
import { aimOf } from './judge-together.ts';
import { directionsOf, orderAgainstSets } from './sets.ts';

const say = (angle: number): string => withUnit(String(Number(fixed(angle, 2))), 'deg');

/** The angle wanted before one set, counted from 0. */
export const spacingOf = (directions: readonly number[], index: number): string =>
  say(spacingsOf(directions)[index]!);

/** The angle wanted before each set, in words: one where all are alike, else with whose each is. */
export function spacingWords(directions: readonly number[]): string {
  const spacings = spacingsOf(directions);
  if (spacings.every((angle) => isWithin(angle - spacings[0]!, 1e-5))) return say(spacings[0]!);
  const [first, second] = spacings.map(say);
  return spacings.length === 2
    ? `set 1: ${first!}, set 2: ${second!}`
    : `sets 1 to ${String(spacings.length)}: ${spacings.map(say).join(', ')}`;
}

/**
 * The most that angles may add up to beside whole turns, in tolerances. Half of it may lie between a
 * set and its place once it is shared out, and a verdict is worth nothing where that is no less than
 * the tolerance.
 */
const MOST_CLOSING = 2;
/** Less than this is not seen in a sum that is shown to a tenth, degrees. */
const UNSEEN = 0.05;
/** Sets nearer than this stand on one spot, degrees on the plate. */
const ONE_SPOT = 1;

/** Whole turns in words, with their degrees: "twice round is 720°". */
function roundWords(turns: number): string {
  const times = turns === 1 ? 'once' : turns === 2 ? 'twice' : `${String(turns)} times`;
  return `${times} round is ${say(360 * turns)}`;
}

/** How many turns these angles come to. */
const turnsOf = (angles: readonly number[]): number =>
  Math.round(angles.reduce((all, angle) => all + angle, 0) / 360);

/** Sets that the sheet wants on one spot, where there is room for one. */
function sharedPlaces(directions: readonly number[], lobes: number): string[] {
  const apart = (a: number, b: number): number => {
    const angle = (((a - b) % 360) + 360) % 360;
    return Math.min(angle, 360 - angle);
  };
  const groups: number[][] = [];
  directions.forEach((direction, i) => {
    const group = groups.find(([first]) => apart(directions[first!]!, direction) < ONE_SPOT);
    if (group) group.push(i);
    else groups.push([i]);
  });
  return groups.flatMap((group) => {
    if (group.length < 2) return [];
    const sets = listed(group.map((i) => i + 1));
    const at = say(((directions[group[0]!]! % 360) + 360) % 360);
    const way =
      lobes > 1
        ? `With ${String(lobes)} lobes one of them may stand a lobe further on, ${say(360 / lobes)} of the plate: enter that in the sheet.`
        : 'Check their directions in the sheet. Cylinders that do fire together are fired by one set, with a coil of two leads or a coil for each: say under “Sets of points” how many sets there are.';
    return [
      `By the sheet, sets ${sets} belong on one spot of the plate, at ${at}, where there is room for one. ${way}`,
    ];
  });
}

/**
 * Sets round a plate: each against its own place, since one that is out shows in two angles. Only
 * where the sets stand to one another counts: the plate itself turns, so the whole pattern is laid
 * where it fits best, and that is said. Against places that cannot all be right nothing is judged.
 */
export function judgeSpacing(given: Case): Judgement {
  const { engine, reading, entries, tolerance } = given;
  const directions = directionsOf(engine)!;
  const lobes = engine.figures.lobes ?? 1;
  const doubted = [...sharedPlaces(directions, lobes), ...[orderAgainstSets(engine) ?? []].flat()];
  if (doubted.length > 0) {
    const words = 'not judged: where the sets belong is first to be put right in the sheet';
    return {
      rows: entries.map((entry) => (entry === null ? empty : { result: 'unjudged', words })),
      whole: doubted,
      missing: [],
    };
  }
  const known = allOf(entries);
  if (!known) return unfinished(given);
  const { closing, places } = setPlaces(known, directions, lobes);
  const sum = withUnit(
    fixed(
      known.reduce((all, angle) => all + angle, 0),
      1,
    ),
    'deg',
  );
  if (!isWithin(closing, MOST_CLOSING * tolerance)) {
    return {
      rows: unjudged(entries),
      whole: [
        `These angles add up to ${sum}, and ${roundWords(turnsOf(spacingsOf(directions)))}. Measure them again, each from the set before, the first from the last.`,
      ],
      missing: [],
    };
  }
  const aim = aimOf(places, tolerance);
  const rows = places.map<Verdict>((place) => {
    const off = place - aim;
    const verdict = against(given, place, aim);
    if (verdict.result !== 'pass') return verdict;
    const out = amount(off, 'deg', reading.step);
    return {
      result: 'pass',
      words: isWithin(off, 0.005)
        ? 'at its place'
        : `${out} ${off > 0 ? 'past' : 'short of'} its place`,
    };
  });
  const whole: string[] = [];
  if (!isWithin(closing, UNSEEN)) {
    whole.push(
      `These angles add up to ${sum}, and ${roundWords(turnsOf(known))}: the ${say(Math.abs(closing))} ${closing > 0 ? 'too much' : 'too little'} are an error of measuring. It is shared out evenly among them; no place is surer than half of it.`,
    );
  }
  if (known.length > 1) {
    whole.push(
      `Judged by best-fit places: the wanted directions are laid on the plate as a whole where they fit best, since the plate itself can be turned, and each set is held against its own. So one angle may be off by up to ${say(2 * tolerance)} while both its sets pass.`,
    );
  }
  if (rows.some(({ result }) => result === 'fail') && fitsBackwards(known, directions, given)) {
    whole.push(
      'Counted the other way round these angles fit. Count them, and the directions in the sheet, the way the cam turns.',
    );
  }
  return { rows, whole, missing: [] };
}

function fitsBackwards(
  known: readonly number[],
  directions: readonly number[],
  { engine, tolerance }: Case,
): boolean {
  const mirrored = directions.map((direction) => -direction);
  const { places } = setPlaces(known, mirrored, engine.figures.lobes ?? 1);
  return Math.max(...places) - Math.min(...places) <= 2 * tolerance;
}
