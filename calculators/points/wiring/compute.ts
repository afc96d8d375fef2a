import { attempt, ifThere } from '../../frame/attempt.ts';
import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import { assertSpeedRatio } from '../../maths/ignition/breaker-cam.ts';
import {
  assertPrimary,
  assertSpeed,
  ballastForCurrent,
  chargeTime,
  currentAfter,
  finalCurrent,
  meanCurrent,
  storedEnergy,
  type Primary,
} from '../../maths/ignition/coil-charge.ts';
import { hoursAt, hoursByRule } from '../../maths/wiring/battery.ts';
import { fuseFor } from '../../maths/wiring/fuse.ts';
import { energyLeft, settledCurrent, voltsLeft } from '../../maths/wiring/supply.ts';
import {
  copperResistance,
  greatestResistance,
  smallestWire,
  STANDARD_WIRES,
  type StandardWire,
} from '../../maths/wiring/wire.ts';
import type { camInputs } from '../cam-inputs.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Inputs = typeof inputs & typeof camInputs;
export type Values = ValuesOf<Inputs>;
export type Computed = ComputedOf<typeof results>;

/** The voltages that are set side by side. */
export const SIDES = [6, 12] as const;

const primaryOf = ({ volts, resistance, ballast, inductance }: Values): Primary => ({
  volts,
  resistance,
  ballast,
  inductance,
});

const ofContacts = (v: Values): number => v.contacts / 1000;

/** All coils with their points shut and nothing lost on the way, A. */
const shutCurrent = (v: Values): number => v.coils * finalCurrent(primaryOf(v));

/** The most that flows in the wire for long, A. */
const mostCurrent = (v: Values): number => v.current ?? shutCurrent(v) + v.others;

interface Way {
  readonly load: number;
  readonly drop: number;
  readonly percent: number;
}

/** What a way of `series` Ω, wire and contacts together, carries and loses. */
function wayOf(v: Values, series: number): Way {
  const { volts, coils, others } = v;
  const ohms = v.resistance + v.ballast;
  const load = v.current ?? settledCurrent({ volts, coils, ohms, others }, series);
  const drop = load * series;
  return { load, drop, percent: (100 * drop) / volts };
}

/** The same with a standard wire at its greatest resistance. */
export const wayThrough = (v: Values, wire: StandardWire): Way =>
  wayOf(v, greatestResistance(wire, v.length, v.temperature) + ofContacts(v));

export const fuseOf = (v: Values): number => fuseFor(mostCurrent(v), v['fuse-load'] / 100);

/** Per cent of the volts that would be lost in the contacts if the wire had no resistance at all. */
export const lostInContacts = (v: Values): number => wayOf(v, ofContacts(v)).percent;

/** The smallest standard wire that the fuse guards and that loses no more than is allowed. */
export const wireFor = (v: Values, fuse: number): StandardWire =>
  smallestWire((wire) => wire.bears >= fuse && wayThrough(v, wire).percent <= v.loss);

/**
 * The same machine at another voltage: coils wound for it with the same energy and the same time to
 * fill, so that ohms and mH go with the square of the volts; lamps of the same watts.
 */
export function atVolts(v: Values, volts: number): Values {
  const times = volts / v.volts;
  return {
    ...v,
    volts,
    resistance: v.resistance * times ** 2,
    ballast: v.ballast * times ** 2,
    inductance: v.inductance * times ** 2,
    current: v.current === undefined ? undefined : v.current / times,
    others: v.others / times,
  };
}

const seriesOf = (v: Values): number =>
  copperResistance(v.length, v.area, v.temperature) + ofContacts(v);

/** Mean current of all coils at `rpm`, A, full voltage. */
export function runningCurrent(v: Values, rpm: number): number {
  const period = chargeTime(360 / v.lobes, v['speed-ratio'], rpm);
  const shut = (period * v['dwell-percent']) / 100;
  return v.coils * meanCurrent(primaryOf(v), shut, period);
}

/** Energy in a coil as its points open at the speed, mJ, with `volts` at the coil. */
function energyWith(v: Values, volts: number): number {
  const primary = { ...primaryOf(v), volts };
  const shut = chargeTime((360 / v.lobes) * (v['dwell-percent'] / 100), v['speed-ratio'], v.rpm);
  return storedEnergy(primary, currentAfter(primary, shut));
}

export function compute(v: Values): Computed {
  const primary = primaryOf(v);
  assertPrimary(primary);
  assertSpeedRatio(v['speed-ratio']);
  [v.rpm, v.idle].forEach(assertSpeed);
  const way = wayOf(v, seriesOf(v));
  const left = voltsLeft(v.volts, way.load, seriesOf(v));
  const fuse = attempt(() => fuseOf(v));
  const running = runningCurrent(v, v.rpm);
  const drawn = running + v.others;
  const part = v.share / 100;
  const standing = shutCurrent(v) + v.others;
  const sizes = STANDARD_WIRES.map((wire) => wayThrough(v, wire));
  const sides = attempt(() =>
    SIDES.map((volts) => {
      const other = atVolts(v, volts);
      return { volts, ...wayOf(other, seriesOf(other)) };
    }),
  );
  const ofSides = (of: (side: Way & { volts: number }) => number) =>
    ifThere(sides, (both) => both.map(of));
  return {
    drop: way.drop,
    wire: attempt(() => ifThere(fuse, (rating) => wireFor(v, rating).area)),
    fuse,
    'drop-percent': way.percent,
    'at-load': left,
    load: way.load,
    'energy-left': energyLeft(left, v.volts),
    energy: energyWith(v, left),
    'shut-current': shutCurrent(v),
    'idle-current': runningCurrent(v, v.idle),
    'coil-current': running,
    hours: part * hoursAt(v.capacity, drawn),
    'hours-by-rule': part * hoursByRule(v.capacity, drawn, v['rated-hours'], v.peukert),
    'left-on': 60 * hoursByRule(v.capacity, standing, v['rated-hours'], v.peukert),
    'ballast-for': ballastForCurrent(primary, v['current-limit']),
    'ballast-heat': v.ballast * finalCurrent(primary) ** 2,
    'size-drop': sizes.map(({ drop }) => drop),
    'size-percent': sizes.map(({ percent }) => percent),
    'size-bears': STANDARD_WIRES.map(({ bears }) => bears),
    'side-current': ofSides(({ load }) => load),
    'side-drop': ofSides(({ drop }) => drop),
    'side-percent': ofSides(({ percent }) => percent),
    'side-energy': ofSides(({ volts, drop }) => energyLeft(volts - drop, volts)),
  };
}
