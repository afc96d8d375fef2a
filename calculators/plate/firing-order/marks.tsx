import { hundredth } from '../../maths/numeric/steps.ts';

/** From degrees clockwise of upright, and a radius, to a place on the sheet. */
export const polar =
  (cx: number, cy: number) =>
  (degrees: number, radius: number): { readonly x: number; readonly y: number } => {
    const radians = (degrees * Math.PI) / 180;
    return {
      x: hundredth(cx + radius * Math.sin(radians)),
      y: hundredth(cy - radius * Math.cos(radians)),
    };
  };

interface BadgeProps {
  readonly x: number;
  readonly y: number;
  readonly number: number;
}

export const BADGE = 9;

/** The number of a crank pin. */
export const PinBadge = ({ x, y, number }: BadgeProps) => (
  <g aria-hidden="true">
    <circle class="glass" cx={x} cy={y} r={BADGE} />
    <text x={x} y={y} dy="0.32em" text-anchor="middle">
      {String(number)}
    </text>
  </g>
);

/** The number of a cylinder. */
export const CylinderBadge = ({ x, y, number }: BadgeProps) => (
  <g aria-hidden="true">
    <rect class="hollow" x={x - BADGE} y={y - BADGE} width={2 * BADGE} height={2 * BADGE} />
    <text x={x} y={y} dy="0.32em" text-anchor="middle">
      {String(number)}
    </text>
  </g>
);
