import {
  DEMO_CYLINDERS,
  DEMO_RATIO,
  demoBarrel,
  demoCam,
  demoCoil,
  demoEngine,
  demoFloat,
  demoHead,
  demoJets,
  demoPlate,
  demoSlides,
  demoTiming,
} from '../demo-engine.ts';
import { setDone, setEntry, type Moment } from './edit.ts';
import { newEngine, type Engine } from './model.ts';
import type { StepId } from './steps.ts';

const each = (readings: readonly number[]): number[] => readings.slice(0, DEMO_CYLINDERS);

/**
 * The job as it went, in the order in which it was done; the gap was reset after the timing.
 * Readings scatter as those of a bench do.
 */
const run: readonly (readonly [StepId, Moment, readonly number[]])[] = [
  ['top', 'found', [0.5, 1.25, 0.75]],
  ['top', 'left', [0, -0.25, -0.25]],
  ['plate', 'found', [120.4, 120.1, 119.9]],
  ['coil', 'found', [4.05, 3.96, 4.02]],
  ['gap', 'found', [0.39, 0.31, 0.36]],
  ['timing', 'found', each(demoTiming.fired)],
  ['timing', 'left', [2.24, 2.2, 2.24]],
  ['gap', 'left', [0.34, 0.35, 0.36]],
  ['float', 'found', each(demoFloat.found)],
  ['float', 'left', [24.2, 23.8, 23.8]],
  ['jets', 'found', [demoJets.main, demoJets.main, demoJets.main]],
  ['slides', 'found', each(demoSlides.found)],
  ['squish', 'found', [1.42, 1.53, 1.36]],
  ['clip', 'found', [demoJets.clip, demoJets.clip, demoJets.clip]],
];

const figures = {
  cylinders: DEMO_CYLINDERS,
  bore: demoBarrel.bore,
  ...demoEngine,
  lobes: demoCam.lobes,
  'speed-ratio': demoCam.speedRatio,
  lift: demoCam.lift,
  rise: demoCam.rise,
  top: demoCam.top,
  gap: demoCam.gap,
  'gap-tolerance': 0.03,
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
  volts: demoCoil.volts,
  resistance: demoCoil.resistance,
  'resistance-tolerance': 0.3,
  inductance: demoCoil.inductance,
  'plug-gap': 0.6,
  'plug-gap-tolerance': 0.05,
  height: demoFloat.height,
  'height-tolerance': demoFloat.tolerance,
  seat: demoFloat.seat,
  head: demoFloat.head,
  jet: demoJets.main,
  'jet-tolerance': 0.015,
  'needle-jet': demoJets.needleJet,
  'needle-diameter': demoJets.needle,
  taper: demoJets.taper,
  'clip-pitch': demoJets.clipPitch,
  clip: demoJets.clip,
  thread: demoSlides.thread,
  'slide-tolerance': 0.1,
  deck: demoBarrel.deck,
  squish: demoHead.squish,
  'squish-tolerance': 0.15,
  'head-volume': demoHead.volume,
  'head-volume-tolerance': 0.3,
  'exhaust-opens': demoBarrel.exhaustOpens,
  'exhaust-tolerance': 1,
  'leak-drop': 3,
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
    (engine, [step, moment, readings]) =>
      readings.reduce((so, reading, i) => setEntry(so, step, moment, i, reading), engine),
    setDone(blank, 'measure', true),
  );
}
