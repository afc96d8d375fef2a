import { attempt } from '../../frame/attempt.ts';
import { absent, Absent, type ComputedOf, type ValuesOf } from '../../frame/types.ts';
import {
  crankDegreesPerGap,
  dwellAngle,
  dwellPercent,
  gapForDwell,
  openAngle,
  openingAt,
  opensBefore,
  type BreakerCam,
} from '../../maths/ignition/breaker-cam.ts';
import { angleAtGap, fitGapReadings, type GapLine } from '../../maths/ignition/gap-readings.ts';
import {
  assertLeverRatio,
  runUntilRetard,
  wornPoints,
  type HeelWear,
} from '../../maths/ignition/heel-wear.ts';
import { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;

/** The gap by which the timing is said to move: a twentieth of a millimetre. */
const TWENTIETH = 0.05;
const THOU = 0.0254;

export function camOf(v: Values): BreakerCam {
  const { lobes, lift, rise, top, profile } = v;
  return { lobes, speedRatio: v['speed-ratio'], lift, rise, top, profile };
}

/** The gap as given, or as needed for the dwell. */
export function gapOf(v: Values): number {
  return v.from === 'gap' ? v.gap : gapForDwell(camOf(v), v.dwell);
}

/** The gaps to which the curve can be drawn: some lift is left before the gap and after it. */
export function gapsOf({ lift }: Pick<BreakerCam, 'lift'>): { min: number; max: number } {
  const least = Math.min(0.01, lift / 4);
  return { min: least, max: Math.min(inputs.gap.max, lift - least) };
}

/** The line through the trials, or why there is none. */
export function trialLine(v: Values): GapLine | Absent {
  return attempt(() =>
    fitGapReadings(v['trial-gap'].map((gap, index) => ({ gap, angle: v['trial-angle'][index]! }))),
  );
}

function worn(v: Values, cam: BreakerCam, gap: number) {
  const wear: HeelWear = {
    leverRatio: v.lever,
    rate: v['wear-rate'] / (v['wear-per'] === 'hours' ? 100 : 1000),
  };
  const after = attempt(() => wornPoints(cam, gap, wear, v.running));
  return {
    'worn-gap': after instanceof Absent ? after : after.gap,
    'worn-retard': after instanceof Absent ? after : after.retard,
    'run-to-limit':
      wear.rate === 0
        ? absent(
            'Without wear of the heel the gap stays, so there is no running after which to reset it.',
          )
        : attempt(() => runUntilRetard(cam, gap, wear, v['retard-limit'])),
  };
}

function tried(v: Values, gap: number) {
  const line = trialLine(v);
  if (line instanceof Absent) {
    return {
      'trial-slope': line,
      'trial-range': line,
      'trial-lift': line,
      'trial-angle-at-gap': line,
    };
  }
  return {
    'trial-slope': TWENTIETH * line.degreesPerMillimetre,
    'trial-range':
      line.slopeRange === undefined
        ? absent(
            'Two trials always lie on a line, so their scatter says nothing of how well it is known: trust the ± of your readings, and try a third and a fourth gap.',
          )
        : TWENTIETH * line.slopeRange,
    'trial-lift': line.liftPerDegree,
    'trial-angle-at-gap': angleAtGap(line, gap),
  };
}

export function compute(v: Values): ComputedOf<typeof results> {
  const cam = camOf(v);
  const gap = gapOf(v);
  assertLeverRatio(v.lever);
  const perMillimetre = crankDegreesPerGap(cam, gap);
  return {
    'dwell-angle': dwellAngle(cam, gap),
    opens: opensBefore(cam, gap),
    'crank-degrees-per-gap': TWENTIETH * perMillimetre,
    'gap-set': gap,
    'dwell-percent': dwellPercent(cam, gap),
    'open-angle': openAngle(cam, gap),
    'crank-degrees-per-thou': THOU * perMillimetre,
    'heel-lift': cam.lift / v.lever,
    opening: openingAt(cam, gap, v.at),
    ...worn(v, cam, gap),
    ...tried(v, gap),
  };
}
