import { blameFields } from '../../frame/attempt.ts';
import { sliderCrank } from '../../position/engine-inputs.ts';
import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import { assertSpeedRatio } from '../../maths/ignition/breaker-cam.ts';
import {
  arcForTiming,
  plateDegrees,
  positionAt,
  setMoves,
  settlePlate,
  timingAt,
} from '../../maths/plate/plate-setting.ts';
import { assertGeometry } from '../../maths/crank/slider-crank.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

/** The error of one reading, told of that reading's own field. */
const atField = <T>(key: string, work: () => T): T => blameFields(() => [key], work);

/** Timing wanted and timings found, crank degrees before top dead centre. */
export function timingsOf(v: Values): { target: number; found: readonly number[] } {
  if (v.as === 'angle') return { target: v['target-angle'], found: v['fired-angle'] };
  const engine = sliderCrank(v);
  assertGeometry(engine);
  return {
    target: atField('target', () => timingAt(engine, v.target)),
    found: v.fired.map((before, index) =>
      atField(`fired-${String(index + 1)}`, () => timingAt(engine, before)),
    ),
  };
}

export function compute(v: Values): ComputedOf<typeof results> {
  const engine = sliderCrank(v);
  const ratio = v['speed-ratio'];
  assertSpeedRatio(ratio);
  const { target, found } = timingsOf(v);
  const setting = settlePlate(found, target);
  return {
    'plate-move': setting.move,
    worst: setting.worst,
    spread: setting.spread,
    'plate-turn': plateDegrees(setting.move, ratio),
    'plate-edge': arcForTiming(setting.move, v['plate-radius'], ratio),
    'as-found': found,
    'error-before': setting.errorsBefore,
    error: setting.errors,
    position: setting.errors.map((error) => positionAt(engine, target + error)),
    'set-move': setMoves(setting, v['slot-radius'], ratio),
  };
}
