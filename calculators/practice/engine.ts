/**
 * An engine that does not exist, made up from its number: what its card tells, and what only its
 * behaviour shows. The same number and task are the same engine for ever, so no draw below may be
 * left out, added between others or moved.
 */
import { opensBefore, type BreakerCam } from '../maths/ignition/breaker-cam.ts';
import { arcForTiming, timingAt } from '../maths/plate/plate-setting.ts';
import { travelBefore, type SliderCrank } from '../maths/crank/slider-crank.ts';
import { between, chanceOf, eitherWay, stepped, whole } from './chance.ts';
import { crankTasks, tasks, type CrankTask } from './tasks.ts';

/** What the reader is told. Lengths in mm. */
export interface Card extends SliderCrank {
  readonly cylinders: number;
  /** Travel before the top at which each cylinder is to fire. */
  readonly target: number;
  /** Gap at full lift. */
  readonly gap: number;
  /** From the middle of the shaft to the line scribed across plate and case, and to the slots. */
  readonly plateRadius: number;
  readonly slotRadius: number;
  readonly discDiameter: number;
  /** The figure of another engine, where the task is to carry one. */
  readonly given?: SliderCrank & { readonly before: number };
  /** What somebody wrote down for each cylinder: travel before the top at which it fires. */
  readonly written?: readonly number[];
}

/** What the reader can only find out. Lengths in mm, angles in degrees of crank. */
export interface Hidden {
  readonly geometry: SliderCrank;
  /** Where each cylinder has its top, after that of cylinder 1. */
  readonly tops: readonly number[];
  /** By how much the piston's height hangs on whether it was pushed or pulled there. */
  readonly rodPlay: number;
  /** By how much the cam hangs behind the crank, or before it when turned backwards. */
  readonly camPlay: number;
  /** Between the indicator and the bore, as it was screwed in. */
  readonly lean: number;
  /** How far indicator and eye may err, either way, each time they come to a place. */
  readonly stick: number;
  readonly eye: number;
  readonly cam: BreakerCam;
  /** Where the middle of the lobe stands under each set, after that cylinder's top. */
  readonly middles: readonly number[];
  /** Gap of each set as found. */
  readonly gaps: readonly number[];
  /** What a degree of a gap screw does to the gap. */
  readonly screwRate: readonly number[];
  /** What a mm along its slot does to the gap of a set. */
  readonly slotGap: readonly number[];
  /** Where the disc shows 0, after the top of cylinder 1. */
  readonly discZero: number;
  /** The middle of the disc beside that of the crank, and towards which of its degrees. */
  readonly discOff: number;
  readonly discOffAt: number;
  /** Travel at which the piston meets the stop. */
  readonly stopHeight: number;
  /** The cylinder whose reading, or whose set, is the odd one. */
  readonly odd: number;
}

export interface Engine {
  readonly number: number;
  readonly task: CrankTask;
  readonly card: Card;
  readonly hidden: Hidden;
}

/** The largest number of an engine. */
export const LAST_ENGINE = 999_999;

export const isEngineNumber = (number: number): boolean =>
  Number.isInteger(number) && number >= 0 && number <= LAST_ENGINE;

const SETS = 4;
const each = <T>(make: (index: number) => T, count = SETS): T[] =>
  Array.from({ length: count }, (_, index) => make(index));

/** Degrees of timing for a mm along a circle of so many mm about the shaft. */
export const degreesAlong = (radius: number): number => 1 / arcForTiming(1, radius, 1);

/** @param number A whole number from 0 to 999 999. */
export function inventEngine(number: number, task: CrankTask): Engine {
  const chance = chanceOf(number, 0);
  const stroke = stepped(chance, 44, 62, 0.5);
  const rodLength = stepped(chance, 1.8 * stroke, 2.1 * stroke, 0.5);
  const pinOffset = chance() < 0.25 ? 1 : 0;
  const told: SliderCrank = { stroke, rodLength, pinOffset };
  const geometry: SliderCrank = {
    stroke: stroke + between(chance, -0.03, 0.03),
    rodLength: rodLength + between(chance, -0.05, 0.05),
    pinOffset,
  };
  const wanted = between(chance, 18.5, 25);
  const target = Number((Math.round(travelBefore(told, wanted) / 0.05) * 0.05).toFixed(2));
  const gap = stepped(chance, 0.3, 0.4, 0.05);
  const cam: BreakerCam = {
    lobes: 1,
    speedRatio: 1,
    lift: between(chance, 0.9, 1.1),
    rise: between(chance, 46, 54),
    top: between(chance, 95, 125),
    profile: 'harmonic',
  };
  const pins = each(() => between(chance, -0.4, 0.4));
  const camPlay = between(chance, 0.2, 0.6);
  const play = between(chance, 0.01, 0.025);
  const stick = between(chance, 0.004, 0.01);
  const eye = between(chance, 0.08, 0.16);
  const leans = chance() < 0.5 ? between(chance, 6, 13) : between(chance, 0, 1.5);
  const discError = eitherWay(chance, 3, 9);
  const off = between(chance, 0, 0.05);
  const discOffAt = between(chance, 0, 360);
  const stopHeight = between(chance, 6, 12);
  const screwRate = each(() => between(chance, 0.0008, 0.0014));
  const slotGap = each(() => between(chance, -0.012, 0.012));
  const wrongGaps = each(() => gap + (chance() < 0.5 ? -1 : 1) * between(chance, 0.07, 0.14));
  const common = eitherWay(chance, 1.5, 3.5);
  const single = each(() => between(chance, -2, 2));

  const own = chanceOf(number, 1 + crankTasks.indexOf(task));
  const { cylinders } = tasks[task];
  const odd = whole(own, cylinders);
  const sense = own() < 0.5 ? -1 : 1;
  const size = own();
  const small = each(() => between(own, -0.08, 0.08));

  const aim = timingAt(geometry, target);
  const rightGaps = each((i) => gap + (small[i] ?? 0) / 20);
  const errors: Readonly<Record<CrankTask, readonly number[]>> = {
    stop: single,
    heights: single,
    disc: single,
    figure: single,
    gap: each(() => common),
    plate: each((i) => common + single[i]!),
    heel: small,
    spacing: each((i) => common + small[i]! + (i === odd ? sense : 0)),
    reading: single,
  };
  const found: Partial<Record<CrankTask, readonly number[]>> = {
    gap: wrongGaps,
    plate: wrongGaps,
    heel: each(() => gap - between(own, 0.08, 0.14)),
  };
  const atRight = opensBefore(cam, gap);
  const middles = errors[task].map((error) => atRight - camPlay / 2 - aim - error);
  const gaps = (found[task] ?? rightGaps).slice(0, cylinders);
  const fires = gaps.map((each, i) => opensBefore(cam, each) - middles[i]! - camPlay / 2);
  const other = {
    stroke: stepped(own, 44, 62, 0.5),
    ratio: between(own, 1.8, 2.1),
    before: stepped(own, 1.6, 2.8, 0.05),
  };

  return {
    number,
    task,
    card: {
      ...told,
      cylinders,
      target,
      gap,
      plateRadius: 46,
      slotRadius: 31.5,
      discDiameter: 160,
      ...(task === 'figure' && {
        given: {
          stroke: other.stroke,
          rodLength: Math.round(other.stroke * other.ratio),
          pinOffset: 0,
          before: other.before,
        },
      }),
      ...(task === 'reading' && {
        written: fires.map((angle, i) => {
          const slip = i === odd ? sense * (0.18 + 0.15 * size) : small[i]! / 8;
          return Number((travelBefore(geometry, angle) + slip).toFixed(2));
        }),
      }),
    },
    hidden: {
      geometry,
      tops: each((i) => (i === 0 ? 0 : (360 / cylinders) * i + pins[i]! - pins[0]!), cylinders),
      rodPlay: task === 'heights' ? play * 2.4 : play,
      camPlay,
      lean: leans,
      stick,
      eye,
      cam,
      middles: middles.slice(0, cylinders),
      gaps,
      screwRate,
      slotGap: task === 'plate' || task === 'spacing' ? slotGap : each(() => 0),
      discZero: discError,
      discOff: task === 'disc' ? 0.7 + 0.7 * size : off,
      discOffAt,
      stopHeight,
      odd,
    },
  };
}

/** Crank degrees before its top at which a cylinder is to fire, as this very engine is. */
export const targetAngle = ({ card, hidden }: Engine): number =>
  card.given ? timingAt(card.given, card.given.before) : timingAt(hidden.geometry, card.target);
