import { demoEngine as geometry } from '../engine-inputs.ts';
import { setDone, setEntry, type Moment } from './edit.ts';
import { newEngine, type Engine } from './model.ts';
import type { StepId } from './steps.ts';

/** Evenly spread numbers from 0 to 1, the same every time (the minimal standard generator). */
function spreader(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

interface Scatter {
  readonly step: StepId;
  readonly moment: Moment;
  readonly about: number;
  /** Usual distance from that, and the finest the instrument reads. */
  readonly usual: number;
  readonly reads: number;
}

/** The job as it went, in the order in which it was done; the gap was reset after the timing. */
const run: readonly Scatter[] = [
  { step: 'top', moment: 'found', about: 0.9, usual: 0.6, reads: 0.25 },
  { step: 'top', moment: 'left', about: 0, usual: 0.12, reads: 0.25 },
  { step: 'plate', moment: 'found', about: 120, usual: 0.25, reads: 0.1 },
  { step: 'coil', moment: 'found', about: 1.5, usual: 0.05, reads: 0.01 },
  { step: 'gap', moment: 'found', about: 0.36, usual: 0.04, reads: 0.01 },
  { step: 'timing', moment: 'found', about: 2.05, usual: 0.22, reads: 0.01 },
  { step: 'timing', moment: 'left', about: 2.2, usual: 0.03, reads: 0.01 },
  { step: 'gap', moment: 'left', about: 0.4, usual: 0.008, reads: 0.01 },
  { step: 'float', moment: 'found', about: 24.4, usual: 0.9, reads: 0.1 },
  { step: 'float', moment: 'left', about: 24, usual: 0.15, reads: 0.1 },
  { step: 'jets', moment: 'found', about: 1.2, usual: 0.004, reads: 0.01 },
  { step: 'slides', moment: 'found', about: 3.1, usual: 0.3, reads: 0.05 },
  { step: 'squish', moment: 'found', about: 1.22, usual: 0.06, reads: 0.01 },
];

const CYLINDERS = 3;

const figures = {
  cylinders: CYLINDERS,
  bore: 54,
  ...geometry,
  lobes: 1,
  'speed-ratio': 1,
  lift: 1.2,
  rise: 60,
  top: 20,
  gap: 0.4,
  'gap-tolerance': 0.03,
  target: 2.2,
  'timing-tolerance': 0.75,
  'top-tolerance': 0.25,
  'slot-radius': 28,
  rotor: 95,
  'plate-outside': 96,
  'plate-bore': 34,
  'set-2': 120,
  'set-3': 240,
  'plate-tolerance': 0.8,
  volts: 6,
  resistance: 1.5,
  'resistance-tolerance': 0.15,
  'plug-gap': 0.6,
  'plug-gap-tolerance': 0.05,
  height: 24,
  'height-tolerance': 0.5,
  jet: 1.2,
  'jet-tolerance': 0.015,
  clip: 3,
  thread: 0.75,
  'slide-tolerance': 0.1,
  squish: 1.2,
  'squish-tolerance': 0.15,
  'head-volume': 14,
  'head-volume-tolerance': 0.3,
  'leak-drop': 3,
  ratio: 25,
} as const;

/** The sum of twelve even numbers less six is spread like the errors of a bench: usual distance 1. */
function benchError(next: () => number): number {
  let sum = -6;
  for (let i = 0; i < 12; i += 1) sum += next();
  return sum;
}

/** An invented engine, part way through the job, the same every time. */
export function demoSheet(): Engine {
  const next = spreader(20260);
  let engine: Engine = {
    ...newEngine('demo', 'Demo: club triple'),
    invented: true,
    notes:
      'Invented: no such engine exists. A club’s three-cylinder air-cooled engine built from mixed parts, without a manual.',
    firingOrder: [1, 3, 2],
    figures,
  };
  engine = setDone(engine, 'measure', true);
  for (const { step, moment, about, usual, reads } of run) {
    for (let i = 0; i < CYLINDERS; i += 1) {
      const read = Math.round((about + usual * benchError(next)) / reads) * reads;
      engine = setEntry(engine, step, moment, i, Number(read.toFixed(4)));
    }
  }
  return [3, 3, 3].reduce((so, groove, i) => setEntry(so, 'clip', 'found', i, groove), engine);
}
