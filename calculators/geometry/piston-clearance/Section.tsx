import { showFixed } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { hundredth } from '../../maths/numeric/steps.ts';

interface Props {
  /** mm */
  readonly bore: number;
  readonly cold: number;
  readonly hot: number;
  readonly lengths: LengthDisplay;
}

const WIDTH = 340;
const HEIGHT = 296;
/** The bore to scale: its middle, its width and its ends, in user units. */
const MIDDLE = 84;
const BORE = 124;
const TOP = 18;
const FOOT = 250;
const WALL = 16;
const CROWN = 62;
const SKIRT = 118;
/** The glasses: where, how large, and how far a gap may reach in them. */
const GLASS = { x: 250, radius: 52, cold: 62, hot: 192 } as const;
const GAP = 56;
const TIMES = [5000, 2000, 1000, 500, 200, 100, 50, 20, 10, 5, 2] as const;

interface GlassProps {
  readonly y: number;
  /** User units; negative where the parts overlap. */
  readonly gap: number;
  readonly words: string;
}

/** The wall on the right and the skirt on the left, with what is between. */
function Glass({ y, gap, words }: GlassProps) {
  const { x, radius } = GLASS;
  const half = radius * 0.62;
  const right = hundredth(x + GAP / 2);
  const skirt = hundredth(right - gap);
  const left = x - radius * 0.76;
  return (
    <g aria-hidden="true">
      <circle class="glass" cx={x} cy={y} r={radius} />
      <rect
        class="part part-moving skirt-enlarged"
        x={left}
        y={y - half}
        width={hundredth(Math.max(4, Math.min(skirt, right) - left))}
        height={2 * half}
      />
      <rect
        class="casting wall-enlarged"
        x={right}
        y={y - half}
        width={hundredth(x + radius * 0.76 - right)}
        height={2 * half}
      />
      {gap < 0 ? (
        <rect
          class="band-stop jam"
          x={right}
          y={y - half}
          width={hundredth(Math.min(-gap, x + radius * 0.76 - right))}
          height={2 * half}
        />
      ) : null}
      <text class="dimension-text" x={x} y={y + radius + 16} text-anchor="middle">
        {words}
      </text>
    </g>
  );
}

/** Piston in its bore, to scale; the clearance beside it enlarged, all on one side. */
export function Section({ bore, cold, hot, lengths }: Props) {
  const most = Math.max(Math.abs(cold), Math.abs(hot), 1e-4);
  const scale = BORE / bore;
  const times = TIMES.find((each) => most * scale * each <= GAP) ?? 1;
  const enlarged = (mm: number): number => Math.max(-GAP / 2, Math.min(GAP, mm * scale * times));
  // Where whole millimetres are wrong, thousandths say nothing.
  const length = (mm: number): string => showFixed(mm, 'mm', mm > 10 ? 0 : mm > 1 ? 1 : 3, lengths);
  const said = (name: string, mm: number): string =>
    mm < 0 ? `${name} jams by ${length(-mm)}` : `${name}: ${length(mm)}`;
  const left = MIDDLE - BORE / 2;
  const right = MIDDLE + BORE / 2;
  const skirt = TOP + 30;
  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Piston in its bore, to scale. ${said('Clearance cold', cold)}; ${said('hot', hot)}.`}
    >
      <rect class="casting" x={left - WALL} y={TOP} width={WALL} height={FOOT - TOP} />
      <rect class="casting" x={right} y={TOP} width={WALL} height={FOOT - TOP} />
      <rect class="part part-moving piston" x={left} y={skirt} width={BORE} height={SKIRT + 12} />
      <path class="ring-line" d={`M${left} ${skirt + 16}h${BORE}M${left} ${skirt + 30}h${BORE}`} />
      <circle class="part" cx={MIDDLE} cy={skirt + CROWN} r={15} />
      <path class="centre-line" d={`M${MIDDLE} ${TOP - 8}V${FOOT + 8}`} />
      <path
        class="leader"
        d={`M${right} ${skirt + 96}L${GLASS.x - GLASS.radius + 3} ${GLASS.cold + 14}M${right} ${skirt + 96}L${GLASS.x - GLASS.radius + 3} ${GLASS.hot - 14}`}
      />
      <circle class="joint" cx={right} cy={skirt + 96} r={3} />
      <Glass y={GLASS.cold} gap={enlarged(cold)} words={said('cold', cold)} />
      <Glass y={GLASS.hot} gap={enlarged(hot)} words={said('hot', hot)} />
      <text x={8} y={HEIGHT - 8}>
        {`to scale; glasses × ${String(times)}, the gap all on one side`}
      </text>
    </svg>
  );
}
