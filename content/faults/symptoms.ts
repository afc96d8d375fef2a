import { bogs } from './symptoms/bogs.ts';
import { floods } from './symptoms/floods.ts';
import { fourStrokes } from './symptoms/four-strokes.ts';
import { hotStart } from './symptoms/hot-start.ts';
import { idle } from './symptoms/idle.ts';
import { kicksBack } from './symptoms/kicks-back.ts';
import { knocks } from './symptoms/knocks.ts';
import { leaks } from './symptoms/leaks.ts';
import { magneto } from './symptoms/magneto.ts';
import { metalNoise } from './symptoms/metal-noise.ts';
import { noSpark } from './symptoms/no-spark.ts';
import { noStart } from './symptoms/no-start.ts';
import { oneCoil } from './symptoms/one-coil.ts';
import { overheats } from './symptoms/overheats.ts';
import { plugs } from './symptoms/plugs.ts';
import { poorSpark } from './symptoms/poor-spark.ts';
import { runsOn } from './symptoms/runs-on.ts';
import { screams } from './symptoms/runaway.ts';
import { shortOfPower } from './symptoms/short-of-power.ts';
import { someCylinders } from './symptoms/some-cylinders.ts';
import { uneven } from './symptoms/uneven.ts';
import type { Symptom } from './types.ts';

/** From symptom to the measured figure: common practice throughout, under the heads of what is noticed. */
export const symptomGroups: readonly {
  readonly title: string;
  readonly symptoms: readonly Symptom[];
}[] = [
  {
    title: 'It does not start',
    symptoms: [noSpark, oneCoil, poorSpark, magneto, noStart, hotStart, kicksBack],
  },
  {
    title: 'It runs, and not as it should',
    symptoms: [idle, someCylinders, uneven, bogs, fourStrokes, shortOfPower, plugs],
  },
  { title: 'Stop it first', symptoms: [screams, runsOn, overheats, knocks, metalNoise] },
  { title: 'Wet', symptoms: [floods, leaks] },
];

export const symptoms: readonly Symptom[] = symptomGroups.flatMap((group) => group.symptoms);

/** The ids under which the first start page had the symptoms, and what answers them now. */
export const formerIds: Readonly<Record<string, string>> = {
  'runs-away': 'runs-away',
  'kicks-back': 'kicks-back',
  knocks: 'knocks',
  'metal-noise': 'metal-noise',
  'no-spark': 'no-spark',
  'spark-no-start': 'spark-no-start',
  'one-dead': 'one-dead',
  floods: 'floods',
  'hot-one': 'overheats',
  'weak-all': 'short-of-power',
  uneven: 'uneven',
};
