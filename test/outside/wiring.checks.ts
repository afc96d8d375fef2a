import { bignumber, lusolve, pow, type BigNumber } from 'mathjs';
import {
  chargeTime,
  finalCurrent,
  meanCurrent,
  type Primary,
} from '../../calculators/maths/ignition/coil-charge.ts';
import { hoursByRule } from '../../calculators/maths/wiring/battery.ts';
import { FUSE_RATINGS } from '../../calculators/maths/wiring/fuse.ts';
import { americanGaugeArea } from '../../calculators/maths/wiring/gauge.ts';
import { settledCurrent, voltsLeft } from '../../calculators/maths/wiring/supply.ts';
import {
  copperResistance,
  greatestResistance,
  STANDARD_WIRES,
  warmth,
} from '../../calculators/maths/wiring/wire.ts';
import { ODE_SOLVER, solvedAt } from './ode.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'wiring';
const IEC_60228 = 'IEC 60228:2004, Conductors of insulated cables';
const BS_7671 = 'BS 7671:2018, Requirements for electrical installations, Appendix 4';

const WIRE_TABLES =
  'Copper Wire Tables, National Bureau of Standards Handbook 100 (1966), Table 5; recalled from memory';

const wire = (area: number) => STANDARD_WIRES.find((each) => each.area === area)!;

/** Greatest resistance at 20 °C of flexible conductors with metal-coated strands. */
const limits: readonly (readonly [area: number, ohms: number])[] = [
  [0.5, 40.1],
  [0.75, 26.7],
  [1, 20],
  [1.5, 13.7],
  [2.5, 8.21],
  [4, 5.09],
  [6, 3.39],
  [10, 1.95],
  [16, 1.24],
];

const resistanceChecks = limits.map(([area, ohms]): OutsideCheck => ({
  topic,
  what: `greatest resistance of 1 km of ${String(area)} mm² at 20 °C`,
  source: `${IEC_60228}, Table 3, class 5, metal-coated wires`,
  kind: 'standard',
  unit: 'ohm',
  expected: ohms,
  ours: () => greatestResistance(wire(area), 1000, 20),
  tolerance: 1e-12,
}));

/** Per ampere and metre of a two-core cable, there and back, at 60 °C. */
const drops: readonly (readonly [area: number, millivolts: number, table: string, last: number])[] =
  [
    [0.5, 93, '4F3B', 0.5],
    [0.75, 62, '4F3B', 0.5],
    [1, 46, '4F3B', 0.5],
    [1.5, 32, '4F3B', 0.5],
    [2.5, 19, '4F3B', 0.5],
    [4, 12, '4F3B', 0.5],
    [6, 7.8, '4F1B', 0.1],
    [10, 4.6, '4F1B', 0.1],
    [16, 2.9, '4F1B', 0.1],
  ];

const dropChecks = drops.map(([area, millivolts, table, last]): OutsideCheck => ({
  topic,
  what: `volts lost by 1 A in 1 m of two-core cable of ${String(area)} mm² at 60 °C`,
  source: `${BS_7671}, Table ${table}, two-core cable, d.c.`,
  kind: 'standard',
  unit: 'mV',
  expected: millivolts,
  ours: () => 1000 * (12 - voltsLeft(12, 1, greatestResistance(wire(area), 2, 60))),
  tolerance: last,
  why:
    last === 0.5
      ? 'the table has whole millivolts'
      : 'the last digit of the table, rounded up in places',
}));

const borneChecks: readonly OutsideCheck[] = [
  ...[
    [4, 30],
    [6, 39],
    [10, 51],
    [16, 73],
  ].map(([area, amperes]): OutsideCheck => ({
    topic,
    what: `current that a flexible cable of ${String(area)} mm² bears in free air at 30 °C`,
    source: `${BS_7671}, Table 4F1A, one two-core cable, d.c., conductor at 60 °C`,
    kind: 'standard',
    unit: 'A',
    expected: amperes!,
    ours: () => wire(area!).bears,
    tolerance: 0,
  })),
  {
    topic,
    what: 'currents that flexible cables bear, 0.5 to 2.5 mm², added up: 3 6 10 16 25',
    source: `${BS_7671}, Table 4F3A, one two-core cable, d.c., conductor at 60 °C; recalled from memory`,
    kind: 'from memory',
    unit: 'A',
    expected: 60,
    ours: () =>
      STANDARD_WIRES.filter(({ area }) => area < 4).reduce((sum, { bears }) => sum + bears, 0),
    tolerance: 0,
  },
];

const factors: readonly (readonly [temperature: number, factor: number])[] = [
  [5, 1.064],
  [20, 1],
  [40, 0.926],
  [60, 0.862],
];

const warmthChecks = factors.map(([temperature, factor]): OutsideCheck => ({
  topic,
  what: `factor that brings a resistance at ${String(temperature)} °C to 20 °C`,
  source: `${IEC_60228}, Annex A, Table A.1`,
  kind: 'standard',
  unit: '1',
  expected: factor,
  ours: () => 1 / warmth(temperature),
  tolerance: 0.003,
  why: 'the table is worked with 0.4 per cent a degree; ours is the exact formula of Annex B',
}));

/** Wires of the American gauge: ohm for 1000 feet at 20 °C. */
const gauges: readonly (readonly [gauge: number, ohms: number])[] = [[10, 0.9989]];

const gaugeChecks = gauges.map(([gauge, ohms]): OutsideCheck => ({
  topic,
  what: `resistance of 1000 ft of copper of AWG ${String(gauge)} at 20 °C`,
  source: WIRE_TABLES,
  kind: 'from memory',
  unit: 'ohm',
  expected: ohms,
  ours: () => copperResistance(304.8, americanGaugeArea(gauge), 20),
  tolerance: 0.0005 * ohms,
  why: 'four digits in the table',
}));

/** Cross-section of solid copper wire, mm², to four digits. */
const sections: readonly (readonly [gauge: number, area: number])[] = [
  [-3, 107.2],
  [0, 53.49],
  [4, 21.15],
  [10, 5.261],
  [12, 3.309],
  [14, 2.081],
  [16, 1.309],
  [18, 0.823],
];

const sectionChecks = sections.map(([gauge, area]): OutsideCheck => ({
  topic,
  what: `cross-section of American gauge ${gauge === -3 ? '0000' : String(gauge)}`,
  source: WIRE_TABLES,
  kind: 'from memory',
  unit: 'mm²',
  expected: area,
  ours: () => americanGaugeArea(gauge),
  tolerance: area * 3e-4,
  why: 'The table rounds each diameter before it is squared.',
}));

interface Circuit {
  readonly volts: number;
  /** Ω of fuse, switch and wire, one after the other. */
  readonly way: readonly number[];
  /** Ω of each coil's branch. */
  readonly coils: readonly number[];
  readonly others: number;
}

/**
 * Current out of the battery by the laws of nodes: one unknown voltage after each resistance of the
 * way, solved as a system of linear equations.
 */
function solvedCircuit({ volts, way, coils, others }: Circuit): number {
  const nodes = way.length;
  const matrix = way.map(() => new Array<number>(nodes).fill(0));
  const right = new Array<number>(nodes).fill(0);
  way.forEach((ohms, node) => {
    matrix[node]![node]! += 1 / ohms;
    if (node === 0) right[0]! += volts / ohms;
    else {
      matrix[node]![node - 1]! -= 1 / ohms;
      matrix[node - 1]![node]! -= 1 / ohms;
      matrix[node - 1]![node - 1]! += 1 / ohms;
    }
  });
  const last = nodes - 1;
  for (const ohms of coils) matrix[last]![last]! += 1 / ohms;
  right[last]! -= others;
  const [[first]] = lusolve(matrix, right) as unknown as [[number]];
  return (volts - first) / way[0]!;
}

const circuits: readonly (readonly [what: string, circuit: Circuit])[] = [
  ['one coil of 4 ohm', { volts: 12, way: [0.02, 0.05, 0.3], coils: [4], others: 0 }],
  [
    'three coils of 1.2 ohm with 0.4 ohm of ballast each, and a lamp of 2 A',
    { volts: 6, way: [0.01, 0.03, 0.08], coils: [1.6, 1.6, 1.6], others: 2 },
  ],
  [
    'six coils of 3 ohm',
    { volts: 12.6, way: [0.005, 0.02, 0.045], coils: Array<number>(6).fill(3), others: 0.5 },
  ],
];

const circuitChecks = circuits.map(([what, circuit]): OutsideCheck => ({
  topic,
  what: `current from ${String(circuit.volts)} V through fuse, switch and wire into ${what}`,
  source: 'Kirchhoff’s law at every node, the linear equations solved by mathjs 15.2.0 (lusolve)',
  kind: 'library',
  unit: 'A',
  expected: () => solvedCircuit(circuit),
  ours: () => {
    const { volts, coils, others, way } = circuit;
    return settledCurrent(
      { volts, coils: coils.length, ohms: coils[0]!, others },
      way.reduce((sum, ohms) => sum + ohms, 0),
    );
  },
  tolerance: 1e-10,
}));

const running: readonly (readonly [
  what: string,
  primary: Primary,
  time: number,
  period: number,
])[] = [
  [
    '12 V, 4 ohm, 8 mH, shut 5.56 of 10 ms',
    { volts: 12, resistance: 4, ballast: 0, inductance: 8 },
    5.56,
    10,
  ],
  [
    '6 V, 1.2 ohm, 0.3 ohm of ballast, 6 mH, shut 2 of 6 ms',
    { volts: 6, resistance: 1.2, ballast: 0.3, inductance: 6 },
    2,
    6,
  ],
  [
    '12 V, 3 ohm, 9 mH, shut 40 of 60 ms',
    { volts: 12, resistance: 3, ballast: 0, inductance: 9 },
    40,
    60,
  ],
];

const meanChecks = running.map(([what, primary, time, period]): OutsideCheck => ({
  topic,
  what: `mean current of a coil, ${what}`,
  source: `L·di/dt = V − R·i and the charge that has flowed, integrated numerically by ${ODE_SOLVER}, over the period`,
  kind: 'library',
  unit: 'A',
  expected: () => {
    const { volts, resistance, ballast, inductance } = primary;
    const slopes = (_: number, [i]: readonly number[]): readonly number[] => [
      (volts - (resistance + ballast) * i!) / inductance,
      i!,
    ];
    return solvedAt(slopes, 0, [0, 0], time)[1]! / period;
  },
  ours: () => meanCurrent(primary, time, period),
  tolerance: 1e-8,
}));

const byHand: readonly OutsideCheck[] = [
  {
    topic,
    what: 'mean current of a coil that fills at once: 12 V, 4 ohm, dwell of 180 of 360°, very slow',
    source: 'By hand: half of the time the full 12/4 = 3 A flow, so 1.5 A in the mean',
    kind: 'hand-worked',
    unit: 'A',
    expected: 1.5,
    ours: () => {
      const primary = { volts: 12, resistance: 4, ballast: 0, inductance: 8 };
      return meanCurrent(primary, chargeTime(180, 1, 0.01), chargeTime(360, 1, 0.01));
    },
    tolerance: 1e-5,
  },
  {
    topic,
    what: 'time of 8 Ah, rated for 10 hours, at sixteen times its rated current, exponent 1.25',
    source: 'By hand: 16 to the power of 1.25 is 2 to the 5th, so a 32nd of 10 hours',
    kind: 'hand-worked',
    unit: 'h',
    expected: 0.3125,
    ours: () => hoursByRule(8, 16 * 0.8, 10, 1.25),
    tolerance: 1e-12,
  },
  ...[
    [9, 3.3, 10, 1.2],
    [14, 9, 20, 1.35],
  ].map(([capacity, current, rated, exponent]): OutsideCheck => ({
    topic,
    what: `time of ${String(capacity)} Ah, rated for ${String(rated)} hours, at ${String(current)} A, exponent ${String(exponent)}`,
    source: 'Peukert’s rule t = H·(C/(I·H))^k in big numbers, mathjs 15.2.0',
    kind: 'library',
    unit: 'h',
    expected: () => {
      const ratio = bignumber(capacity!).div(bignumber(current!).times(rated!));
      return Number((pow(ratio, bignumber(exponent!)) as BigNumber).times(rated!));
    },
    ours: () => hoursByRule(capacity!, current!, rated!, exponent!),
    tolerance: 1e-12,
  })),
  {
    topic,
    what: 'ratings of blade fuses from 1 to 40 A, added up: 1 2 3 4 5 7.5 10 15 20 25 30 35 40',
    source: 'ISO 8820-3:2015, type C (medium), table not known; recalled from memory',
    kind: 'from memory',
    unit: 'A',
    expected: 197.5,
    ours: () => FUSE_RATINGS.reduce((sum, rating) => sum + rating, 0),
    tolerance: 0,
  },
  {
    topic,
    what: 'three coils of 4 ohm at 12 V with their points shut',
    source: 'By hand: 3 × 12/4',
    kind: 'hand-worked',
    unit: 'A',
    expected: 9,
    ours: () => 3 * finalCurrent({ volts: 12, resistance: 4, ballast: 0, inductance: 8 }),
    tolerance: 1e-12,
  },
];

export const checks: readonly OutsideCheck[] = [
  ...resistanceChecks,
  ...dropChecks,
  ...borneChecks,
  ...warmthChecks,
  ...gaugeChecks,
  ...sectionChecks,
  ...circuitChecks,
  ...meanChecks,
  ...byHand,
];
