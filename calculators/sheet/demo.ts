import { DEMO_CYLINDERS, DEMO_RATIO, demoEngine } from '../demo/engine.ts';
import { demoBarrel } from '../demo/barrel.ts';
import { demoCam } from '../demo/cam.ts';
import { demoCoil } from '../demo/coil.ts';
import { demoCrankcase } from '../demo/crankcase.ts';
import { demoFloat } from '../demo/float.ts';
import { demoHead } from '../demo/head.ts';
import { demoJets } from '../demo/jets.ts';
import { demoPlate } from '../demo/plate.ts';
import { demoSlides } from '../demo/slides.ts';
import { demoTiming } from '../demo/timing.ts';
import { type Moment } from './box-places.ts';
import { setDone, setEntry } from './set-entry.ts';
import { newEngine, type Engine } from './model.ts';
import type { StepId } from './steps.ts';

const each = (readings: readonly number[]): number[] => readings.slice(0, DEMO_CYLINDERS);

/**
 * The job as it went, in the order in which it was done; the gap was reset after the timing.
 * Readings scatter as those of a bench do.
 */
const run: readonly (readonly [on: string, StepId, Moment, readonly number[]])[] = [
  ['2026-02-07', 'top', 'found', [0.5, 1.25, 0.75]],
  ['2026-02-07', 'top', 'left', [0, -0.25, -0.25]],
  ['2026-02-07', 'run-out', 'found', [0.02, 0.03, 0.02]],
  ['2026-02-07', 'end-float', 'found', [0.22]],
  ['2026-02-07', 'rod-play', 'found', [0.35, 0.4, 0.3]],
  ['2026-02-14', 'plate', 'found', [120.4, 120.1, 119.9]],
  ['2026-02-14', 'insulation', 'found', [200, 150, 0.4]],
  ['2026-02-14', 'insulation', 'left', [200, 150, 120]],
  ['2026-02-14', 'plate-fit', 'found', [0.04]],
  ['2026-02-14', 'condenser', 'found', [0.22, 0.21, 0.23]],
  ['2026-02-14', 'coil', 'found', [4.05, 3.96, 4.02]],
  ['2026-02-21', 'gap', 'found', [0.39, 0.31, 0.36]],
  ['2026-02-21', 'timing', 'found', each(demoTiming.fired)],
  ['2026-02-22', 'timing', 'left', [2.24, 2.2, 2.24]],
  ['2026-02-28', 'gap', 'left', [0.34, 0.35, 0.36]],
  ['2026-03-07', 'strip', 'found', [1.25, 1.5, 0.75]],
  ['2026-03-07', 'pilot', 'found', [0.4, 0.4, 0.4]],
  ['2026-03-07', 'float', 'found', each(demoFloat.found)],
  ['2026-03-07', 'float', 'left', [24.2, 23.8, 23.8]],
  ['2026-03-07', 'jets', 'found', [demoJets.main, demoJets.main, demoJets.main]],
  ['2026-03-07', 'cutaway', 'found', [2, 2, 2]],
  ['2026-03-14', 'cables', 'found', each(demoSlides.play)],
  ['2026-03-14', 'slides', 'found', each(demoSlides.found)],
  ['2026-03-15', 'squish', 'found', [1.42, 1.53, 1.36]],
  ['2026-03-15', 'clip', 'found', [demoJets.clip, demoJets.clip, demoJets.clip]],
];

const figures = {
  cylinders: DEMO_CYLINDERS,
  bore: demoBarrel.bore,
  ...demoEngine,
  reeds: 0,
  condensers: DEMO_CYLINDERS,
  'fed-coils': DEMO_CYLINDERS,
  lobes: demoCam.lobes,
  'speed-ratio': demoCam.speedRatio,
  lift: demoCam.lift,
  rise: demoCam.rise,
  top: demoCam.top,
  gap: demoCam.gap,
  'gap-tolerance': 0.03,
  insulation: 1,
  'dwell-angle': demoCam.dwell,
  target: demoTiming.travel,
  'timing-tolerance': demoTiming.tolerance,
  'top-tolerance': 0.25,
  'slot-radius': demoPlate.slotRadius,
  rotor: demoTiming.rotor,
  'plate-outside': demoPlate.outside,
  'plate-bore': demoPlate.bore,
  'set-2': 120,
  'set-3': 240,
  'plate-tolerance': 0.8,
  'plate-run-out': 0.05,
  earth: 0,
  volts: demoCoil.volts,
  resistance: demoCoil.resistance,
  'resistance-tolerance': 0.3,
  inductance: demoCoil.inductance,
  'feed-drop': 0.5,
  condenser: demoCoil.condenser,
  'condenser-tolerance': 0.05,
  'plug-gap': 0.6,
  'plug-gap-tolerance': 0.05,
  height: demoFloat.height,
  'height-tolerance': demoFloat.tolerance,
  seat: demoFloat.seat,
  head: demoFloat.head,
  jet: demoJets.main,
  'jet-tolerance': 0.015,
  'pilot-jet': demoJets.pilot,
  'pilot-tolerance': 0.01,
  'needle-jet': demoJets.needleJet,
  'needle-diameter': demoJets.needle,
  taper: demoJets.taper,
  'clip-pitch': demoJets.clipPitch,
  clip: demoJets.clip,
  cutaway: demoSlides.cutaway,
  'cutaway-tolerance': 0.25,
  'least-play': demoSlides.leastPlay,
  thread: demoSlides.thread,
  'slide-tolerance': 0.1,
  'shaft-run-out': demoCrankcase.runOut,
  'end-float': demoCrankcase.endFloat,
  'end-float-tolerance': demoCrankcase.endFloatWithin,
  'side-play': demoCrankcase.sidePlay,
  'side-play-tolerance': demoCrankcase.sidePlayWithin,
  deck: demoBarrel.deck,
  squish: demoHead.squish,
  'squish-tolerance': 0.15,
  'head-volume': demoHead.volume,
  'head-volume-tolerance': 0.3,
  'exhaust-opens': demoBarrel.exhaustOpens,
  'exhaust-tolerance': 1,
  'inlet-opens': demoBarrel.inletOpens,
  'inlet-tolerance': 1,
  'leak-drop': 3,
  'compression-tolerance': 80,
  ratio: DEMO_RATIO,
} as const;

/** An invented engine, part way through the job, the same every time. */
export function demoSheet(): Engine {
  const blank: Engine = {
    ...newEngine('demo', 'Demo: club triple'),
    invented: true,
    notes:
      'Invented: no such engine exists. A club’s three-cylinder air-cooled engine built from mixed parts, without a manual.',
    firingOrder: [1, 2, 3],
    figures,
  };
  return run.reduce(
    (engine, [on, step, moment, readings]) =>
      readings.reduce((so, reading, i) => setEntry(so, step, moment, i, reading, { on }), engine),
    setDone(blank, 'measure', true, '2026-01-31'),
  );
}
