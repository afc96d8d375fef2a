import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const TRUTH = 178;
const ROW = 92;
const SPAN = { left: 28, right: 328 } as const;
/** Six readings, in user units from their own mean, which is 0. */
const spread = [-46, -22, -9, 12, 24, 41] as const;
const mean = 0;

interface Row {
  readonly words: string;
  /** How much of the spread, and how far the mean of all lies from the truth, user units. */
  readonly share: number;
  readonly bias: number;
}

const rows: readonly Row[] = [
  { words: 'Scatter alone: their mean is near the truth', share: 1, bias: mean },
  { words: 'Bias alone: they agree, and all are wrong', share: 0.2, bias: 74 },
  { words: 'Both', share: 1, bias: 74 },
];

/** Six readings of one length, scattered, biased, and both. */
export default function ScatterAndBias() {
  return (
    <LineDrawing
      id="scatter-and-bias"
      title="Six readings of one length: scatter and bias"
      description="Three rules with six readings each, the truth marked by an upright line. First: the readings lie far apart on both sides of the truth, and their mean is near it. Second: they lie close together, all on one side of the truth. Third: they lie far apart and their mean is off the truth as well. Reading again shows the scatter and never the bias."
      height={3 * ROW + 8}
    >
      {rows.map(({ words, share, bias }, i) => {
        const line = 12 + i * ROW + 46;
        return (
          <g key={words}>
            <text class="axis-text" x={SPAN.left} y={line - 40}>
              {words}
            </text>
            <path
              class="axis-line"
              d={`M${SPAN.left} ${line}H${SPAN.right}${Array.from({ length: 11 }, (_, k) => `M${SPAN.left + 30 * k} ${line}v6`).join('')}`}
            />
            <path class="edge" d={`M${TRUTH} ${line - 24}V${line + 8}`} />
            {spread.map((off) => (
              <circle
                key={off}
                class="leader-end reading"
                cx={TRUTH + bias + share * off}
                cy={line - 10}
                r={3.5}
              />
            ))}
            {bias === 0 ? null : (
              <Dimension
                from={[TRUTH, line + 8]}
                to={[TRUTH + bias, line + 2]}
                along="x"
                line={line + 26}
                words="bias"
              />
            )}
          </g>
        );
      })}
      <Label words="the truth" at={[TRUTH + 34, 84]} to={[TRUTH, 66]} ends="arrow" />
    </LineDrawing>
  );
}
