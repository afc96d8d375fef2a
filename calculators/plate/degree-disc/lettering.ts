import { CAPITAL } from '../../drawing/svg-element.ts';
import { textWidth } from '../../picture/common/text-width.ts';

const RADIANS_PER_DEGREE = Math.PI / 180;

/** At most how wide words are, with capitals so high, mm. */
export const wordsWide = (words: string, height: number): number =>
  textWidth(words, { size: height / CAPITAL });

/**
 * Sentences broken between words into rows that go where they are to stand.
 *
 * @param heightOf Where the foot of a row lies.
 * @param roomAt How wide a row may be there, mm.
 * @param letter Height of capitals, mm.
 */
export function rowsWithin(
  sentences: readonly string[],
  heightOf: (row: number) => number,
  roomAt: (height: number) => number,
  letter: number,
): readonly string[] {
  const rows: string[] = [];
  for (const sentence of sentences) {
    let row = '';
    for (const word of sentence.split(' ').filter(Boolean)) {
      const longer = row === '' ? word : `${row} ${word}`;
      if (row !== '' && wordsWide(longer, letter) > roomAt(heightOf(rows.length))) {
        rows.push(row);
        row = word;
      } else row = longer;
    }
    if (row !== '') rows.push(row);
  }
  return rows;
}

interface OnSpoke {
  /** Degrees anticlockwise from X. */
  readonly direction: number;
  readonly words: string;
}

interface Beside {
  /** Radius of the outer end of the words, mm. */
  readonly outer: number;
  /** Above their spoke as one reads, below it, or on its line where that has ended. */
  readonly side: 1 | 0 | -1;
}

/** How many places further in are tried, each so many letters from the one before. */
const INWARDS = 6;
const NEXT = 2;

/**
 * Where the words of each spoke stand along it: as far out as no other spoke and no other words lie
 * on them.
 *
 * @param reach Radii between which the spokes are drawn, and within which nothing may stand, mm.
 */
export function clearOnDisc(
  spokes: readonly OnSpoke[],
  reach: { readonly from: number; readonly to: number; readonly hole: number },
  letter: number,
): readonly Beside[] {
  const done: { readonly x: number; readonly y: number }[] = [];
  const out = new Array<Beside>(spokes.length);
  const step = letter / 3;
  const lines = spokes.map(({ direction }) => {
    const [cos, sin] = [Math.cos, Math.sin].map((f) => f(direction * RADIANS_PER_DEGREE));
    const count = Math.ceil((reach.to - reach.from) / step);
    return Array.from({ length: count + 1 }, (_, i) => {
      const radius = reach.from + ((reach.to - reach.from) * i) / count;
      return { x: radius * cos!, y: radius * sin! };
    });
  });
  for (const index of byRoom(spokes.map(({ direction }) => direction))) {
    const { direction, words } = spokes[index]!;
    const wide = wordsWide(words, letter);
    const turn = direction * RADIANS_PER_DEGREE;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const flipped = cos < 0;
    const places = Array.from({ length: INWARDS }, (_, i) => reach.to - i * NEXT * letter).flatMap(
      (outer) => ([1, -1] as const).map((side): Beside => ({ outer, side })),
    );
    // A spoke between two near ones has its words where all three have ended.
    if (reach.from - letter - wide > reach.hole)
      places.push({ outer: reach.from - letter, side: 0 });
    /** Whether a point lies on the words, with half a letter of room round them. */
    const on = ({ outer, side }: Beside, { x, y }: { x: number; y: number }): boolean => {
      const along = x * cos + y * sin;
      const aside = (y * cos - x * sin) * (flipped ? -1 : 1) - side * letter;
      return (
        along > outer - wide - letter / 2 &&
        along < outer + letter / 2 &&
        Math.abs(aside) < 0.75 * letter
      );
    };
    const others = [...done, ...lines.flatMap((line, i) => (i === index ? [] : line))];
    const best =
      places.find((place) => !others.some((point) => on(place, point))) ?? places[index % 2]!;
    // What it takes, as points a third of a letter apart.
    const up = best.side * (flipped ? -1 : 1);
    for (let along = best.outer - wide; along <= best.outer; along += step) {
      for (const part of [-0.5, 0, 0.5]) {
        const aside = (part + up) * letter;
        done.push({ x: along * cos - aside * sin, y: along * sin + aside * cos });
      }
    }
    out[index] = best;
  }
  return out;
}

/** Which comes first: what has the most room to one side of it. */
function byRoom(places: readonly number[]): readonly number[] {
  const roomOf = (place: number, index: number): number => {
    const away = places.flatMap((other, i) => (i === index ? [] : [other - place]));
    const after = Math.min(Infinity, ...away.filter((by) => by > 0));
    const before = Math.min(Infinity, ...away.filter((by) => by < 0).map((by) => -by));
    return Math.max(after, before);
  };
  const rooms = places.map(roomOf);
  return [...places.keys()].sort((a, b) => rooms[b]! - rooms[a]! || a - b);
}

interface OnStrip {
  readonly x: number;
  readonly words: string;
}

/** From a line to the words beside it, mm. */
const GAP = 0.6;

interface OnTape {
  readonly left: number;
  /** Of the given rows; the foot of the words, mm above that of the strip. */
  readonly foot: number;
  /** Whether it stands across lines, which then end above it. */
  readonly across: boolean;
}

/**
 * Where the words of each upright line of a strip stand: right or left of it in one of the rows, on no
 * other line and no other words, or in the first row across the foot of its own line, which then ends
 * above them, as others there do.
 *
 * @param strip `rows` are the feet of rows, mm above that of the strip.
 */
export function clearOnTape(
  lines: readonly OnStrip[],
  strip: { readonly long: number; readonly height: number; readonly rows: readonly number[] },
): readonly (OnTape | undefined)[] {
  const done: (OnTape & { readonly right: number })[] = [];
  const out = new Array<OnTape | undefined>(lines.length);
  for (const index of byRoom(lines.map(({ x }) => x))) {
    const { x, words } = lines[index]!;
    const wide = wordsWide(words, strip.height);
    const places = strip.rows.flatMap((foot) =>
      [x + GAP, x - GAP - wide].map((left): OnTape => ({ left, foot, across: false })),
    );
    places.push(
      ...strip.rows.slice(0, 1).map((foot) => ({ left: x - wide / 2, foot, across: true })),
    );
    const best = places.find(
      ({ left, foot, across }) =>
        left > GAP / 2 &&
        left + wide < strip.long - GAP / 2 &&
        (across ||
          lines.every((line) => line.x < left - GAP / 2 || line.x > left + wide + GAP / 2)) &&
        done.every(
          (other) => other.foot !== foot || other.right < left || other.left > left + wide,
        ),
    );
    if (!best) continue;
    out[index] = best;
    done.push({ ...best, right: best.left + wide });
  }
  return out;
}
