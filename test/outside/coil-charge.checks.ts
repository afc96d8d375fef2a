import { evaluate } from 'mathjs';
import {
  chargeTime,
  currentAfter,
  finalCurrent,
  highestSwing,
  meanHeat,
  speedAtShare,
  storedEnergy,
  type Primary,
} from '../../calculators/maths/ignition/coil-charge.ts';
import { ODE_SOLVER, solvedAlong, solvedAt } from './ode.ts';
import type { OutsideCheck } from './types.ts';

const primaries: readonly (readonly [name: string, primary: Primary])[] = [
  ['6 V, 1.5 ohm, 5 mH', { volts: 6, resistance: 1.5, ballast: 0, inductance: 5 }],
  ['12 V, 4.2 ohm, 9 mH', { volts: 12, resistance: 4.2, ballast: 0, inductance: 9 }],
  [
    '12 V, 1.6 ohm, 1.4 ohm ballast, 6 mH',
    { volts: 12, resistance: 1.6, ballast: 1.4, inductance: 6 },
  ],
];

/**
 * Current, A, heat in the winding and work done on the inductance, mJ, after `time` ms, by
 * integrating L·di/dt = V − R·i, R·i² and v·i, where v is the voltage left for the inductance.
 */
function integrated(
  primary: Primary,
  time: number,
): { current: number; heat: number; stored: number } {
  const { volts, resistance, ballast, inductance } = primary;
  const [current, heat, stored] = solvedAt(
    (_, [i]) => {
      const left = volts - (resistance + ballast) * i!;
      return [left / inductance, resistance * i! ** 2, left * i!];
    },
    0,
    [0, 0, 0],
    time,
  );
  return { current: current!, heat: heat!, stored: stored! };
}

const ode = `Differential equation L·di/dt = V − R·i integrated numerically by ${ODE_SOLVER}`;

const odeChecks = primaries.flatMap(([name, primary]) =>
  [0.5, 2, 8].flatMap((time): OutsideCheck[] => [
    {
      topic: 'coil-charge',
      what: `current after ${String(time)} ms in ${name}`,
      source: ode,
      kind: 'library',
      unit: 'A',
      expected: () => integrated(primary, time).current,
      ours: () => currentAfter(primary, time),
      tolerance: 1e-8,
    },
    {
      topic: 'coil-charge',
      what: `mean heat in the winding, shut ${String(time)} ms in every 10 ms, ${name}`,
      source: ode,
      kind: 'library',
      unit: 'W',
      expected: () => integrated(primary, time).heat / 10,
      ours: () => meanHeat(primary, time, 10),
      tolerance: 1e-8,
    },
    {
      topic: 'coil-charge',
      what: `energy stored after ${String(time)} ms in ${name}`,
      source: `Work v·i done on the inductance, summed along with L·di/dt = V − R·i by ${ODE_SOLVER}`,
      kind: 'library',
      unit: 'mJ',
      expected: () => integrated(primary, time).stored,
      ours: () => storedEnergy(primary, currentAfter(primary, time)),
      tolerance: 1e-8,
    },
  ]),
);

const mathjsChecks = [0.5, 0.75, 0.95].map((share): OutsideCheck => ({
  topic: 'coil-charge',
  what: `speed at which 12 V, 4.2 ohm, 9 mH with 200° dwell reaches ${String(100 * share)} per cent`,
  source:
    'mathjs 15.2.0 with units: time to the share from t = (L/R)·ln(1/(1 − p)), speed from the dwell as a part of a turn',
  kind: 'library',
  unit: 'rpm',
  expected: () =>
    Number(
      evaluate('60 * (200 / 360) / number((9 mH / 4.2 ohm) * log(1 / (1 - p)), s)', {
        p: share,
      }),
    ),
  ours: () =>
    speedAtShare({ volts: 12, resistance: 4.2, ballast: 0, inductance: 9 }, 200, 1, share),
  tolerance: 1e-6,
}));

const SWING_STEPS = 2000;

/** Highest voltage on a condenser of `capacitance` µF that an 8 mH coil swings into from 3 A. */
function integratedSwing(capacitance: number): number {
  const quarter = (Math.PI / 2) * Math.sqrt(8 * capacitance * 1e-3);
  const steps = solvedAlong(
    (_, [current, volts]) => [-volts! / 8, (1000 * current!) / capacitance],
    [3, 0],
    2 * quarter,
    SWING_STEPS,
  );
  return Math.max(...steps.map(([, volts]) => volts!));
}

const swingChecks = [0.1, 0.2, 0.3].map((capacitance): OutsideCheck => ({
  topic: 'coil-charge',
  what: `highest swing of an 8 mH primary broken at 3 A into ${String(capacitance)} µF`,
  source: `Equations of coil and condenser, L·di/dt = −v and C·dv/dt = i, integrated numerically by ${ODE_SOLVER}; the highest of ${SWING_STEPS} steps`,
  kind: 'library',
  unit: 'V',
  expected: () => integratedSwing(capacitance),
  ours: () => highestSwing(3, 8, capacitance),
  tolerance: 0.001,
  why: 'the highest of the steps may lie half a step beside the very top',
}));

const solenoid: Primary = { volts: 12, resistance: 4, ballast: 0, inductance: 6 };
const solenoidSource =
  'Worked example “a solenoid with resistance 4 Ω and inductance 6 mH is used in an automobile ignition circuit”, C. K. Alexander and M. N. O. Sadiku, Fundamentals of Electric Circuits, 4th edition, McGraw-Hill, 2009, section 7.9, automobile ignition circuit';

/** Time constant of a coil that reaches 90 per cent in 4.4 ms, so that a tenth is left. */
const tau = 4.4 / Math.LN10;

const published: readonly OutsideCheck[] = [
  {
    topic: 'coil-charge',
    what: 'final current of 12 V through 4 ohm',
    source: solenoidSource,
    kind: 'published',
    unit: 'A',
    expected: 3,
    ours: () => finalCurrent(solenoid),
    tolerance: 1e-12,
  },
  {
    topic: 'coil-charge',
    what: 'energy of 3 A in 6 mH',
    source: solenoidSource,
    kind: 'published',
    unit: 'mJ',
    expected: 27,
    ours: () => storedEnergy(solenoid, finalCurrent(solenoid)),
    tolerance: 1e-12,
  },
  {
    topic: 'coil-charge',
    what: 'time shut at 60° dwell of a four-lobe, half-speed cam, 5000 rpm',
    source:
      'By hand: the cam turns 2500 times a minute, 24 ms a turn and 6 ms a lobe; 60° of its 90° are two thirds of that',
    kind: 'hand-worked',
    unit: 'ms',
    expected: 4,
    ours: () => chargeTime(60, 0.5, 5000),
    tolerance: 1e-12,
  },
  {
    topic: 'coil-charge',
    what: 'per cent of full current at 5000 rpm for a coil that reaches 90 per cent in 4.4 ms',
    source:
      'By hand: 4.4 ms leave a tenth, so the 4 ms of 60° dwell leave 10^(−4/4.4) = 0.123285 of it',
    kind: 'hand-worked',
    unit: '%',
    expected: 87.6715,
    ours: () => {
      const measured: Primary = { volts: 6, resistance: 1.6, ballast: 0, inductance: 1.6 * tau };
      const current = currentAfter(measured, chargeTime(60, 0.5, 5000));
      return (100 * current) / finalCurrent(measured);
    },
    tolerance: 1e-4,
  },
];

export const checks: readonly OutsideCheck[] = [
  ...published,
  ...odeChecks,
  ...mathjsChecks,
  ...swingChecks,
];
