/**
 * The bench with an engine on it: what stands where, and what every act of the reader does. Pure: an
 * act makes a new bench of the old one. Nothing here is scripted; what happens follows from the
 * engine's geometry, its cam and its play.
 */
import { angleAfter, angleBefore, bdcAfter, travelAt } from '../maths/crank/slider-crank.ts';
import { between, chanceOf } from './chance.ts';
import type { Engine } from './engine.ts';
import { driven, drivenThrough } from './play.ts';

export type Way = 1 | -1;
export type InHole = 'nothing' | 'indicator' | 'stop';

/** How a set was last found to open: what the reckoning looks back at. */
export interface Found {
  readonly way: Way;
  /** How far from the top's own reading the indicator was zeroed, mm. */
  readonly zeroError: number;
  readonly upright: boolean;
  /** Times it was come to forwards. */
  readonly times: number;
}

export interface Note {
  readonly cylinder: number;
  /** As it stood to be read; nothing where there was nothing to read. */
  readonly dial: number | undefined;
  readonly disc: number;
  /** What pointer B showed, where there are two. */
  readonly opposite?: number;
  /** How disc and pointer stood to one another, degrees: only readings alike in it go together. */
  readonly standing: number;
  readonly lamp: string;
  readonly way: Way;
  /** Whether the piston had risen to its place. */
  readonly rising: boolean;
}

export interface Bench {
  /** Crank, degrees after the top of cylinder 1, every turn counted. */
  readonly crank: number;
  readonly way: Way;
  /** How many times the way of turning has changed. */
  readonly approaches: number;
  /** The cam, in degrees of crank; it hangs on the crank by its play. */
  readonly cam: number;
  /** Each piston below its top, mm, by the play in its rod a little less or more than the geometry says. */
  readonly travels: readonly number[];
  readonly cylinder: number;
  readonly inHole: InHole;
  readonly upright: boolean;
  /** What the indicator's plunger stood at when its face was turned to 0, mm. */
  readonly zero: number;
  /** By how much the disc was shifted on the crank, degrees the way the engine turns. */
  readonly discShift: number;
  /** By how much the tip of the pointer (of A where there are two) was bent, degrees the same way. */
  readonly pointer: number;
  /** Whether the coil's wire is on the set. */
  readonly coil: boolean;
  /** Each gap screw, degrees, more for a wider gap. */
  readonly screws: readonly number[];
  /** Along the scribed line, and along the slots, mm; more is earlier. */
  readonly plate: number;
  readonly slots: readonly number[];
  readonly notes: readonly Note[];
  readonly found: readonly (Found | undefined)[];
  /** The gap that each set had when plate or slot was last moved, mm. */
  readonly timedAtGap: readonly (number | undefined)[];
  /** Times the piston was let run onto the stop, and acts in all. */
  readonly struck: number;
  readonly acts: number;
  /** What the last act has to say for itself. */
  readonly said: string;
}

/** How far each can be moved from where it was found. */
export const MOST = { screw: 180, plate: 8, slot: 2.5, pointer: 12 } as const;
const THIN = 0.02;

export type Act =
  | { readonly act: 'turn'; readonly by: number }
  | { readonly act: 'kick' }
  | { readonly act: 'put'; readonly inHole: InHole }
  | { readonly act: 'straighten' }
  | { readonly act: 'zero' }
  | { readonly act: 'cylinder'; readonly cylinder: number }
  | { readonly act: 'disc'; readonly by: number }
  | { readonly act: 'disc-zero' }
  | { readonly act: 'pointer'; readonly by: number }
  | { readonly act: 'pointer-zero' }
  | { readonly act: 'coil'; readonly on: boolean }
  | { readonly act: 'screw'; readonly by: number }
  | { readonly act: 'plate'; readonly by: number }
  | { readonly act: 'slot'; readonly by: number }
  | { readonly act: 'note' }
  | { readonly act: 'strike-out'; readonly note: number };

/** Whether disc and pointer stood to one another alike for two notes; they are moved by sums. */
export const alike = (one: Pick<Note, 'standing'>, other: Pick<Note, 'standing'>): boolean =>
  Math.abs(one.standing - other.standing) < 1e-6;

/** Whether there is on this bench what an act is done to. */
export const canBeDone = ({ slots, notes }: Bench, act: Act): boolean =>
  (act.act !== 'cylinder' || act.cylinder < slots.length) &&
  (act.act !== 'strike-out' || act.note < notes.length);

/** Gap at full lift of each set as it now is, mm. */
export function gapOf({ hidden }: Engine, bench: Bench, set: number): number {
  const gap =
    hidden.gaps[set]! +
    hidden.screwRate[set]! * bench.screws[set]! +
    hidden.slotGap[set]! * bench.slots[set]!;
  return Math.min(hidden.cam.lift - THIN, Math.max(THIN, gap));
}

/** The engine as it comes: some way before the top, points as found, nothing in the plug hole. */
export function setUp(engine: Engine): Bench {
  const { card, hidden } = engine;
  const start = -between(chanceOf(engine.number, 90), 60, 110);
  const all = <T>(value: T): T[] => Array.from({ length: card.cylinders }, () => value);
  return {
    crank: start,
    way: 1,
    approaches: 0,
    cam: start - hidden.camPlay / 2,
    travels: hidden.tops.map((top) => {
      const angle = start - top;
      const rising = ((angle % 360) + 360) % 360 > bdcAfter(hidden.geometry);
      return travelAt(hidden.geometry, angle) + (rising ? 0.5 : -0.5) * hidden.rodPlay;
    }),
    cylinder: 0,
    inHole: 'nothing',
    upright: hidden.lean < 2,
    zero: 0,
    discShift: 0,
    pointer: 0,
    coil: true,
    screws: all(0),
    plate: 0,
    slots: all(0),
    notes: [],
    found: all(undefined),
    timedAtGap: all(undefined),
    struck: 0,
    acts: 0,
    said: '',
  };
}

/** The places between two at which the piston turns round, in the order in which they are passed. */
function turningPoints(from: number, to: number, bottom: number): number[] {
  const [low, high] = from < to ? [from, to] : [to, from];
  const places: number[] = [];
  for (let turn = Math.floor(low / 360) - 1; turn * 360 <= high; turn += 1) {
    for (const place of [turn * 360, turn * 360 + bottom]) {
      if (place > low && place < high) places.push(place);
    }
  }
  return from < to ? places : places.reverse();
}

/** How far the crank can go on before the piston meets the stop, degrees; forwards or backwards. */
function roomBeforeStop({ hidden }: Engine, bench: Bench, way: Way): number {
  if (bench.inHole !== 'stop') return Infinity;
  const angle = bench.crank - hidden.tops[bench.cylinder]!;
  const height = hidden.stopHeight - hidden.rodPlay / 2;
  const place =
    way > 0 ? -angleBefore(hidden.geometry, height) : angleAfter(hidden.geometry, height);
  const turns = Math.ceil((way * (angle - place)) / 360 - 1e-9);
  return Math.max(0, way * (place - angle) + 360 * Math.max(turns, 0));
}

/** Whether the crank stands where a stop could not be screwed in. */
const tooHigh = ({ hidden }: Engine, bench: Bench): boolean =>
  bench.travels[bench.cylinder]! < hidden.stopHeight + 0.3;

function turned(engine: Engine, bench: Bench, by: number): Bench {
  if (by === 0) return bench;
  const { geometry, tops, rodPlay, camPlay } = engine.hidden;
  const way: Way = by > 0 ? 1 : -1;
  const room = roomBeforeStop(engine, bench, way);
  const go = way * Math.min(Math.abs(by), room);
  const crank = bench.crank + go;
  const bottom = bdcAfter(geometry);
  return {
    ...bench,
    crank,
    way: go === 0 ? bench.way : way,
    approaches: bench.approaches + (go !== 0 && way !== bench.way ? 1 : 0),
    cam: driven(bench.cam, crank, camPlay),
    travels: bench.travels.map((travel, i) => {
      const top = tops[i]!;
      const places = [...turningPoints(bench.crank - top, crank - top, bottom), crank - top];
      const drivers = places.map((place) => travelAt(geometry, place));
      return drivenThrough(travel, drivers, rodPlay);
    }),
    said: Math.abs(go) < Math.abs(by) ? 'The piston rests on the stop.' : '',
  };
}

const held = (value: number, most: number): number => Math.min(most, Math.max(-most, value));
const tidy = (value: number): number => Number(value.toFixed(6));
const put = <T>(list: readonly T[], index: number, value: T): T[] =>
  list.map((each, i) => (i === index ? value : each));

/** Plate or slots have moved: the timing was set with the gaps as they now are. */
const timed = (engine: Engine, bench: Bench, sets: readonly number[]): Bench => ({
  ...bench,
  timedAtGap: bench.timedAtGap.map((gap, set) =>
    sets.includes(set) ? gapOf(engine, bench, set) : gap,
  ),
});

const END = 'It is at the end of its travel.';

/** The pointer bent to a place, as far as its wire allows. */
export function bent(bench: Bench, to: number): Bench {
  const pointer = held(tidy(to), MOST.pointer);
  const said = Math.abs(pointer) === MOST.pointer ? 'The pointer bends no further.' : '';
  return { ...bench, pointer, said };
}

/** An indicator put in anew stands anywhere. */
const anyZero = (engine: Engine, bench: Bench): number =>
  -between(chanceOf(engine.number, 5000 + bench.acts), 0.4, 2.6);

/** What an act does, apart from what is looked back at. */
export function bare(engine: Engine, bench: Bench, act: Act): Bench {
  const set = bench.cylinder;
  switch (act.act) {
    case 'turn':
      return turned(engine, bench, act.by);
    case 'kick': {
      const by = between(chanceOf(engine.number, 9000 + bench.acts), 400, 700);
      const room = roomBeforeStop(engine, bench, 1);
      const after = turned(engine, bench, by);
      return room < by
        ? {
            ...after,
            struck: bench.struck + 1,
            said: 'The piston was kicked onto the stop. On a real engine that marks or holes the crown.',
          }
        : { ...after, said: 'Kicked over: too fast to read anything.' };
    }
    case 'put':
      if (act.inHole === 'stop' && tooHigh(engine, bench)) {
        return {
          ...bench,
          said: 'The stop meets the crown before its thread is home. Turn the piston further down.',
        };
      }
      return { ...bench, inHole: act.inHole, zero: anyZero(engine, bench), said: '' };
    case 'straighten':
      return {
        ...bench,
        upright: true,
        zero: anyZero(engine, bench),
        said: 'The indicator stands in line with the bore now. Zero it again.',
      };
    case 'zero':
      return bench;
    case 'cylinder':
      return {
        ...bench,
        cylinder: act.cylinder,
        inHole: bench.inHole === 'stop' ? 'nothing' : bench.inHole,
        zero: anyZero(engine, bench),
        said: `Indicator and lamp are on cylinder ${act.cylinder + 1}. Zero the indicator at its top.`,
      };
    case 'disc':
      return { ...bench, discShift: tidy(bench.discShift + act.by), said: '' };
    case 'pointer':
      return bent(bench, bench.pointer + act.by);
    case 'disc-zero':
    case 'pointer-zero':
      return bench;
    case 'coil':
      return { ...bench, coil: act.on, said: '' };
    case 'screw': {
      const to = held(tidy(bench.screws[set]! + act.by), MOST.screw);
      const screws = put(bench.screws, set, to);
      return { ...bench, screws, said: Math.abs(to) === MOST.screw ? END : '' };
    }
    case 'plate': {
      const plate = held(tidy(bench.plate + act.by), MOST.plate);
      const said = Math.abs(plate) === MOST.plate ? END : '';
      return timed(
        engine,
        { ...bench, plate, said },
        bench.slots.map((_, i) => i),
      );
    }
    case 'slot': {
      const to = held(tidy(bench.slots[set]! + act.by), MOST.slot);
      const said = Math.abs(to) === MOST.slot ? END : '';
      return timed(engine, { ...bench, slots: put(bench.slots, set, to), said }, [set]);
    }
    case 'note':
      return bench;
    case 'strike-out':
      return { ...bench, notes: bench.notes.filter((_, i) => i !== act.note), said: '' };
  }
}
