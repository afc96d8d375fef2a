import { listed } from '../maths/numeric/listed.ts';
import { placeFor } from './disc-places.ts';
import {
  against,
  amount,
  empty,
  isWithin,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';
import { boxName, type Entry } from './model.ts';

/**
 * How far the disc is to be turned on the crank, in what it shows: the turn after which the fewest
 * are out, of those that put no cylinder out which is right, and take the disc no further from
 * cylinder 1, on which it is zeroed, where that one is right.
 */
function turnOf(entries: readonly Entry[], tolerance: number): number {
  const known = entries.filter((entry): entry is number => entry !== null);
  if (known.length === 0) return 0;
  const ground = entries[0] ?? null;
  const isOut = (entry: number): boolean => !isWithin(entry, tolerance);
  const left = (turn: number): number => known.filter((entry) => isOut(entry - turn)).length;
  const spoils = (turn: number): boolean =>
    (ground !== null && !isOut(ground) && Math.abs(ground - turn) > Math.abs(ground)) ||
    known.some((entry) => !isOut(entry) && isOut(entry - turn));
  const middle = (Math.min(...known) + Math.max(...known)) / 2;
  return [middle, ...known.filter(isOut)]
    .filter((turn) => !spoils(turn))
    .reduce((best, turn) => (left(turn) < left(best) ? turn : best), 0);
}

/** The disc at the true top of each cylinder: one disc for all, so that it is turned for all or not. */
export function judgeTop(given: Case): Judgement {
  const { engine, reading, entries, tolerance, unit } = given;
  const say = (value: number): string => amount(value, unit, reading.step);
  const turn = turnOf(entries, tolerance);
  const rows = entries.map<Verdict>((entry, i) => {
    if (entry === null) return empty;
    const own = against(given, entry, 0);
    if (own.result !== 'fail' || entries.length === 1) return own;
    if (entries[0] === null && i > 0) {
      return {
        result: 'fail',
        words: `It stands ${say(entry)} ${entry > 0 ? 'past' : 'short of'} its place. Read cylinder 1 first: the disc is zeroed on that one, and is turned for no other alone.`,
      };
    }
    const then = entry - turn;
    const way = turn > 0 ? reading.tooHigh : reading.tooLow;
    const first = turn === 0 ? '' : `${way} ${say(turn)}`;
    if (isWithin(then, tolerance)) {
      const leaves = isWithin(then, reading.step / 2) ? '' : `, which leaves ${say(then)} here`;
      return { result: 'fail', words: `${first}${leaves}.` };
    }
    const right = (other: Entry, turned: number): boolean =>
      other !== null && isWithin(other - turned, tolerance);
    const others = entries.flatMap((other, j) =>
      right(other, turn) && !right(other, entry) ? [boxName(reading, j, engine).toLowerCase()] : [],
    );
    const spoilt =
      others.length > 0
        ? `${listed(others)} would be out`
        : 'cylinder 1, on which it is zeroed, would come further off';
    const keep = entries.some((other) => right(other, turn))
      ? `Do not turn the disc for this one${turn === 0 ? '' : ' alone'}: ${spoilt}`
      : 'The cylinders disagree by more than one turn of the disc puts right';
    const off = `it stands ${say(then)} ${then > 0 ? 'past' : 'short of'} its place`;
    const place = placeFor(engine, i, then);
    const next =
      place === undefined
        ? `Read it once more; if it stays so, ${i === 0 ? 'the other places are off by that, and not the disc' : `take ${say(then)} ${then > 0 ? 'off' : 'more than'} what the disc shows of this cylinder`}`
        : `Read it once more: its top comes ${place}`;
    return {
      result: 'fail',
      words: `${first === '' ? '' : `${first}; that is for all. `}${keep}, and ${off}. ${next}.`,
    };
  });
  return { rows, whole: [], missing: [] };
}
