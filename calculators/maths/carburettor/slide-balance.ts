/**
 * Several throttle slides brought to the same opening by their adjusters. Lengths in mm, turns
 * positive where they lift the slide.
 */
import { MOST_CYLINDERS } from '../limits/cylinder-count.ts';
import { MathsError } from '../numeric/errors.ts';
import { assertWithin } from '../numeric/within.ts';

export interface SlideBalance {
  /** The opening that all are brought to, mm. */
  readonly target: number;
  /** Turns of each adjuster; positive opens. */
  readonly turns: readonly number[];
  /** Turns of all adjusters together, whichever way. */
  readonly work: number;
  /** Widest less narrowest opening as found, mm. */
  readonly spread: number;
}

function assertSlides(openings: readonly number[], thread: number): void {
  if (openings.length < 1 || openings.length > MOST_CYLINDERS) {
    throw new MathsError(
      'slides',
      ['slides'],
      `Balancing takes from 1 to ${MOST_CYLINDERS} slides, and ${openings.length} were given. Give one opening for each carburettor.`,
    );
  }
  openings.forEach((opening, index) => {
    assertWithin(
      {
        quantity: `opening-${index + 1}`,
        words: `The opening of slide ${index + 1}`,
        unit: 'mm',
        min: 0,
        why: 'A slide that is shut has an opening of 0. Give the size of the shank that just passes.',
      },
      opening,
    );
  });
  assertWithin(
    {
      quantity: 'thread',
      words: 'The pitch of the adjuster’s thread',
      unit: 'mm',
      min: 0,
      above: true,
      why: 'It is how far one turn moves the cable. Screw the adjuster ten turns, measure, and divide by ten.',
    },
    thread,
  );
}

/**
 * The opening that asks for the fewest turns of all adjusters together: the middle one (median) of
 * those found. One slide, at least, then stays as it is. With an even number of slides every opening
 * between the two middle ones asks for the same; that of the two which more slides already have is
 * taken, or else the smaller, which lets less air in at idle.
 *
 * Source: that the median makes the sum of distances least is a theorem of elementary statistics.
 */
export function leastWorkOpening(openings: readonly number[]): number {
  const upward = [...openings].sort((a, b) => a - b);
  const high = Math.floor(upward.length / 2);
  const low = upward.length % 2 === 0 ? high - 1 : high;
  const count = (opening: number): number => openings.filter((o) => o === opening).length;
  const [lower, upper] = [upward[low]!, upward[high]!];
  return count(upper) > count(lower) ? upper : lower;
}

/**
 * The turns that bring all slides to one opening.
 *
 * @param openings mm, 0 or more, 1 to 8 slides; a single one has nothing to agree with, and no turns unless an opening is wanted.
 * @param thread Pitch of the adjuster, mm.
 * @param wanted Opening to bring them to, mm; that of least work unless given.
 * @throws MathsError `slides`, `out-of-range`.
 */
export function balanceSlides(
  openings: readonly number[],
  thread: number,
  wanted?: number,
): SlideBalance {
  assertSlides(openings, thread);
  const target = wanted ?? leastWorkOpening(openings);
  const turns = openings.map((opening) => (target - opening) / thread);
  return {
    target,
    turns,
    work: turns.reduce((sum, turn) => sum + Math.abs(turn), 0),
    spread: Math.max(...openings) - Math.min(...openings),
  };
}

/**
 * Openings, relative to slide 1, from gauges of the vacuum behind each slide. The further a slide is
 * open, the less the vacuum; how much for one turn is tried on one adjuster.
 *
 * @param vacuums Readings, any one unit, at the same moment.
 * @param perTurn By how much a reading falls for one turn that opens; more than 0.
 * @param thread Pitch of the adjuster, mm.
 * @returns mm more open than slide 1; negative is less open.
 * @throws MathsError `out-of-range`.
 */
export function openingsFromVacuum(
  vacuums: readonly number[],
  perTurn: number,
  thread: number,
): readonly number[] {
  assertWithin(
    {
      quantity: 'perTurn',
      words: 'The fall of the gauge for one turn',
      unit: '',
      min: 0,
      above: true,
      why: 'Opening a slide lets its vacuum fall. Turn one adjuster by a known amount, note both readings, and divide.',
    },
    perTurn,
  );
  return vacuums.map((vacuum) => ((vacuums[0]! - vacuum) / perTurn) * thread);
}

export interface FreePlay {
  /** Free play of each cable afterwards, mm; negative holds the slide open. */
  readonly after: readonly number[];
  /** What all cable adjusters are to give back alike, mm, so that the tightest keeps its least. */
  readonly giveBack: number;
  /** Free play of each cable after that, mm. */
  readonly left: readonly number[];
}

/**
 * What balancing does to the cables' free play. Giving play back to all cables alike leaves the
 * balance as it is.
 *
 * @param before Free play of each cable, mm at the slide.
 * @param takenUp How much of each cable's play the balancing takes up, mm: what a cable adjuster
 *   lifts its slide by; less than 0 where play is gained, as under a slide that its stop screw lifts.
 * @param least Free play that the tightest cable must keep, mm.
 */
export function freePlayAfter(
  before: readonly number[],
  takenUp: readonly number[],
  least: number,
): FreePlay {
  const after = before.map((play, index) => play - takenUp[index]!);
  const giveBack = Math.max(0, least - Math.min(...after));
  return { after, giveBack, left: after.map((play) => play + giveBack) };
}
