import { Arc, Circle, point, vector } from '@flatten-js/core';
import {
  marksAfter,
  marksBefore,
  offCentreDiscError,
  stretchedDiscError,
  tapeLength,
  tapePlace,
} from '../../calculators/maths/crank/degree-disc.ts';
import { exactAngle } from './references/slider-crank-exact.ts';
import type { OutsideCheck } from './types.ts';

const engine = { stroke: 51, rodLength: 104, pinOffset: 1.5 };
const flatten = '@flatten-js/core 1.6';
const exact = 'mathjs 15.2, big numbers of 64 digits: cosine rule on crank, rod and bore';

const marks = [0.5, 2.2, 13].flatMap((travel): OutsideCheck[] => [
  {
    topic: 'degree-disc',
    what: `Mark for ${travel} mm before the top; stroke 51 mm, rod 104 mm, pin offset 1.5 mm`,
    source: exact,
    kind: 'library',
    unit: '°',
    expected: () => exactAngle(engine, travel, -1),
    ours: () => marksBefore(engine, [travel])[0]!,
    tolerance: 1e-9,
  },
  {
    topic: 'degree-disc',
    what: `Mark for ${travel} mm after the top; stroke 51 mm, rod 104 mm, pin offset 1.5 mm`,
    source: exact,
    kind: 'library',
    unit: '°',
    expected: () => exactAngle(engine, travel, 1),
    ours: () => marksAfter(engine, [travel])[0]!,
    tolerance: 1e-9,
  },
]);

const tape: readonly OutsideCheck[] = [
  {
    topic: 'degree-disc',
    what: 'Length of a tape 0.2 mm thick for a rotor of 96 mm',
    source: `${flatten}: length of a whole circle half a thickness outside the rim`,
    kind: 'library',
    unit: 'mm',
    expected: () => new Arc(point(0, 0), 48.1, 0, 2 * Math.PI, true).length,
    ours: () => tapeLength(96, 0.2),
    tolerance: 1e-10,
  },
  {
    topic: 'degree-disc',
    what: 'Place of 24° on that tape',
    source: `${flatten}: length of an arc half a thickness outside the rim`,
    kind: 'library',
    unit: 'mm',
    expected: () => new Arc(point(0, 0), 48.1, 0, (24 * Math.PI) / 180, true).length,
    ours: () => tapePlace(96, 0.2, 24),
    tolerance: 1e-10,
  },
];

const prints: readonly OutsideCheck[] = [
  {
    topic: 'degree-disc',
    what: 'Worst error of a disc printed 1 % longer across than up',
    source:
      'Largest of 100 000 directions, each drawn on a sheet stretched by 1 % and measured again with Math.atan2',
    kind: 'hand-worked',
    unit: '°',
    expected: () =>
      Array.from({ length: 100_000 }, (_, i) => (i * Math.PI) / 200_000).reduce(
        (worst, angle) =>
          Math.max(worst, angle - Math.atan2(Math.sin(angle), 1.01 * Math.cos(angle))),
        0,
      ) *
      (180 / Math.PI),
    ours: () => stretchedDiscError(101, 100),
    tolerance: 1e-8,
  },
  {
    topic: 'degree-disc',
    what: 'Worst error of a disc read 90 mm out whose centre lies 0.5 mm beside the crank’s',
    source: `${flatten}: angle at the disc’s edge between the two centres, where the line from the crank’s centre stands square to the shift`,
    kind: 'library',
    unit: '°',
    expected: () => {
      const across = new Circle(point(0, 0), 90).intersect(
        new Circle(point(0, 0.5), Math.sqrt(90 ** 2 - 0.5 ** 2)),
      );
      const edge = across[0]!;
      const a = vector(edge, point(0, 0)).angleTo(vector(edge, point(0, 0.5)));
      return Math.min(a, 2 * Math.PI - a) * (180 / Math.PI);
    },
    ours: () => offCentreDiscError(0.5, 90),
    tolerance: 1e-6,
  },
];

export const checks: readonly OutsideCheck[] = [...marks, ...tape, ...prints];
