import { point, type Point } from '@flatten-js/core';
import type { BreakerCam } from '../../../calculators/maths/ignition/breaker-cam.ts';

/** A point turned anticlockwise about another by a share of a whole turn. */
const turned = (start: Point, turns: number, centre: Point): Point =>
  start.rotate(2 * Math.PI * turns, centre);

/**
 * Lift in mm a share `u` of the way up a flank of a whole lift of 1 mm, drawn with circles as the
 * names say. Harmonic: the height of a point that goes half round a circle as high as the lift.
 * Cycloidal: the height of a point of a circle that rolls once round up a line as long as the lift.
 */
const drawn: Readonly<Record<BreakerCam['profile'], (u: number) => number>> = {
  harmonic: (u) => turned(point(0, 0), u / 2, point(0, 0.5)).y,
  cycloidal: (u) => turned(point(0, u), u, point(1 / (2 * Math.PI), u)).y,
  uniform: (u) => u,
};

/** Lift in mm, `angle` cam degrees up a flank. */
export const drawnLift = ({ profile, lift, rise }: BreakerCam, angle: number): number =>
  lift * drawn[profile](angle / rise);

/** Cam degrees before the middle of a lobe at which contacts open that stand `gap` mm apart on it. */
export function drawnOpening(cam: BreakerCam, gap: number): number {
  let [foot, head] = [0, cam.rise];
  for (let i = 0; i < 60; i += 1) {
    const middle = (foot + head) / 2;
    if (drawnLift(cam, middle) < cam.lift - gap) foot = middle;
    else head = middle;
  }
  return cam.top / 2 + cam.rise - foot;
}

/** Cam degrees over which the points are shut, for one lobe. */
export const drawnDwell = (cam: BreakerCam, gap: number): number =>
  360 / cam.lobes - 2 * drawnOpening(cam, gap);
