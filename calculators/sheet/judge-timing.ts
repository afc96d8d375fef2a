import { fixed } from '../frame/format.ts';
import { setMoves, settlePlate, timingAt } from '../maths/plate-setting.ts';
import { sliderCrankOf } from './geometry.ts';
import {
  amount,
  attempted,
  degrees,
  empty,
  isWithin,
  unjudged,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';
import { boxName } from './steps.ts';

const earlier = 'against the way the cam turns, which is earlier (advances)';
const later = 'the way the cam turns, which is later (retards)';

/** Each cylinder in crank degrees, and the one turn of the plate that suits all best. */
export function judgeTiming(given: Case): Judgement {
  const { engine, reading, entries, tolerance, lengths } = given;
  const target = engine.figures.target!;
  const geometry = sliderCrankOf(engine)!;
  const wanted = attempted(() => timingAt(geometry, target));
  if (typeof wanted === 'string') {
    return { rows: unjudged(entries), whole: [wanted], missing: [] };
  }
  const angles = entries.map((entry) =>
    entry === null ? null : attempted(() => timingAt(geometry, entry)),
  );
  const rows = angles.map<Verdict>((angle, i) => {
    if (angle === null) return empty;
    if (typeof angle === 'string') return { result: 'fail', words: angle };
    const off = angle - wanted;
    if (isWithin(off, tolerance)) {
      return { result: 'pass', words: `${fixed(angle, 1)}° before the top` };
    }
    const travel = amount(entries[i]! - target, 'mm', reading.step, lengths);
    const sheet = amount(target, 'mm', reading.step, lengths);
    return {
      result: 'fail',
      words: `${degrees(off)}, or ${travel}, ${off > 0 ? 'early' : 'late'} against the ${sheet} of the sheet: make it fire ${off > 0 ? 'later' : 'earlier'}.`,
    };
  });
  const known = angles.filter((angle): angle is number => typeof angle === 'number');
  const settled = known.length === angles.length && rows.some((row) => row.result === 'fail');
  return { rows, whole: settled ? plateWords(given, known, wanted) : [], missing: [] };
}

/** The one turn of the plate, and what is then left for the sets. */
function plateWords(given: Case, found: readonly number[], wanted: number): string[] {
  const { engine, reading, tolerance, lengths } = given;
  const setting = attempted(() => settlePlate(found, wanted));
  if (typeof setting === 'string') return [setting];
  const ratio = engine.figures['speed-ratio'] ?? 1;
  const radius = engine.figures['slot-radius'];
  const turn =
    Math.abs(setting.move) < 0.05
      ? 'Leave the plate where it is.'
      : `Turn the plate ${setting.move > 0 ? earlier : later}, by ${degrees(setting.move)} of crank${ratio === 1 ? '' : `, which is ${degrees(setting.move * ratio)} of the plate`}: that is the least that leaves the worst cylinder best.`;
  if (isWithin(setting.worst, tolerance)) {
    return [turn, 'Every cylinder is then within its limits; no set has to be moved.'];
  }
  const moves = radius === undefined ? undefined : setMoves(setting, radius, ratio);
  const sets = setting.errors.flatMap((error, i) => {
    if (isWithin(error, tolerance)) return [];
    const along =
      moves === undefined ? '' : `, ${amount(moves[i]!, 'mm', 0.1, lengths)} along its slot`;
    return [
      `${boxName(reading, i)}: then move its set ${error > 0 ? later : earlier}, by ${degrees(error)} of crank${along}.`,
    ];
  });
  return [turn, ...sets];
}
