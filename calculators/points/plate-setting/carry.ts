import type { Carried } from '../../frame/types.ts';
import { positionAt } from '../../maths/plate/plate-setting.ts';
import { sliderCrank } from '../../position/engine-inputs.ts';
import { timingsOf, type Values } from './compute.ts';

/** The timing wanted and those found, as travel or as degrees. */
export function toldAs(option: string, v: Values): readonly Carried[] {
  const engine = sliderCrank(v);
  const { target, found } = timingsOf(v);
  if (option === 'angle') {
    return [
      { from: 'target', to: { 'target-angle': target } },
      ...found.map((angle, i) => ({
        from: `fired-${i + 1}`,
        to: { [`fired-angle-${i + 1}`]: angle },
      })),
    ];
  }
  return [
    { from: 'target-angle', to: { target: positionAt(engine, target) } },
    ...found.map((angle, i) => ({
      from: `fired-angle-${i + 1}`,
      to: { [`fired-${i + 1}`]: positionAt(engine, angle) },
    })),
  ];
}
