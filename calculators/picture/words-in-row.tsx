import { inRow, type RowLabel } from './common/labels.ts';

interface Props {
  readonly labels: readonly RowLabel[];
  /** Between which the words stay, and on which line. */
  readonly from: number;
  readonly to: number;
  readonly y: number;
}

/** Words beside one another over a field, each as near its place as the others let it. */
export const WordsInRow = ({ labels, from, to, y }: Props) =>
  inRow(labels, from, to).map(({ at, words }) => (
    <text key={words} x={at} y={y} text-anchor="middle">
      {words}
    </text>
  ));
