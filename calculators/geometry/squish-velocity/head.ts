import type { SquishHead } from '../../maths/cylinder/squish-velocity.ts';

interface HeadValues {
  readonly bore: number;
  readonly bowl: number;
  readonly squish: number;
  readonly clearance: number;
}

/** The inputs as the maths package takes them. */
export const headOf = ({ bore, bowl, squish, clearance }: HeadValues): SquishHead => ({
  bore,
  bowlDiameter: bowl,
  squish,
  clearanceVolume: clearance,
});
