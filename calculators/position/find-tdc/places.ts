import { hundredth } from '../../maths/numeric/steps.ts';

/** Where the parts of the picture stand, in user units; angles clockwise from straight up. */
export const WIDTH = 360;
export const HEIGHT = 420;
export const CENTRE = { x: 148, y: 292 } as const;
export const RIM = 100;
/** The pointer stands to the right of the disc, fixed to the case. */
export const POINTER = 90;
/** Radius of the marks of both readings: well outside of the crank pin, so that a thumb tells them apart. */
export const READINGS = 76;
/** The crank pin, and a connecting rod in proportion to it. */
export const PIN = 29;
export const ROD = 98;

export const place = (angle: number, radius: number): readonly [x: number, y: number] => {
  const turn = (angle * Math.PI) / 180;
  return [
    hundredth(CENTRE.x + radius * Math.sin(turn)),
    hundredth(CENTRE.y - radius * Math.cos(turn)),
  ];
};

export const angleAt = (x: number, y: number): number =>
  (Math.atan2(x - CENTRE.x, CENTRE.y - y) * 180) / Math.PI;

/** Height of the gudgeon pin on the sheet with the crank so many degrees after the top. */
export function gudgeonAt(crank: number): number {
  const turn = (crank * Math.PI) / 180;
  const up = PIN * Math.cos(turn) + Math.sqrt(ROD ** 2 - (PIN * Math.sin(turn)) ** 2);
  return hundredth(CENTRE.y - up);
}
