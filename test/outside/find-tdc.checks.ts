import { Arc, line as lineThrough, point, vector, type Point } from '@flatten-js/core';
import { arg, complex, add, type Complex } from 'mathjs';
import {
  discCorrection,
  dwellAtTop,
  middleShift,
  offsetBias,
  tdcReading,
  tdcSpread,
} from '../../calculators/maths/crank/find-tdc.ts';
import { readingOf } from '../../calculators/maths/crank/indicator-tilt.ts';
import { arcOf } from '../../calculators/maths/crank/rim-arc.ts';
import type { SliderCrank } from '../../calculators/maths/crank/slider-crank.ts';
import { exactAngle } from './references/slider-crank-exact.ts';
import type { OutsideCheck } from './types.ts';

const plain: SliderCrank = { stroke: 51, rodLength: 104, pinOffset: 0 };
const offset: SliderCrank = { stroke: 51, rodLength: 104, pinOffset: 1.5 };
const mathjs = 'mathjs 15.2';
const byCosineRule = `${mathjs}, big numbers of 64 digits: cosine rule on crank, rod and bore`;

/** The direction of the sum of two unit vectors: half-way between two places less than 180° apart. */
function halfWay(before: number, after: number): number {
  const unit = (degrees: number) => complex({ r: 1, phi: (degrees * Math.PI) / 180 } as never);
  const sum = add(unit(before), unit(after)) as Complex;
  return ((arg(sum) * 180) / Math.PI + 360) % 360;
}

const onOneWayDiscs = (
  [
    [310, 64],
    [350, 12],
    [200, 330],
    [12, 95],
  ] as const
).map(([before, after]): OutsideCheck => ({
  topic: 'find-tdc',
  what: `TDC on a disc that counts one way, stopped at ${before}° before and ${after}° after`,
  source: `${mathjs}: direction of the sum of two unit vectors (complex numbers)`,
  kind: 'library',
  unit: '°',
  expected: () => halfWay(before, after),
  ours: () => tdcReading(before, after, 'one-way'),
  tolerance: 1e-11,
}));

const byHand: readonly OutsideCheck[] = [
  {
    topic: 'find-tdc',
    what: 'TDC on a disc that counts both ways from zero, stopped at 36° before and 43° after',
    source: 'By hand: the arc is 79°, its half 39.5°, and 39.5° after the stop at −36° is 3.5°',
    kind: 'hand-worked',
    unit: '°',
    expected: 3.5,
    ours: () => tdcReading(36, 43),
    tolerance: 0,
  },
  {
    topic: 'find-tdc',
    what: 'Correction of the disc for that TDC',
    source: 'By hand: 3.5° too much is taken off every reading',
    kind: 'hand-worked',
    unit: '°',
    expected: -3.5,
    ours: () => discCorrection(tdcReading(36, 43)),
    tolerance: 0,
  },
  {
    topic: 'find-tdc',
    what: 'Spread of the middle for two independent readings of ±0.5°',
    source:
      'JCGM 100:2008, Guide to the expression of uncertainty in measurement, clause 5.1.2: √(0.25² + 0.25²)',
    kind: 'standard',
    unit: '°',
    expected: Math.hypot(0.25, 0.25),
    ours: () => tdcSpread(0.5).independent,
    tolerance: 1e-15,
  },
];

const onTheCrank: readonly OutsideCheck[] = [
  ...[0.01, 0.02, 0.1].map((resolution): OutsideCheck => ({
    topic: 'find-tdc',
    what: `Degrees of crank within ${resolution} mm of the top; stroke 51 mm, rod 104 mm, pin offset 1.5 mm`,
    source: byCosineRule,
    kind: 'library',
    unit: '°',
    expected: () => exactAngle(offset, resolution, 1) + exactAngle(offset, resolution, -1),
    ours: () => dwellAtTop(offset, resolution),
    tolerance: 1e-9,
  })),
  {
    topic: 'find-tdc',
    what: 'TDC found too late where the piston was 0.05 mm lower after the top, 10 mm down; stroke 51 mm, rod 104 mm',
    source: byCosineRule,
    kind: 'library',
    unit: '°',
    expected: () => (exactAngle(plain, 10.05, 1) - exactAngle(plain, 10, -1)) / 2,
    ours: () => middleShift(plain, 10, 0.05),
    tolerance: 1e-9,
  },
  {
    topic: 'find-tdc',
    what: 'Half-way between stops 20 mm down lies after the true top; stroke 51 mm, rod 104 mm, pin offset 1.5 mm',
    source: byCosineRule,
    kind: 'library',
    unit: '°',
    expected: () => (exactAngle(offset, 20, 1) - exactAngle(offset, 20, -1)) / 2,
    ours: () => offsetBias(offset, 20),
    tolerance: 1e-9,
  },
];

/** Where the line of a plunger that leans by `tilt` degrees meets a flat crown at a height. */
function contact(tilt: number, height: number): Point {
  const lean = (tilt * Math.PI) / 180;
  const plunger = lineThrough(point(0, 100), vector(Math.cos(lean), Math.sin(lean)));
  const crown = lineThrough(point(0, height), vector(0, 1));
  return plunger.intersect(crown)[0]!;
}

const onTheBench: readonly OutsideCheck[] = [
  ...[0, 12, 35].map((tilt): OutsideCheck => ({
    topic: 'indicator-tilt',
    what: `Indicator that leans by ${tilt}° while the piston goes from 3 mm to 5.2 mm down`,
    source:
      '@flatten-js/core 1.6: distance between the points where the plunger’s line meets the crown',
    kind: 'library',
    unit: 'mm',
    expected: () => contact(tilt, -3).distanceTo(contact(tilt, -5.2))[0],
    ours: () => readingOf(2.2, tilt),
    tolerance: 1e-12,
  })),
  ...[0.5, 24, 350].map((angle): OutsideCheck => ({
    topic: 'rim-arc',
    what: `Arc of ${angle}° on a rim of 96 mm diameter`,
    source: '@flatten-js/core 1.6: length of an arc',
    kind: 'library',
    unit: 'mm',
    expected: () => new Arc(point(0, 0), 48, 0, (angle * Math.PI) / 180, true).length,
    ours: () => arcOf(96, angle),
    tolerance: 1e-11,
  })),
];

export const checks: readonly OutsideCheck[] = [
  ...byHand,
  ...onOneWayDiscs,
  ...onTheCrank,
  ...onTheBench,
];
