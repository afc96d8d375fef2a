import { DEMO_RATIO } from '../../calculators/demo/engine.ts';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const ACROSS = 5;
const PART = 26;
const LEFT = 44;
const TOP = 34;
const ROWS = DEMO_RATIO / ACROSS;
/** The oil stands apart, to the right of the petrol. */
const OIL = 236;
const FOOT = TOP + ROWS * PART;

/** A ratio as parts: so many of petrol to one of oil. */
export default function OnePartOfOil() {
  const parts = Array.from({ length: DEMO_RATIO }, (_, part) => part);
  return (
    <LineDrawing
      id="parts"
      title={`${DEMO_RATIO} parts of petrol to one of oil`}
      description={`${DEMO_RATIO} equal squares are the petrol, and one more of the same size beside them is the oil. The ratio counts the oil against the petrol. In the mix that comes of it one part in ${DEMO_RATIO + 1} is oil.`}
      height={214}
    >
      {parts.map((part) => (
        <rect
          key={part}
          class="part petrol"
          x={LEFT + (part % ACROSS) * PART}
          y={TOP + Math.floor(part / ACROSS) * PART}
          width={PART}
          height={PART}
        />
      ))}
      <rect class="joint oil" x={OIL} y={FOOT - PART} width={PART} height={PART} />
      <text class="axis-text" x={LEFT} y={20}>
        petrol: {DEMO_RATIO} parts
      </text>
      <text class="axis-text" x={OIL} y={FOOT - PART - 14}>
        oil: 1 part
      </text>
      <Dimension
        from={[LEFT, FOOT]}
        to={[OIL + PART, FOOT]}
        along="x"
        line={FOOT + 32}
        words={`the mix: ${DEMO_RATIO + 1} parts`}
      />
      <Label words="and" at={[202, FOOT - PART / 2]} anchor="middle" />
    </LineDrawing>
  );
}
