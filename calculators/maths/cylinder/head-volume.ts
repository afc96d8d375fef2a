/**
 * The volume above the piston at top dead centre, from what a burette has let in and from what can be
 * measured with a rule.
 */
import { assertDiameter, cylinderVolume } from './cylinder-volume.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/**
 * What the burette let in, less what stands in the plug hole above the place where the plug's shell
 * ends. With a plug fitted and the head filled through a plate, nothing stands there: allowance 0.
 *
 * @param liquid Liquid let in, cc, more than 0.
 * @param plugHole Allowance for the plug hole, cc, 0 or more and less than `liquid`.
 * @returns cc.
 * @throws MathsError `liquid` or `plug-hole`.
 */
export function buretteVolume(liquid: number, plugHole: number): number {
  if (!(liquid > 0 && liquid < Infinity)) {
    throw new MathsError(
      'liquid',
      ['liquid'],
      `The burette must have let in more than 0 cc, not ${sayNumber(liquid)} cc. Take the reading after filling less the reading before.`,
    );
  }
  if (!(plugHole >= 0 && plugHole < liquid)) {
    throw new MathsError(
      'plug-hole',
      ['plugHole', 'liquid'],
      `The allowance for the plug hole must be at least 0 and less than the ${sayNumber(liquid)} cc let in, not ${sayNumber(plugHole)} cc. A 14 mm hole holds 1.4 to 2.8 cc, by its depth; enter 0 if the plug was in place.`,
    );
  }
  return liquid - plugHole;
}

/**
 * What a plug hole holds, cc: a round hole of the thread's pitch diameter, which is the thread
 * diameter less 0.6495 of its pitch. Pitch diameter of the ISO metric thread: ISO 724.
 *
 * @param threadDiameter Nominal thread diameter, mm, such as 14.
 * @param pitch Thread pitch, mm, such as 1.25.
 * @param depth Depth that liquid filled, mm, 0 or more: as a rule the plug's reach.
 */
export function plugHoleVolume(threadDiameter: number, pitch: number, depth: number): number {
  assertDiameter('threadDiameter', 'plug thread', threadDiameter);
  if (!(pitch >= 0 && pitch < threadDiameter)) {
    throw new MathsError(
      'thread-pitch',
      ['pitch'],
      `The pitch of the plug’s thread must be at least 0 mm and less than the thread’s ${sayNumber(threadDiameter)} mm, not ${sayNumber(pitch)} mm. Plugs of 14 mm have 1.25 mm.`,
    );
  }
  if (!(depth >= 0 && depth < Infinity)) {
    throw new MathsError(
      'plug-depth',
      ['depth'],
      `The depth of the plug hole must be 0 mm or more, not ${sayNumber(depth)} mm. Measure the plug from its seat to the end of the thread.`,
    );
  }
  const pitchDiameter = threadDiameter - (3 * Math.sqrt(3) * pitch) / 8;
  return cylinderVolume(pitchDiameter, depth);
}
