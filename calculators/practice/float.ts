/** One float with its tang, gauged upside down, then filled and read in a sight tube. */
import {
  fuelLevel,
  tangRatio,
  type FloatLever,
  type FuelFeed,
} from '../maths/carburettor/float-level.ts';
import { between, chanceOf, eitherWay, stepped } from './chance.ts';
import type { Cost, Reckoning } from './reckoning.ts';
import { tasks } from './tasks.ts';

export interface FloatCard {
  readonly lever: FloatLever;
  readonly feed: FuelFeed;
  /** mm of fuel below the gasket face. */
  readonly level: number;
}

export interface Float {
  readonly number: number;
  readonly card: FloatCard;
  readonly hidden: {
    readonly lever: FloatLever;
    /** Gauge reading as found, mm. */
    readonly height: number;
    /** What is left of a bend once the tang has sprung back. */
    readonly springs: number;
    /** How far gauge and tube may err, either way, mm. */
    readonly gauge: number;
    readonly tube: number;
  };
}

export interface FloatBench {
  /** All bends of the tang together, mm at the needle; more lowers the fuel. */
  readonly bend: number;
  readonly filled: boolean;
  /** Whether it was filled and looked at since the last bend. */
  readonly seen: boolean;
  readonly acts: number;
  readonly said: string;
}

export type FloatAct =
  | { readonly act: 'bend'; readonly by: number }
  | { readonly act: 'fill' }
  | { readonly act: 'drain' };

const MOST_BEND = 3;

export function inventFloat(number: number): Float {
  const chance = chanceOf(number, 41);
  const lever: FloatLever = {
    pivotToNeedle: stepped(chance, 7, 9, 0.5),
    pivotToFloat: stepped(chance, 28, 36, 1),
    floatMass: stepped(chance, 7.5, 10, 0.1),
    floatArea: stepped(chance, 900, 1100, 10),
    floatDepth: stepped(chance, 19, 23, 0.5),
  };
  const feed: FuelFeed = { seat: stepped(chance, 1.6, 2.2, 0.1), head: 300, density: 745 };
  const heavier = chance() < 0.4 ? between(chance, 0.5, 1.6) : 0;
  const hidden = { ...lever, floatMass: lever.floatMass + heavier };
  const level = stepped(chance, 8, 12, 0.5);
  const off = eitherWay(chance, 1.2, 3.5);
  const zero = fuelLevel(hidden, feed, { height: 0, edge: 'far', springDrop: 0 });
  return {
    number,
    card: { lever, feed, level },
    hidden: {
      lever: hidden,
      height: level + off - zero,
      springs: between(chance, 0.8, 0.95),
      gauge: 0.15,
      tube: 0.1,
    },
  };
}

export const setUpFloat = (): FloatBench => ({
  bend: 0,
  filled: false,
  seen: false,
  acts: 0,
  said: '',
});

/** Where the float truly stands, gauged upside down, mm. */
const heightOf = ({ hidden }: Float, { bend }: FloatBench): number =>
  hidden.height + (bend * hidden.springs) / tangRatio(hidden.lever);

/** The level with the chamber filled, mm of fuel below the gasket face. */
export const levelOf = (float: Float, bench: FloatBench): number =>
  fuelLevel(float.hidden.lever, float.card.feed, {
    height: heightOf(float, bench),
    edge: 'far',
    springDrop: 0,
  });

const halves = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(3));
const error = ({ number }: Float, { acts }: FloatBench, stream: number, most: number): number =>
  between(chanceOf(number, 7000 + stream * 977 + acts), -most, most);

/** What the gauge shows, upside down and empty. */
export const gaugeShows = (float: Float, bench: FloatBench): number | undefined =>
  bench.filled
    ? undefined
    : halves(heightOf(float, bench) + error(float, bench, 1, float.hidden.gauge), 0.1);

/** What the sight tube shows, upright and full, mm below the gasket face. */
export const tubeShows = (float: Float, bench: FloatBench): number | undefined =>
  bench.filled
    ? halves(levelOf(float, bench) + error(float, bench, 2, float.hidden.tube), 0.25)
    : undefined;

export function workFloat(bench: FloatBench, act: FloatAct): FloatBench {
  const acts = bench.acts + 1;
  switch (act.act) {
    case 'fill':
      return {
        ...bench,
        acts,
        filled: true,
        seen: true,
        said: 'Upright and filled; the valve has shut.',
      };
    case 'drain':
      return { ...bench, acts, filled: false, said: 'Drained, and turned upside down again.' };
    case 'bend': {
      if (bench.filled) {
        return {
          ...bench,
          said: 'Drain it first: the tang cannot be reached with the chamber full.',
        };
      }
      const bend = Math.min(MOST_BEND, Math.max(-MOST_BEND, bench.bend + act.by));
      return { ...bench, acts, bend: Number(bend.toFixed(4)), seen: false, said: '' };
    }
  }
}

export function reckonFloat(float: Float, bench: FloatBench): Reckoning {
  const { card, hidden } = float;
  const level = levelOf(float, bench);
  const error = level - card.level;
  const right = Math.abs(error) <= tasks.float.tolerance + 1e-9;
  const read = { article: 'float-height-and-fuel-level' };
  const costs: Cost[] = [];
  if (!bench.seen) {
    costs.push({
      cost: Math.abs(error),
      unit: 'mm',
      say: 'It was not filled and looked at after the last bend. A tang springs back, and only the fuel itself tells where it stands.',
      read,
    });
  }
  const soaked = hidden.lever.floatMass - card.lever.floatMass;
  const byGauge = fuelLevel(card.lever, card.feed, {
    height: heightOf(float, bench),
    edge: 'far',
    springDrop: 0,
  });
  if (soaked > 0) {
    costs.push({
      cost: Math.abs(level - byGauge),
      unit: 'mm',
      say: `The float weighs ${soaked.toFixed(1)} g more than the card says: there is fuel in it. It swims deeper, so that the height by gauge alone leaves the fuel too high.`,
      read,
    });
  }
  return {
    lines: [
      { label: 'Fuel below the face', unit: 'mm', truth: card.level, set: level, error, right },
    ],
    gaps: [],
    costs: right ? [] : costs.filter(({ cost }) => cost > 0.1).sort((a, b) => b.cost - a.cost),
    remarks:
      soaked > 0 && right
        ? [
            `The float weighs ${soaked.toFixed(1)} g more than the card says: there is fuel in it. Mend or change it.`,
          ]
        : [],
    right,
    worst: Math.abs(error),
  };
}
