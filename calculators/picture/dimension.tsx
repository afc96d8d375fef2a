import { hundredth } from '../maths/numeric/steps.ts';
import { arrowHead, LETTERING } from './label.tsx';

type Place = readonly [x: number, y: number];

interface Props {
  /** The two places whose distance is told, user units. */
  readonly from: Place;
  readonly to: Place;
  readonly along: 'x' | 'y';
  /** Where the dimension line lies: its y if it runs along x, its x if it runs along y. */
  readonly line: number;
  /** Nothing where there is no room: a label then stands beside it. */
  readonly words: string;
  /** On which side of an upright dimension line its words stand. */
  readonly side?: 'left' | 'right';
}

const GAP = 3;
const BEYOND = 4;
/** Shorter than two arrow heads and some line, a dimension has its arrows outside. */
const TIGHT = 22;

/**
 * A dimension (ISO 129-1): extension lines from the two places, a line between arrows, the words
 * above it, or beside one that stands upright.
 */
export function Dimension({ from, to, along, line, words, side = 'right' }: Props) {
  const flat = along === 'x';
  const [a, b] = flat ? [from[0], to[0]] : [from[1], to[1]];
  const on = (place: number): Place => (flat ? [place, line] : [line, place]);
  const write = ([x, y]: Place): string => `${hundredth(x)} ${hundredth(y)}`;
  const [start, end] = [on(a), on(b)];
  const extension = (place: Place, tip: Place): string => {
    const [base, far] = flat ? [place[1], tip[1]] : [place[0], tip[0]];
    const away = Math.sign(far - base);
    if (away === 0) return '';
    const begin: Place = flat ? [place[0], base + away * GAP] : [base + away * GAP, place[1]];
    const finish: Place = flat ? [tip[0], far + away * BEYOND] : [far + away * BEYOND, tip[1]];
    return `M${write(begin)}L${write(finish)}`;
  };
  const tight = Math.abs(b - a) < TIGHT;
  const out = tight ? 14 * Math.sign(b - a) : 0;
  const outer = [on(a - out), on(b + out)] as const;
  const middle = (a + b) / 2;
  const text: Place = flat
    ? [middle, line - 4]
    : [line + (side === 'right' ? 6 : -6), middle + 0.32 * LETTERING];
  return (
    <g>
      <path
        class="size-line"
        d={`${extension(from, start)}${extension(to, end)}M${write(outer[0])}L${write(outer[1])}`}
      />
      <path
        class="size-head"
        d={`${arrowHead(tight ? outer[0] : end, start)}${arrowHead(tight ? outer[1] : start, end)}`}
      />
      {words === '' ? null : (
        <text
          x={hundredth(text[0])}
          y={hundredth(text[1])}
          text-anchor={flat ? 'middle' : side === 'right' ? 'start' : 'end'}
        >
          {words}
        </text>
      )}
    </g>
  );
}
