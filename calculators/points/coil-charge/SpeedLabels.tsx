import { hundredth } from '../../maths/numeric/steps.ts';
import { inRow, type RowLabel } from '../../picture/common/labels.ts';
import { PLOT_WIDTH } from '../../picture/common/plot.tsx';
import { textWidth } from '../../picture/common/text-width.ts';

/** Room above the field for both rows, user units. */
export const SPEED_ROWS = 36;
const UPPER = 16;
/** From the edge of the sheet, between two speeds, and from one to the line of another. */
const EDGE = 4;
const BETWEEN = 8;
const CLEAR = 3;

interface Placed extends RowLabel {
  /** The place of its line. */
  readonly line: number;
}

const halfOf = (words: string): number => textWidth(words) / 2;

/**
 * Speeds over their lines: in the lower row as many as have room, the quickest first, and in the upper
 * row the others, each with its line drawn up to it. Those that still touch are joined.
 *
 * @param from Left of which none may stand.
 */
function speedRows(
  speeds: readonly RowLabel[],
  from: number,
): {
  readonly lower: readonly RowLabel[];
  readonly upper: readonly RowLabel[];
  /** Places of lines that go on up to the upper row. */
  readonly up: readonly number[];
} {
  const within = ({ at, words }: RowLabel): Placed => ({
    words,
    at: Math.max(from + halfOf(words), Math.min(PLOT_WIDTH - EDGE - halfOf(words), at)),
    line: at,
  });
  const lower: Placed[] = [];
  const others: Placed[] = [];
  for (const each of [...speeds].sort((a, b) => a.at - b.at).map(within)) {
    const free = lower.every(
      (other) => each.at - other.at >= halfOf(each.words) + halfOf(other.words) + BETWEEN,
    );
    (free ? lower : others).push(each);
  }
  const up = others
    .map(({ line }) => line)
    .filter((line) => lower.every(({ at, words }) => Math.abs(at - line) > halfOf(words) + CLEAR));
  return { lower, upper: inRow(others, from, PLOT_WIDTH - EDGE), up };
}

interface Props {
  readonly speeds: readonly RowLabel[];
  /** Of the field. */
  readonly left: number;
  readonly top: number;
}

export function SpeedLabels({ speeds, left, top }: Props) {
  const { lower, upper, up } = speedRows(speeds, left);
  const row = (labels: readonly RowLabel[], y: number) =>
    labels.map(({ at, words }) => (
      <text key={words} x={hundredth(at)} y={y} text-anchor="middle">
        {words}
      </text>
    ));
  return (
    <>
      <path class="drop" d={up.map((x) => `M${hundredth(x)} ${top}V${top - UPPER - 2}`).join('')} />
      {row(lower, top - 5)}
      {row(upper, top - 5 - UPPER)}
    </>
  );
}
