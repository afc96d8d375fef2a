import { Arc, Circle, Line, point, vector, type Point } from '@flatten-js/core';
import { fraction, type Fraction } from 'mathjs';
import { headPlan, toothPlan } from '../../calculators/maths/plate/dividing.ts';
import { plateBlank } from '../../calculators/maths/plate/plate-blank.ts';
import { chord, holePlace, setAngles } from '../../calculators/maths/plate/plate-layout.ts';
import { offCentre } from '../../calculators/maths/plate/plate-run-out.ts';
import { walls, type Plate } from '../../calculators/maths/plate/plate-walls.ts';
import { holesFor } from '../../calculators/maths/plate/thread-holes.ts';
import type { OutsideCheck } from './types.ts';

const flatten = '@flatten-js/core 1.6';
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A point straight out along X, turned about the centre. */
const turned = (radius: number, degrees: number): Point =>
  point(radius, 0).rotate(radians(degrees), point(0, 0));

const hole = { pitchRadius: 31.5, holeAngle: 17 };
const directions = setAngles(84, [118, 123.5]);

const places = directions.flatMap((direction, s) =>
  (['x', 'y'] as const).map((axis): OutsideCheck => ({
    topic: 'plate-layout',
    what: `${axis.toUpperCase()} of a hole 31.5 mm out and 17° on from its set’s line, set ${s + 1} of three at 84°, 118° on and 123.5° on`,
    source: `${flatten}: a point on X turned about the centre, first by the set’s angle and then by the hole’s`,
    kind: 'library',
    unit: 'mm',
    expected: () => turned(31.5, [84, 202, 325.5][s]!).rotate(radians(17), point(0, 0))[axis],
    ours: () => holePlace(direction, hole)[axis],
    tolerance: 1e-11,
  })),
);

const chords = [90, 118, 123.5, 180].map((between): OutsideCheck => ({
  topic: 'plate-layout',
  what: `Chord between two holes on a pitch circle of 31.5 mm radius, ${between}° apart`,
  source: `${flatten}: distance between the two points`,
  kind: 'library',
  unit: 'mm',
  expected: () => turned(31.5, 20).distanceTo(turned(31.5, 20 + between))[0],
  ours: () => chord(31.5, between),
  tolerance: 1e-11,
}));

const bySurds: readonly OutsideCheck[] = (
  [
    [3, '√3/2', Math.sqrt(3) / 2],
    [4, '√2/2', Math.SQRT1_2],
    [5, '√((5 − √5)/8)', Math.sqrt((5 - Math.sqrt(5)) / 8)],
    [6, '1/2', 0.5],
    [8, '√(2 − √2)/2', Math.sqrt(2 - Math.SQRT2) / 2],
  ] as const
).map(([sets, surd, expected]) => ({
  topic: 'plate-layout',
  what: `Chord for ${sets} equal divisions of a circle of 1 mm diameter`,
  source: `By hand: side of the regular figure of ${sets} sides inscribed in the circle (Euclid, Elements, book IV), ${surd} of its diameter`,
  kind: 'hand-worked',
  unit: 'mm',
  expected,
  ours: () => chord(0.5, 360 / sets),
  tolerance: 1e-15,
}));

const slotted: Plate = {
  outsideDiameter: 92,
  boreDiameter: 27,
  angles: directions,
  holes: [{ ...hole, drill: 3.3 }],
  slots: [{ slotRadius: 38, slotWidth: 4.5, slotAngle: 130, slotSweep: 11 }],
};
const wall = (first: string, second: string): number =>
  walls(slotted).find(({ between }) => between[0] === first && between[1] === second)!.wall;
const round = (radius: number, degrees: number, drill: number): Circle =>
  new Circle(turned(radius, degrees), drill / 2);

const metal: readonly OutsideCheck[] = [
  {
    topic: 'plate-layout',
    what: 'Metal between the same hole, 3.3 mm across, of two sets 118° apart',
    source: `${flatten}: distance between two circles`,
    kind: 'library',
    unit: 'mm',
    expected: () => round(31.5, 101, 3.3).distanceTo(round(31.5, 219, 3.3))[0],
    ours: () => wall('hole 1 of set 1', 'hole 1 of set 2'),
    tolerance: 1e-9,
  },
  {
    topic: 'plate-layout',
    what: 'Metal between a hole and the end of a slot 4.5 mm wide on a radius of 38 mm',
    source: `${flatten}: distance from a point to an arc, less half of each width`,
    kind: 'library',
    unit: 'mm',
    expected: () =>
      turned(31.5, 101).distanceTo(new Arc(point(0, 0), 38, radians(119), radians(141), true))[0] -
      3.3 / 2 -
      4.5 / 2,
    ours: () => wall('hole 1 of set 1', 'slot 1'),
    tolerance: 1e-9,
  },
  {
    topic: 'plate-layout',
    what: 'Metal between a hole and the bore of 27 mm',
    source: `${flatten}: distance between two circles`,
    kind: 'library',
    unit: 'mm',
    expected: () => round(31.5, 101, 3.3).distanceTo(new Circle(point(0, 0), 13.5))[0],
    ours: () => wall('hole 1 of set 1', 'the bore'),
    tolerance: 1e-9,
  },
];

/** The octagon round a circle, from tangents to it at every 45°. */
const tangent = (diameter: number, degrees: number): Line =>
  new Line(
    turned(diameter / 2, degrees),
    vector(Math.cos(radians(degrees)), Math.sin(radians(degrees))),
  );

const blank: readonly OutsideCheck[] = [
  {
    topic: 'plate-layout',
    what: 'Corner sawn off a square of 95 mm for a regular octagon',
    source: `${flatten}: the tangent at 45° to the circle inside the square meets the square’s edge; distance from there to the corner`,
    kind: 'library',
    unit: 'mm',
    expected: () => tangent(95, 45).intersect(tangent(95, 0))[0]!.distanceTo(point(47.5, 47.5))[0],
    ours: () => plateBlank(92, 3).corner,
    tolerance: 1e-11,
  },
  {
    topic: 'plate-layout',
    what: 'Across the corners of that octagon',
    source: `${flatten}: twice the distance of that corner from the centre`,
    kind: 'library',
    unit: 'mm',
    expected: () => 2 * tangent(95, 45).intersect(tangent(95, 0))[0]!.distanceTo(point(0, 0))[0],
    ours: () => plateBlank(92, 3).octagonSwing,
    tolerance: 1e-11,
  },
];

const head: readonly OutsideCheck[] = [
  ...(
    [
      [3, 18],
      [6, 18],
      [7, 21],
      [8, 17],
    ] as const
  ).flatMap(([sets, circle]): OutsideCheck[] => {
    const angles = Array.from({ length: sets }, (_, i) => (i * 360) / sets);
    const step = () => headPlan(angles, 40, [circle]).settings[1]!;
    const source = `mathjs 15.2, exact fractions: 40 / ${sets} turns, in whole turns and holes of ${circle}`;
    const exact = (): Fraction => fraction(40, sets) as Fraction;
    return [
      {
        topic: 'plate-layout',
        what: `Dividing head of 40 : 1, ${sets} divisions: whole turns`,
        source,
        kind: 'library',
        unit: 'turns',
        expected: () => Number(exact().floor()),
        ours: () => step().turns,
        tolerance: 0,
      },
      {
        topic: 'plate-layout',
        what: `Dividing head of 40 : 1, ${sets} divisions: holes of a circle of ${circle} beyond that`,
        source,
        kind: 'library',
        unit: 'holes',
        expected: () => Number(exact().sub(exact().floor()).mul(circle)),
        ours: () => step().holes,
        tolerance: 0,
      },
    ];
  }),
  {
    topic: 'plate-layout',
    what: 'Second of three sets on a gear of 40 teeth: error at the nearest tooth',
    source: 'By hand: 120° is 13⅓ teeth of 9°; the 13th tooth stands at 117°, 3° short',
    kind: 'hand-worked',
    unit: '°',
    expected: -3,
    ours: () => toothPlan([0, 120], 40)[1]!.error,
    tolerance: 1e-12,
  },
];

const runOut: readonly OutsideCheck[] = [
  {
    topic: 'plate-layout',
    what: 'Greatest shift of the opening with a heel 11 mm out and a plate 0.05 mm off centre',
    source: `${flatten}: the circle of 0.05 mm about the heel meets the circle on the line from the cam’s centre to the heel as diameter, where a tangent from the centre touches`,
    kind: 'library',
    unit: '°',
    expected: () => {
      const reach = new Circle(point(11, 0), 0.05);
      const [touch] = reach.intersect(new Circle(point(5.5, 0), 5.5));
      return (Math.abs(Math.atan2(touch!.y, touch!.x)) * 180) / Math.PI;
    },
    ours: () => offCentre(0.06, 0.04, 11).angleShift,
    tolerance: 1e-9,
  },
];

const tapping: Readonly<Record<string, number>> = {
  M2: 1.6,
  'M2.5': 2.05,
  M3: 2.5,
  M4: 3.3,
  M5: 4.2,
  M6: 5,
  M8: 6.8,
};
const clearance: Readonly<Record<string, readonly [number, number, number]>> = {
  M2: [2.2, 2.4, 2.6],
  'M2.5': [2.7, 2.9, 3.1],
  M3: [3.2, 3.4, 3.6],
  M4: [4.3, 4.5, 4.8],
  M5: [5.3, 5.5, 5.8],
  M6: [6.4, 6.6, 7],
  M8: [8.4, 9, 10],
};
const threads: readonly OutsideCheck[] = [
  ...Object.entries(tapping).map(([thread, drill]): OutsideCheck => ({
    topic: 'plate-layout',
    what: `Tapping drill for ${thread}`,
    source:
      'Open data table tap_hole_sizes.csv, column “Soft”, of the library of CAD parts gumyr/cq_warehouse, commit e27bdc3',
    kind: 'open data',
    unit: 'mm',
    expected: drill,
    ours: () => holesFor(thread).tappingDrill,
    tolerance: 0,
  })),
  ...Object.entries(clearance).flatMap(([thread, sizes]) =>
    (['fine', 'medium', 'coarse'] as const).map((series, i): OutsideCheck => ({
      topic: 'plate-layout',
      what: `Clearance hole for ${thread}, ${series} series`,
      source:
        'ISO 273:1979, read from the open data table clearance_hole_sizes.csv of the library of CAD parts gumyr/bd_warehouse, commit 9ce939d',
      kind: 'open data',
      unit: 'mm',
      expected: sizes[i]!,
      ours: () => holesFor(thread)[series],
      tolerance: 0,
    })),
  ),
];

export const checks: readonly OutsideCheck[] = [
  ...places,
  ...chords,
  ...bySurds,
  ...metal,
  ...blank,
  ...head,
  ...runOut,
  ...threads,
];
