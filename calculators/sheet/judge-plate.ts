import { fixed, withUnit } from '../frame/format.ts';
import { setPlaces, spacingsOf } from '../maths/plate/set-places.ts';
import {
  against,
  allOf,
  amount,
  isWithin,
  unfinished,
  unjudged,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';
import { aimOf } from './judge-together.ts';
import { directionsOf } from './sets.ts';

const say = (angle: number): string => withUnit(String(Number(fixed(angle, 2))), 'deg');

/** The angle wanted before each set, in words: one where all are alike. */
export function spacingWords(directions: readonly number[]): string {
  const spacings = spacingsOf(directions);
  const alike = spacings.every((angle) => isWithin(angle - spacings[0]!, 1e-5));
  return alike ? say(spacings[0]!) : spacings.map(say).join(', ');
}

/**
 * Sets round a plate: each against its own place, since one that is out shows in two angles. Only
 * where the sets stand to one another counts: the plate itself turns, so the whole pattern is laid
 * where it fits best, and that is said.
 */
export function judgeSpacing(given: Case): Judgement {
  const { engine, reading, entries, tolerance, lengths } = given;
  const known = allOf(entries);
  if (!known) return unfinished(entries);
  const directions = directionsOf(engine)!;
  const lobes = engine.figures.lobes ?? 1;
  const { closing, places } = setPlaces(known, directions, lobes);
  if (!isWithin(closing, known.length * tolerance)) {
    const sum = withUnit(
      fixed(
        known.reduce((all, angle) => all + angle, 0),
        1,
      ),
      'deg',
    );
    return {
      rows: unjudged(entries),
      whole: [
        `These angles add up to ${sum}, and once round is 360°. Measure them again, each from the set before, the first from the last.`,
      ],
      missing: [],
    };
  }
  const aim = aimOf(places, tolerance);
  const rows = places.map<Verdict>((place) => {
    const off = place - aim;
    const verdict = against(given, place, aim);
    if (verdict.result !== 'pass') return verdict;
    const out = amount(off, 'deg', reading.step, lengths);
    return {
      result: 'pass',
      words: isWithin(off, 0.005)
        ? 'at its place'
        : `${out} ${off > 0 ? 'past' : 'short of'} its place`,
    };
  });
  const whole: string[] = [];
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
