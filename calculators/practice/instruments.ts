/** What the reader can see of an engine: never more than the instruments show. */
import { openingAt } from '../maths/ignition/breaker-cam.ts';
import { readingOf } from '../maths/crank/indicator-tilt.ts';
import { bdcAfter } from '../maths/crank/slider-crank.ts';
import { bent, gapOf, type Bench } from './bench.ts';
import { between, chanceOf } from './chance.ts';
import { degreesAlong, type Engine } from './engine.ts';

const RADIANS_PER_DEGREE = Math.PI / 180;

/** The smallest division of the indicator, mm, and how far its plunger goes. */
const DIAL_STEP = 0.01;
export const DIAL_RANGE = 14;
/** To what a careful eye reads the disc, degrees. */
const DISC_STEP = 0.25;
const POINTER_RADIUS = 78;

const onto = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(4)) + 0;

/** −180 to 180. */
export function wrapped(angle: number): number {
  const turn = ((angle % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}

/** How an instrument errs this time: alike until the crank comes to the place anew. */
function error(engine: Engine, bench: Bench, stream: number, most: number): number {
  const turn = Math.floor(bench.crank / 360 + 0.5);
  const visit = 100_000 + stream * 50_021 + bench.approaches * 131 + turn * 17 + bench.cylinder;
  return between(chanceOf(engine.number, visit), -most, most);
}

/** Where the plunger stands, mm below its place at the top of the geometry. */
function plunger(engine: Engine, bench: Bench): number {
  const { lean, stick } = engine.hidden;
  const travel = bench.travels[bench.cylinder]! + error(engine, bench, 1, stick);
  return readingOf(travel, bench.upright ? 0 : lean);
}

/**
 * What the indicator shows, mm below where it was zeroed; nothing without one in the plug hole, or
 * with the piston below its reach.
 */
export function dialShows(engine: Engine, bench: Bench): number | undefined {
  if (bench.inHole !== 'indicator') return undefined;
  const stands = plunger(engine, bench);
  return stands > DIAL_RANGE ? undefined : onto(stands - bench.zero, DIAL_STEP);
}

/** How far the indicator's zero is from what it should be at the top, come to from below, mm. */
export function zeroError({ hidden }: Engine, bench: Bench): number {
  return bench.zero - readingOf(hidden.rodPlay / 2, bench.upright ? 0 : hidden.lean);
}

/** The indicator with its face turned to 0. */
export function dialZeroed(engine: Engine, bench: Bench): Bench {
  if (bench.inHole !== 'indicator') {
    return { ...bench, said: 'There is no indicator in the plug hole.' };
  }
  const stands = plunger(engine, bench);
  return stands > DIAL_RANGE
    ? { ...bench, said: 'The piston is below the reach of the indicator.' }
    : { ...bench, zero: stands, said: 'The indicator shows 0 here.' };
}

/**
 * What a disc with its middle beside the crank's shows for a true angle, degrees. The pointer stands
 * at its radius about the crank; the disc's degrees are counted about its own middle.
 */
export function eccentric(angle: number, off: number, offAt: number, radius: number): number {
  const [a, b] = [angle * RADIANS_PER_DEGREE, offAt * RADIANS_PER_DEGREE];
  const across = radius * Math.sin(a) - off * Math.sin(b);
  const along = radius * Math.cos(a) - off * Math.cos(b);
  return angle + wrapped(Math.atan2(across, along) / RADIANS_PER_DEGREE - angle);
}

/**
 * What a pointer would show to a perfect eye, −180 to 180; B stands opposite to where A stood before
 * it was bent. A tip bent the way the engine turns meets marks that come later: it shows less.
 */
export function discExactly(
  { hidden }: Engine,
  { crank, discShift, pointer: bend }: Pick<Bench, 'crank' | 'discShift' | 'pointer'>,
  pointer: 'A' | 'B' = 'A',
): number {
  const angle = crank - hidden.discZero + discShift + (pointer === 'A' ? -bend : 180);
  return wrapped(eccentric(angle, hidden.discOff, hidden.discOffAt, POINTER_RADIUS));
}

const lookedAt = (engine: Engine, bench: Bench, pointer: 'A' | 'B'): number =>
  discExactly(engine, bench, pointer) +
  error(engine, bench, pointer === 'A' ? 2 : 3, engine.hidden.eye);

/** What the disc shows, degrees after its zero, before it where negative. */
export const discShows = (engine: Engine, bench: Bench, pointer: 'A' | 'B' = 'A'): number =>
  onto(wrapped(lookedAt(engine, bench, pointer)), DISC_STEP);

/** The disc shifted until it shows 0 where the crank stands, as near as the eye can tell. */
export function discZeroed(engine: Engine, bench: Bench): Bench {
  let { discShift } = bench;
  for (let i = 0; i < 4; i += 1) {
    discShift -= lookedAt(engine, { ...bench, discShift }, 'A');
  }
  return { ...bench, discShift: Number(discShift.toFixed(6)), said: 'The disc shows 0 here.' };
}

/** The pointer bent until it shows 0 where the crank stands, as near as the eye can tell. */
export function pointerZeroed(engine: Engine, bench: Bench): Bench {
  let to = bench.pointer;
  for (let i = 0; i < 4; i += 1) {
    to += lookedAt(engine, { ...bench, pointer: to }, 'A');
  }
  const after = bent(bench, to);
  return after.said === '' ? { ...after, said: 'The pointer shows 0 here.' } : after;
}

/** How far the contacts of the set in hand stand apart, mm; 0 when shut. */
export function opening(engine: Engine, bench: Bench, set = bench.cylinder): number {
  const { cam, tops, middles } = engine.hidden;
  const earlier =
    bench.plate * degreesAlong(engine.card.plateRadius) +
    bench.slots[set]! * degreesAlong(engine.card.slotRadius);
  const fromLobe = bench.cam - tops[set]! - (middles[set]! - earlier);
  return openingAt(cam, gapOf(engine, bench, set), fromLobe);
}

/** Leaves of the feeler gauge, mm. */
export const LEAVES = [0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6] as const;

export type Fit = 'loose' | 'drags' | 'no-go';

/** How a leaf goes between the contacts as they now stand: it drags within a hundredth or so. */
export function fitOf(engine: Engine, bench: Bench, leaf: number): Fit {
  const room = opening(engine, bench) - leaf;
  return room > 0.008 ? 'loose' : room < -0.004 ? 'no-go' : 'drags';
}

/** Ohms of the test lamp, and of the coil that lies across the points while its wire is on. */
const LAMP = 40;
const COIL = 4;

/**
 * How bright the lamp is, as a share of its full power. The points short nothing while they are open;
 * but through the coil's winding the lamp is still fed, and hardly changes.
 */
export function lampPower(engine: Engine, bench: Bench): number {
  if (opening(engine, bench) === 0) return 1;
  return bench.coil ? (LAMP / (LAMP + COIL)) ** 2 : 0;
}

export const lampWord = (engine: Engine, bench: Bench): 'lit' | 'out' =>
  lampPower(engine, bench) > 0 ? 'lit' : 'out';

/** Whether the piston in hand is on its way up as the crank is being turned. */
export function rising({ hidden }: Engine, bench: Bench): boolean {
  const angle = bench.crank - hidden.tops[bench.cylinder]!;
  const after = ((angle % 360) + 360) % 360;
  return bench.way > 0 === after >= bdcAfter(hidden.geometry);
}
