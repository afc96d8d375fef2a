import { bignumber, pi, type BigNumber } from 'mathjs';
import {
  annulus,
  inSeries,
  type TaperedNeedle,
} from '../../calculators/maths/carburettor/needle.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'needle-and-clip';

const JET = 2.7;
const needle: TaperedNeedle = { diameter: 2.5, taper: 1.6, straight: 6 };

/** Simpson's rule on the ring along the length that passes the mouth: the volume of fuel round it. */
function volumeBySimpson(from: number, to: number, steps = 200): number {
  const width = (to - from) / steps;
  let sum = annulus(JET, needle, from) + annulus(JET, needle, to);
  for (let i = 1; i < steps; i += 1) {
    sum += (i % 2 === 1 ? 4 : 2) * annulus(JET, needle, from + i * width);
  }
  return (sum * width) / 3;
}

/** Volume of a frustum of a cone, Euclid's, and of the tube about it. */
function tubeLessFrustum(length: number): number {
  const slope = Math.tan((needle.taper / 2) * (Math.PI / 180));
  const wide = needle.diameter / 2;
  const narrow = wide - length * slope;
  const frustum = (Math.PI * length * (wide * wide + wide * narrow + narrow * narrow)) / 3;
  return Math.PI * (JET / 2) ** 2 * length - frustum;
}

/** The ring as thin rings, 2·π·r·dr, by the midpoint rule, which is exact for it. */
function ringByIntegration(rise: number, rings = 4000): number {
  const slope = Math.tan((needle.taper / 2) * (Math.PI / 180));
  const inner = needle.diameter / 2 - Math.max(0, rise - needle.straight) * slope;
  const width = (JET / 2 - inner) / rings;
  let area = 0;
  for (let i = 0; i < rings; i += 1) area += 2 * Math.PI * (inner + (i + 0.5) * width) * width;
  return area;
}

const big = (value: number): BigNumber => bignumber(value);

export const checks: readonly OutsideCheck[] = [
  ...[5, 12, 20].map((length): OutsideCheck => ({
    topic,
    what: `Volume between a jet of 2.7 mm and ${length} mm of a needle of 2.5 mm tapering by 1.6°`,
    source: 'Solid geometry: tube less frustum, π·h·(R² + R·r + r²)/3',
    kind: 'hand-worked',
    unit: 'mm³',
    expected: () => tubeLessFrustum(length),
    ours: () => volumeBySimpson(needle.straight, needle.straight + length),
    tolerance: 1e-10,
  })),
  ...[0, 6, 10, 25].map((rise): OutsideCheck => ({
    topic,
    what: `Ring between them after a rise of ${rise} mm`,
    source: 'Numerical integration over 4000 thin rings',
    kind: 'hand-worked',
    unit: 'mm²',
    expected: () => ringByIntegration(rise),
    ours: () => annulus(JET, needle, rise),
    tolerance: 1e-11,
  })),
  {
    topic,
    what: 'Ring between a jet of 2.6 mm and a parallel needle of 2.5 mm',
    source: 'mathjs 15.2, big numbers: π/4·(2.6² − 2.5²)',
    kind: 'library',
    unit: 'mm²',
    expected: () => Number(big(2.6).pow(2).minus(big(2.5).pow(2)).times(pi).div(4)),
    ours: () => annulus(2.6, { diameter: 2.5, taper: 0, straight: 0 }, 3),
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'Area that passes as much as 3 mm² and 4 mm² one after the other',
    source: 'By hand: 1/√(1/9 + 1/16) = 12/5',
    kind: 'hand-worked',
    unit: 'mm²',
    expected: 2.4,
    ours: () => inSeries(3, 4),
    tolerance: 1e-14,
  },
];
