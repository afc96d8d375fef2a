interface Props {
  /** Upper edge on the sheet, user units. */
  readonly top: number;
}

/** Height it takes, user units. */
export const TANG_HEIGHT = 104;

const NEEDLE = 92;
const ARM = 78;
const TANG = 50;
const ARROWS = 124;

const arrow = (from: number, to: number): string => {
  const back = from < to ? -6 : 6;
  return `M${ARROWS} ${from}V${to}M${ARROWS - 4} ${to + back}L${ARROWS} ${to}L${ARROWS + 4} ${to + back}`;
};

/** The tang between needle and arm, and what bending it does. Not to scale. */
export function TangDrawing({ top }: Props) {
  return (
    <g class="tang-drawing" transform={`translate(0 ${String(top)})`} aria-hidden="true">
      <path class="grid" d="M12 2H338" />
      <path class="part-rod arm" d={`M28 ${ARM}H252`} />
      <rect class="part part-moving" x={252} y={ARM - 4} width={78} height={24} />
      <text x={291} y={ARM + 8} dy="0.32em" text-anchor="middle">
        float
      </text>
      <path
        class="part part-moving"
        d={`M${NEEDLE} 10L${NEEDLE + 8} 24V${TANG}H${NEEDLE - 8}V24Z`}
      />
      <path class="tang" d={`M${NEEDLE - 26} ${ARM}L${NEEDLE - 16} ${TANG}H${NEEDLE + 18}`} />
      <circle class="part" cx={28} cy={ARM} r={6} />
      <path class="dimension" d={`${arrow(TANG - 6, 24)}${arrow(TANG + 6, ARM - 5)}`} />
      <text x={NEEDLE - 16} y={28} text-anchor="end">
        needle
      </text>
      <text x={NEEDLE + 2} y={TANG + 17} text-anchor="middle">
        tang
      </text>
      <text x={12} y={ARM + 20}>
        pivot
      </text>
      <text class="dimension-text" x={ARROWS + 12} y={34}>
        to the needle: fuel lower
      </text>
      <text class="dimension-text" x={ARROWS + 12} y={68}>
        away from it: fuel higher
      </text>
    </g>
  );
}
