import { EARLIEST_SPARK } from '../maths/limits/earliest-spark.ts';
import { timingAt } from '../maths/plate/plate-setting.ts';
import { sliderCrankOf } from './geometry.ts';
import { attempted } from './judge-words.ts';
import type { Engine } from './model.ts';
import { steps, type StepId } from './steps.ts';

/** A plate or a set reaches no further than this in its slots, crank degrees. */
const SLOT_REACH = 15;

/** Whether no slot brings a timing from one angle to another: then the reading is at fault, and not the setting. */
export const isBeyondSlots = (angle: number, wanted: number): boolean =>
  angle > EARLIEST_SPARK || Math.abs(angle - wanted) > SLOT_REACH;

/** Whether a reading of a timing is so far off, or no place of the piston at all, that nothing was turned to it. */
export function isNoTiming(engine: Engine, id: StepId, value: number): boolean {
  const { target } = engine.figures;
  const geometry = sliderCrankOf(engine);
  if (steps[id].reading?.judging !== 'timing' || target === undefined || !geometry) return false;
  const wanted = attempted(() => timingAt(geometry, target));
  const angle = attempted(() => timingAt(geometry, value));
  if (typeof wanted === 'string') return false;
  return typeof angle === 'string' || isBeyondSlots(angle, wanted);
}
