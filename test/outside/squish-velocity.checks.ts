import { compile, derivative } from 'mathjs';
import {
  meanSquish,
  peakSquish,
  squishVelocityAt,
  type SquishHead,
} from '../../calculators/maths/cylinder/squish-velocity.ts';
import { RUNNING_SUM, runningSum } from './running-sum.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'squish-velocity';

const g = { stroke: 51, rodLength: 104, pinOffset: 0 };
const head: SquishHead = { bore: 52, bowlDiameter: 36, squish: 1.2, clearanceVolume: 15 };
const rpm = 6000;

/**
 * Share of the whole charge that is between band and piston, against the crank angle x in radians
 * before the top: the band's volume over the whole volume, all gas being equally dense.
 */
const gap = '(c + r + l - r * cos(x) - sqrt(l^2 - r^2 * sin(x)^2))';
const inBand = `band * ${gap} / (bore * ${gap} + bowl)`;
const lost = derivative(inBand, 'x').compile();
const height = compile(gap);
const area = (diameter: number) => (Math.PI / 4) * diameter ** 2;

/** Gas leaving the band over the area of the gap round the bowl, m/s. */
function byMassBalance(angleBtdc: number): number {
  const bore = area(head.bore);
  const scope = {
    x: (angleBtdc * Math.PI) / 180,
    r: g.stroke / 2,
    l: g.rodLength,
    c: head.squish,
    bore,
    band: bore - area(head.bowlDiameter),
    bowl: head.clearanceVolume * 1000 - bore * head.squish,
  };
  const perRadian = Number(lost.evaluate(scope));
  const perSecond = (perRadian * rpm * 2 * Math.PI) / 60;
  const high = Number(height.evaluate(scope));
  const volume = bore * high + scope.bowl;
  return (perSecond * volume) / (Math.PI * head.bowlDiameter * high) / 1000;
}

const BALANCE =
  'Balance of mass between squish band and bowl at equal density, differentiated symbolically by mathjs 15.2.0';

export const checks: readonly OutsideCheck[] = [
  ...[3, 8, 12, 30, 80].map((angle): OutsideCheck => ({
    topic,
    what: `squish velocity ${String(angle)}° before the top at 6000 rpm (bore 52, stroke 51, rod 104, bowl 36, squish 1.2 mm, 15 cc)`,
    source: BALANCE,
    kind: 'library',
    unit: 'm/s',
    expected: () => byMassBalance(angle),
    ours: () => squishVelocityAt(g, head, rpm, angle),
    tolerance: 1e-9,
  })),
  {
    topic,
    what: 'largest squish velocity of the same engine',
    source: `${BALANCE}; the largest of 4001 angles from 0° to 40°`,
    kind: 'library',
    unit: 'm/s',
    expected: () =>
      Math.max(...Array.from({ length: 4001 }, (_, index) => byMassBalance(index / 100))),
    ours: () => peakSquish(g, head, rpm).velocity,
    tolerance: 1e-4,
    why: 'the angles are a hundredth of a degree apart',
  },
  {
    topic,
    what: 'mean squish velocity of the same engine from 85° before the top',
    source: `${BALANCE}; summed over the angle by ${RUNNING_SUM}`,
    kind: 'library',
    unit: 'm/s',
    expected: () => runningSum(byMassBalance, 0, 85) / 85,
    ours: () => meanSquish(g, head, rpm, 85),
    tolerance: 1e-6,
  },
];
