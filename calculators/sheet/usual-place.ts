import { timingAt } from '../maths/plate/plate-setting.ts';
import { unusualTiming } from '../plate/usual-timing.ts';
import { sliderCrankOf } from './geometry.ts';
import { attempted } from './judge-words.ts';
import type { Engine } from './model.ts';

/**
 * What speaks against a place of the piston as a timing, by the stroke and rod in the sheet: where no such
 * engine is set. Nothing without them, and of a place that the piston does not come to.
 *
 * @param before mm before the top.
 */
export function unusualPlace(engine: Engine, before: number): string | undefined {
  const crank = sliderCrankOf(engine);
  const angle = crank && attempted(() => timingAt(crank, before));
  const said = typeof angle === 'number' ? unusualTiming(angle) : undefined;
  return (
    said &&
    `On the stroke and rod in the sheet that is ${said} Check the figure, its unit, and stroke and rod.`
  );
}
