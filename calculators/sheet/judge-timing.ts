import { listed } from '../maths/numeric/listed.ts';
import { boxName, perOf, setsOf, turnsOf } from './model.ts';
import { fixed, withUnit } from '../frame/text/format.ts';
import { EARLIEST_SPARK } from '../maths/limits/earliest-spark.ts';
import {
  setMoves,
  settlePlate,
  timingAt,
  type PlateSetting,
} from '../maths/plate/plate-setting.ts';
import { sliderCrankOf } from './geometry.ts';
import { isBeyondSlots } from './slot-reach.ts';
import {
  amount,
  attempted,
  degrees,
  empty,
  isWithin,
  signedAmount,
  unjudged,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';

const earlier = 'against the way the cam turns, which is earlier (advances)';
const later = 'the way the cam turns, which is later (retards)';

/** So much is seldom put right by a slot, and more often a slip in the reading, crank degrees. */
const DOUBTFUL = 10;

/** Where the piston stands: "6.6° before the top", or after it. */
const placeWords = (angle: number): string =>
  `${degrees(angle)} ${angle < 0 ? 'after' : 'before'} the top`;

/** Each cylinder in crank degrees, and the one turn of the plate that suits all best. */
export function judgeTiming(given: Case): Judgement {
  const { engine, reading, entries, tolerance, unit } = given;
  const target = engine.figures.target!;
  const geometry = sliderCrankOf(engine)!;
  const wanted = attempted(() => timingAt(geometry, target));
  if (typeof wanted === 'string') {
    return { rows: unjudged(entries), whole: [wanted], missing: [] };
  }
  if (wanted > EARLIEST_SPARK) {
    const sheet = signedAmount(target, unit, reading.step);
    return {
      rows: unjudged(entries),
      whole: [
        `The ${sheet} of the sheet are ${placeWords(wanted)}, where no such engine fires: check the figure, its unit, and stroke and rod. Nothing is judged against it.`,
      ],
      missing: [],
    };
  }
  const angles = entries.map((entry) =>
    entry === null ? null : attempted(() => timingAt(geometry, entry)),
  );
  const rows = angles.map<Verdict>((angle, i) => {
    if (angle === null) return empty;
    if (typeof angle === 'string') return { result: 'fail', words: angle, reread: true };
    const off = angle - wanted;
    if (isBeyondSlots(angle, wanted)) {
      const read = signedAmount(entries[i]!, unit, reading.step);
      return {
        result: 'fail',
        words: `${read} is ${placeWords(angle)}, further from the figure than any slot reaches: check the reading and its unit, and at which top it was taken.`,
        reread: true,
      };
    }
    if (isWithin(off, tolerance)) {
      return { result: 'pass', words: placeWords(angle) };
    }
    const travel = amount(entries[i]! - target, unit, reading.step);
    const sheet = signedAmount(target, unit, reading.step);
    return {
      result: 'fail',
      words: `${degrees(off, tolerance)}, or ${travel}, ${off > 0 ? 'early' : 'late'} against the ${sheet} of the sheet: make it fire ${off > 0 ? 'later' : 'earlier'}.${Math.abs(off) > DOUBTFUL ? ' That is much for a slot: read it once more, and see to its unit, before anything is turned.' : ''}`,
    };
  });
  const known = angles.filter((angle): angle is number => typeof angle === 'number');
  const likely = known.every((angle) => !isBeyondSlots(angle, wanted));
  const settled =
    likely && known.length === angles.length && rows.some((row) => row.result === 'fail');
  if (settled && turnsOf(engine) > 1) {
    return { rows, whole: lobesWords(given, known, wanted), missing: [] };
  }
  const setting = settled ? bestTurn(known, wanted, tolerance) : undefined;
  if (setting === undefined) return { rows, whole: [], missing: [] };
  if (typeof setting === 'string') return { rows, whole: [setting], missing: [] };
  const whole = plateWords(given, setting);
  return { rows, whole, missing: [], ...plateFirst(given, setting, whole[0]!) };
}

const BY_LOBES =
  'The rest is in the lobes of the cam, or in the tops themselves (crank pins, rods, pistons), and no turn of the plate mends it.';

/** What is to be turned where a set fires several cylinders by lobes of their own, which all move with it. */
function lobesWords(
  { engine, tolerance }: Case,
  known: readonly number[],
  wanted: number,
): string[] {
  if (setsOf(engine) > 1) {
    return [
      `A set moves all cylinders that it fires alike. Move each until the earliest of its own is at the figure. ${BY_LOBES}`,
    ];
  }
  const early = Math.max(...known) - wanted;
  const late = Math.min(...known) - wanted;
  const fits = isWithin((early - late) / 2, tolerance);
  const move = fits ? -(early + late) / 2 : -early;
  const turn =
    Math.abs(move) < 0.05
      ? 'Leave plate and set where they are.'
      : `Turn the plate, or move the set, ${move > 0 ? earlier : later}, by ${degrees(move)} of crank.`;
  return fits
    ? [turn, 'Every cylinder is then within its limits.']
    : [turn, `The earliest is then at the figure, and none is early. ${BY_LOBES}`];
}

const isLeft = ({ move }: Turn): boolean => Math.abs(move) < 0.05;

/** A turn of the plate in crank degrees (+ earlier) and what it leaves of each cylinder's error. */
interface Turn {
  readonly move: number;
  readonly errors: readonly number[];
  readonly why: string;
  /** The turn of the calculator, which has no eye for how many sets are left to be moved. */
  readonly middle: PlateSetting;
}

/**
 * The turn of the plate that leaves the fewest sets to be moved, since a set that is right is not to
 * be moved; of turns alike in that, none at all, then the one that leaves the worst cylinder best.
 */
function bestTurn(found: readonly number[], wanted: number, tolerance: number): Turn | string {
  const settled = attempted(() => settlePlate(found, wanted));
  if (typeof settled === 'string') return settled;
  const asFound = found.map((angle) => angle - wanted);
  const few = 'that leaves the fewest sets to be moved';
  const turned = (move: number, why: string): Turn => ({
    move,
    errors: asFound.map((error) => error + move),
    why,
    middle: settled,
  });
  const turns = [
    turned(0, few),
    turned(settled.move, 'that is the least that leaves the worst cylinder best'),
    ...asFound.map((error) => turned(-error, few)),
  ];
  const out = ({ errors }: Turn): number =>
    errors.filter((error) => !isWithin(error, tolerance)).length;
  return turns.reduce((best, turn) => (out(turn) < out(best) ? turn : best));
}

/**
 * How the calculator of the plate goes about the same readings, where that leaves more sets to be
 * moved: it turns the plate to the middle of the earliest and the latest, whatever it leaves.
 */
function otherWay({ engine, reading, tolerance }: Case, { move, errors, middle }: Turn): string[] {
  if (Math.abs(move - middle.move) < 0.005) return [];
  const say = (angle: number): string => withUnit(fixed(Math.abs(angle), 2), 'deg');
  const out = (left: readonly number[]): string[] =>
    left.flatMap((error, i) =>
      isWithin(error, tolerance) ? [] : [boxName(reading, i, engine).toLowerCase()],
    );
  const [here, there] = [out(errors), out(middle.errors)];
  if (there.length <= here.length) return [];
  return [
    `The calculator “Setting several cylinders from one plate” goes another way to the same end: it turns the plate ${say(middle.move)} ${middle.move > 0 ? 'earlier' : 'later'}, to the middle of the earliest and the latest, and then ${perOf(reading, engine) === 'Set' ? '' : 'the sets of '}${listed(there)} are still to be moved. Here ${here.length === 1 ? 'one set is' : `${String(here.length)} sets are`} moved and not ${String(there.length)}, since each set that is moved changes its gap.`,
  ];
}

/** How far the plate is turned: in crank degrees, and in its own where they are others. */
function turnWords({ engine }: Case, { move }: Turn): string {
  const ratio = engine.figures['speed-ratio'];
  return `${degrees(move)} of crank${ratio === undefined || ratio === 1 ? '' : `, which is ${degrees(move * ratio)} of the plate`}`;
}

/** The plate before any set, where there is more than one: a set may be early, and the plate still go earlier. */
const plateFirst = (given: Case, setting: Turn, inFull: string): Pick<Judgement, 'first'> =>
  isLeft(setting) || setting.errors.length < 2
    ? {}
    : {
        first: {
          order: `First turn the plate ${setting.move > 0 ? 'earlier, against the way the cam turns' : 'later, the way the cam turns'}, by ${turnWords(given, setting)}.`,
          inFull,
          rest: `Of this turn of the plate: ${setting.why}.`,
        },
      };

/** The one turn of the plate, and what is then left for the sets. */
function plateWords(given: Case, setting: Turn): string[] {
  const { engine, reading, tolerance, unit } = given;
  const stays = isLeft(setting);
  const isOne = setting.errors.length === 1;
  const ratio = engine.figures['speed-ratio'];
  const radius = ratio === undefined ? undefined : engine.figures['slot-radius'];
  const turn = stays
    ? 'Leave the plate where it is, and move only the sets that are out.'
    : `Turn the plate ${setting.move > 0 ? earlier : later}, by ${turnWords(given, setting)}${isOne ? '' : `: ${setting.why}`}.`;
  if (setting.errors.every((error) => isWithin(error, tolerance))) {
    return isOne
      ? [turn, 'It is then within its limits.']
      : [turn, 'Every cylinder is then within its limits; no set has to be moved.'];
  }
  const moves =
    radius === undefined || ratio === undefined ? undefined : setMoves(setting, radius, ratio);
  const sets = setting.errors.flatMap((error, i) => {
    if (isWithin(error, tolerance)) return [];
    const along = moves === undefined ? '' : `, ${amount(moves[i]!, unit, 0.1)} along its slot`;
    return [
      `${boxName(reading, i, engine)}: ${stays ? '' : 'then '}move its set ${error > 0 ? later : earlier}, by ${degrees(error)} of crank${along}.`,
    ];
  });
  return [turn, ...sets, ...otherWay(given, setting)];
}
