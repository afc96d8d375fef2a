import { submergedDepth } from '../../calculators/maths/carburettor/float-level.ts';
import type { Float, FloatBench } from '../../calculators/practice/float.ts';

interface Props {
  readonly float: Float;
  readonly bench: FloatBench;
  readonly gauge: number | undefined;
  readonly tube: number | undefined;
}

const WIDTH = 360;
const HEIGHT = 250;
/** Pixels for a mm. */
const SCALE = 3.6;
const FACE = 62;
const PIVOT = 84;

/** The chamber in section, upright as it runs: float, tang and needle, and the fuel once it is filled. */
export function FloatDrawing({ float, bench, gauge, tube }: Props) {
  const { lever } = float.card;
  const across = Math.sqrt(lever.floatArea) * SCALE;
  const middle = PIVOT + lever.pivotToFloat * SCALE;
  const left = Math.round(middle - across / 2);
  /** The far face: where the gauge has it, or as deep in the fuel as the card's float swims. */
  const far = gauge ?? (tube ?? 0) + submergedDepth(lever, float.card.feed);
  const lower = FACE + far * SCALE;
  const top = Math.round(lower - lever.floatDepth * SCALE);
  const floor = HEIGHT - 22;
  const level = tube === undefined ? undefined : Math.round(FACE + tube * SCALE);
  const needle = PIVOT + lever.pivotToNeedle * SCALE;
  const arm = Math.round(top + 14);
  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={
        level === undefined
          ? 'The float chamber in section, empty, with the gauge on the float'
          : 'The float chamber in section, filled, with the sight tube beside it'
      }
    >
      {level !== undefined && (
        <>
          <path class="fuel" d={`M58 ${level}H290V${floor}H58z`} />
          <path class="fuel" d={`M318 ${level}h14V${floor}h-14z`} />
        </>
      )}
      <path class="bowl-wall" d={`M56 ${FACE}V${floor}H292V${FACE}`} />
      <path class="bowl-wall" d={`M292 ${floor - 8}h26V34M332 34V${floor + 6}H286`} />
      <path class="face-line" d={`M20 ${FACE}H346`} />
      <path
        class="part part-moving"
        d={`M${left} ${top}h${across}V${Math.round(lower)}h${-across}z`}
      />
      <path class="part-rod arm" d={`M${PIVOT} ${FACE + 14}L${middle} ${arm}`} />
      <circle class="part" cx={PIVOT} cy={FACE + 14} r={5} />
      <path class="part" d={`M${needle - 4} ${FACE - 24}h8v26l-4 8l-4 -8z`} />
      {level !== undefined && <path class="fuel-line" d={`M58 ${level}H290M318 ${level}h14`} />}
      {gauge !== undefined && (
        <path
          class="dimension"
          d={`M${left - 10} ${FACE}V${Math.round(lower)}M${left - 16} ${Math.round(lower)}h20`}
        />
      )}
      <text x={8} y={FACE - 8}>
        gasket face
      </text>
      <text x={8} y={HEIGHT - 6}>
        {bench.filled ? 'full' : 'empty; drawn upright'}
      </text>
      <text x={346} y={24} text-anchor="end">
        tube
      </text>
    </svg>
  );
}
