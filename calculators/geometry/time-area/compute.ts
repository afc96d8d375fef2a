import { attempt, ifThere, blameField, blameFields } from '../../frame/attempt.ts';
import { sliderCrank } from '../../position/engine-inputs.ts';
import {
  absent,
  impossible,
  type Absent,
  type ComputedOf,
  type ValuesOf,
} from '../../frame/types.ts';
import { sweptVolume } from '../../maths/cylinder/compression.ts';
import {
  assertRoundBore,
  assertWindow,
  uncoveredArea,
  type PortWindow,
} from '../../maths/cylinder/port-area.ts';
import {
  crownPort,
  discPort,
  skirtPort,
  type PistonInBarrel,
} from '../../maths/cylinder/port-timing.ts';
import {
  blowdownAngleArea,
  crownAngleArea,
  discAngleArea,
  discOpenArea,
  skirtAngleArea,
  specificTimeArea,
  timeArea,
} from '../../maths/cylinder/time-area.ts';
import { travelAt } from '../../maths/crank/slider-crank.ts';
import { memoize } from '../../frame/memoize.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
// Most of these stay as they are while one reading is moved by its ±.
const crownArea = memoize(crownAngleArea);
const skirtArea = memoize(skirtAngleArea);
const blowdownArea = memoize(blowdownAngleArea);
const crownEvents = memoize(crownPort);
const skirtEvents = memoize(skirtPort);

type Kind = 'exhaust' | 'transfer' | 'inlet';

export const barrelOf = (v: Values): PistonInBarrel => ({
  ...sliderCrank(v),
  deckClearance: v.deck,
});

/** The window of one kind of port; an error in it is laid to that port's own fields. */
export function windowOf(v: Values, kind: Kind): PortWindow {
  const window = {
    width: v[`${kind}-width`],
    height: v[`${kind}-height`],
    cornerRadius: v[`${kind}-corner`],
    count: v[`${kind}-count`],
  };
  const fieldOf = (name: string): string =>
    name === 'bore' ? name : `${kind}-${name === 'cornerRadius' ? 'corner' : name}`;
  blameFields(
    (names) => names.map(fieldOf),
    () => {
      assertWindow(window);
      assertRoundBore(window, v.bore);
    },
  );
  return window;
}

interface InletAreas {
  readonly angleArea: number;
  readonly duration: number;
}

function inletAreas(v: Values, barrel: PistonInBarrel): InletAreas | Absent {
  if (v.inlet === 'none') {
    return absent(
      'The inlet is left out: a reed opens by pressure and has no timing of its own. Choose the piston skirt or the disc valve if the engine has one.',
    );
  }
  if (v.inlet === 'disc') {
    return attempt(() => {
      const { duration } = discPort(v['disc-opens'], v['disc-closes']);
      return { angleArea: discAngleArea(v['disc-area'], duration, v['disc-edge']), duration };
    });
  }
  return attempt(() => {
    const edges = { bottomEdge: v['inlet-edge'], skirtLength: v.skirt };
    return {
      angleArea: skirtArea(barrel, { ...windowOf(v, 'inlet'), ...edges }),
      duration: skirtEvents(barrel, edges.bottomEdge, edges.skirtLength).duration,
    };
  });
}

/** Open area of the inlet in mm² at an angle after the top, 0 to 360. */
export function inletAreaAt(v: Values, barrel: PistonInBarrel): (angle: number) => number {
  if (v.inlet === 'disc') {
    const opens = v['disc-opens'];
    const duration = opens + v['disc-closes'];
    return (angle) => discOpenArea(v['disc-area'], duration, v['disc-edge'], (angle + opens) % 360);
  }
  const window = windowOf(v, 'inlet');
  const clear = v['inlet-edge'] - v.skirt - barrel.deckClearance;
  return (angle) => uncoveredArea(window, clear - travelAt(barrel, angle));
}

const MILLISECONDS = 1000;
/** One revolution a minute is six degrees a second. */
const DEGREES_PER_SECOND = 6;

export function compute(v: Values): ComputedOf<typeof results> {
  const barrel = barrelOf(v);
  const swept = sweptVolume(barrel, v.bore);
  const exhaust = { ...windowOf(v, 'exhaust'), topEdge: v['exhaust-edge'] };
  const transfer = { ...windowOf(v, 'transfer'), topEdge: v['transfer-edge'] };
  const exhaustEvents = blameField('exhaust-edge', 'topEdge', () =>
    crownEvents(barrel, exhaust.topEdge),
  );
  const transferEvents = blameField('transfer-edge', 'topEdge', () =>
    crownEvents(barrel, transfer.topEdge),
  );
  const exhaustArea = crownArea(barrel, exhaust);
  const transferArea = crownArea(barrel, transfer);
  const specific = (angleArea: number): number =>
    specificTimeArea(timeArea(angleArea, v.rpm), swept);
  const milliseconds = (degrees: number): number =>
    (degrees / (DEGREES_PER_SECOND * v.rpm)) * MILLISECONDS;
  const inlet = inletAreas(v, barrel);
  const blowdown = transferEvents.opens - exhaustEvents.opens;
  const noBlowdown = impossible(
    'The transfers open before the exhaust, so there is no blowdown. Check both top edges: the exhaust’s must be the higher one.',
  );
  return {
    'exhaust-time-area': specific(exhaustArea),
    'blowdown-time-area':
      blowdown > 0 ? specific(blowdownArea(barrel, exhaust, transfer.topEdge)) : noBlowdown,
    'transfer-time-area': specific(transferArea),
    'inlet-time-area': ifThere(inlet, ({ angleArea }) => specific(angleArea)),
    'exhaust-mean': exhaustArea / exhaustEvents.duration,
    'transfer-mean': transferArea / transferEvents.duration,
    'inlet-mean': ifThere(inlet, ({ angleArea, duration }) => angleArea / duration),
    'exhaust-open': milliseconds(exhaustEvents.duration),
    'blowdown-open': blowdown > 0 ? milliseconds(blowdown) : noBlowdown,
    swept,
  };
}
