import {
  bobWeight,
  cranks,
  fromMiddle,
  lengthOfSum,
  pistonForce,
  shaking,
  sumOf,
  type Vector,
} from '../../calculators/maths/crank/engine-balance.ts';
import { firingOf, topAngles } from '../../calculators/maths/crank/firing-order.ts';
import { topsByBodies } from './references/crank-bodies.ts';
import { mostBySums } from './references/summed-inertia.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'firing-order';
const RADIANS = Math.PI / 180;

/** Places in mm; pins and leans in degrees the way the crank turns. */
const engine = (pins: readonly number[], leans?: readonly number[], places?: readonly number[]) =>
  pins.map((pin, i) => ({ pin, lean: leans?.[i] ?? 0, place: places?.[i] ?? 100 * i }));

/** m r ω² is 1000 N: 0.4 kg on 25 mm at 316.23 rad/s. */
const speed = (Math.sqrt(1e5) * 60) / (2 * Math.PI);
const pistons = { reciprocatingMass: 400, stroke: 50, rodLength: 100, speed };
const shakes = (throws: ReturnType<typeof engine>, factor = 0) => shaking(throws, pistons, factor);

const mixed = engine([0, 100, 250, 315], [-20, 35, 10, -60], [0, 80, 190, 260]);
const bodies = [
  { name: 'a row of three at 120°', throws: engine([0, 240, 120]) },
  { name: 'a vee of 90° on one pin', throws: engine([0, 0], [-45, 45]) },
  { name: 'four mixed pins and leans', throws: mixed },
] as const;

const bySolver = bodies.flatMap(({ name, throws }): OutsideCheck[] => {
  let tops: readonly number[] | undefined;
  return throws.slice(1).map((_, i) => ({
    topic,
    what: `Top of cylinder ${String(i + 2)} after that of cylinder 1: ${name}`,
    source: 'Crank, rods and pistons as rigid bodies in planck 1.5.0 (npm)',
    kind: 'library',
    unit: '°',
    expected: () => {
      tops ??= topsByBodies(throws, 25, 100);
      return (((tops[i + 1]! - tops[0]!) % 360) + 360) % 360;
    },
    ours: () =>
      topAngles(
        throws.map(({ pin }) => pin),
        throws.map(({ lean }) => lean),
      )[i + 1]!,
    tolerance: 0.1,
    why: 'the solver turns the crank in steps of a seventh of a degree',
  }));
});

const bySums = (
  [
    ['a row of three at 120°', engine([0, 240, 120])],
    ['a row of four at 90°, 1-3-2-4', engine([0, 180, 270, 90])],
    ['a vee of 60° on one pin', engine([0, 0], [-30, 30], [0, 30])],
    ['four mixed pins and leans', mixed],
  ] as const
).flatMap(([name, throws]): OutsideCheck[] =>
  ([1, 2] as const).flatMap((times) =>
    [false, true].map((couple): OutsideCheck => {
      const long = { ...pistons, rodLength: 2500 };
      const arms = fromMiddle(throws);
      const cylinders = throws.map(({ pin, lean }, i) => ({
        pin,
        lean,
        weight: couple ? arms[i]! / 1000 : 1,
      }));
      const key = `${times === 1 ? 'primary' : 'secondary'}${couple ? 'Couple' : ''}` as const;
      return {
        topic,
        what: `Most of the ${times === 1 ? 'primary' : 'secondary'} ${couple ? 'couple' : 'force'} over a turn: ${name}, rod of a hundred throws`,
        source:
          'By hand: accelerations by differences of Pythagoras’ heights, added up at every half degree, split by Fourier sums',
        kind: 'hand-worked',
        unit: couple ? 'N m' : 'N',
        expected: () =>
          mostBySums(cylinders, { mass: 0.4, throwLength: 25, rodLength: 2500, rpm: speed }, times),
        ours: () => shaking(throws, long, 0)[key],
        tolerance: 0.05,
        why: 'differences cost a few figures, and the series leaves out (r / l)³ / 4',
      };
    }),
  ),
);

type Figures = readonly [unit: string, expected: number, ours: () => number];

const published = (
  what: string,
  source: string,
  ...[unit, expected, ours]: Figures
): OutsideCheck => ({
  topic,
  what,
  source,
  kind: 'published',
  unit,
  expected,
  ours,
  tolerance: 1e-6,
});

const worked = (what: string, source: string, ...rest: Figures): OutsideCheck => ({
  ...published(what, `By hand: ${source}`, ...rest),
  kind: 'hand-worked',
});

const three = engine([0, 240, 120]);
const four180 = engine([0, 180, 180, 0]);
const four90 = engine([0, 180, 270, 90]);
const vee = engine([0, 0], [-45, 45], [0, 0]);
const spaced = engine([0, 180, 270, 90], undefined, [0, 200, 400, 600]);
const heavy = { reciprocatingMass: 2000, stroke: 100, rodLength: 200, speed: 2000 };
const boxerFour = engine([0, 180, 180, 0], [0, 180, 180, 0]);
const exudyn =
  'J. Gerstmayr, EXUDYN documentation, example pistonEngine.py (multibody model): boxer of four pistons, cranks 0°, 180°, 180°, 0°, “perfect mass balancing”; repository jgerstmayr/EXUDYN, commit 6b7ecab';

const veePatent =
  'US patent 4,683,849 (year not known), abstract, of which an excerpt was seen: two cylinders at 90°, a weight on the crankshaft counterbalances the primary reciprocating inertia forces, and balance shafts at twice its speed are for the secondary ones';
const veeShafts =
  'US patent 4,683,849 (year not known), abstract and claim 1, of which an excerpt was seen: balance shafts at twice the speed of the crankshaft, in opposite directions, counterbalance the secondary forces; where the angle between two cylinders is 90°, only two of them are required, not four';
const threePatent =
  'US patent 4,565,169 (year not known), abstract as kept by OSTI, record 6069140, and claims 1 to 4, of which an excerpt was seen: a row of three, crank arms at 120°. Equal weights on the crankshaft at the first and third cylinder, square to the crank arm of the second and more than 90° from their own, and a countershaft as fast as the crankshaft, the other way round, with a balancer at either end, balance the inertia of the reciprocating masses and the couple across the crankshaft; page not known';

const turnedBy = ({ x, y }: Vector, degrees: number): Vector => {
  const [cos, sin] = [Math.cos(degrees * RADIANS), Math.sin(degrees * RADIANS)];
  return { x: x * cos + y * sin, y: y * cos - x * sin };
};
const coupleAt = (turned: number) => {
  const { direct, reverse } = cranks(three, 'primary', fromMiddle(three), turned);
  return [sumOf(direct), sumOf(reverse)] as const;
};
/** Direction of the weight at the first cylinder, which has an arm below 0, as its pins are counted. */
const weightAtFirst = (): number => {
  const [{ x, y }] = coupleAt(0);
  return Math.atan2(x, y) / RADIANS;
};
/** Between two directions, 0 to 180°. */
const betweenWays = (a: number, b: number): number =>
  Math.acos(Math.cos((a - b) * RADIANS)) / RADIANS;
/** Most over a turn, mm of one piston: the pistons’ couple with a pair of weights on the crank and one that turns against it. */
const leftByShaft = (): number => {
  const [onCrank, against] = coupleAt(0);
  const left = Array.from({ length: 72 }, (_, i) => {
    const [direct, reverse] = coupleAt(5 * i);
    const [pair, shaft] = [turnedBy(onCrank, 5 * i), turnedBy(against, -5 * i)];
    return Math.hypot(
      direct.x + reverse.x - pair.x - shaft.x,
      direct.y + reverse.y - pair.y - shaft.y,
    );
  });
  return Math.max(...left);
};

// For the rows of four, at 180° and at 90°, no source was found whose passage could be read: textbooks,
// lecture notes, patents and papers that tell of them were found by name alone. What a textbook says of
// them is recalled; figures stand on sums by hand and on the sums of the references.
const textbook =
  'R. L. Norton, Design of Machinery, chapter on multicylinder engines, edition and page not known; recalled from memory';
/** What the textbook's table says of a row of four: of its forces and couples, which are left. */
const fours = [
  ['0°, 180°, 180°, 0°', four180, { secondary: true }],
  [
    '0°, 90°, 270°, 180°, a two-stroke’s, which fires every 90°',
    engine([0, 90, 270, 180]),
    { primaryCouple: true },
  ],
] as const;
const fromTextbook = fours.flatMap(([pins, throws, left]) =>
  (['primary', 'secondary', 'primaryCouple', 'secondaryCouple'] as const).map(
    (name): OutsideCheck => ({
      topic,
      what: `Row of four, pins at ${pins}: whether a ${name.replace('Couple', ' couple')}${name.endsWith('Couple') ? '' : ' force'} is left`,
      source: textbook,
      kind: 'from memory',
      unit: 'yes = 1',
      expected: Number(name in left),
      ours: () => Number(shakes(throws)[name] > 1e-6),
      tolerance: 0,
    }),
  ),
);

export const checks: readonly OutsideCheck[] = [
  ...bySolver,
  ...bySums,
  ...fromTextbook,
  worked(
    'One piston’s force, 400 g, 25 mm throw, 10⁵ rad²/s²',
    '0.4 × 0.025 × 10⁵',
    'N',
    1000,
    () => pistonForce(pistons),
  ),
  worked(
    'Row of three at 120°, primary force',
    '1 + cos 120° + cos 240° = 0',
    'N',
    0,
    () => shakes(three).primary,
  ),
  worked(
    'Row of three at 120°, secondary force',
    '1 + cos 240° + cos 480° = 0',
    'N',
    0,
    () => shakes(three).secondary,
  ),
  worked(
    'Row of three at 120°, 100 mm apart, primary couple',
    'arms −0.1, 0, 0.1 m; the arrows at 0° and 120° differ by √3: 1000 × 0.1 × √3',
    'N m',
    100 * Math.sqrt(3),
    () => shakes(three).primaryCouple,
  ),
  worked(
    'The same with half of each piston balanced on its pin, primary couple left',
    'cos α is half a crank that turns on and half one that turns back; the first is met: 50 × √3',
    'N m',
    50 * Math.sqrt(3),
    () => shakes(three, 0.5).primaryCoupleLeft,
  ),
  worked(
    'The same, secondary couple, rod of four throws',
    'the doubled angles differ as much: 100 × √3 / 4',
    'N m',
    25 * Math.sqrt(3),
    () => shakes(three).secondaryCouple,
  ),
  worked(
    'Row of four at 180°, primary force',
    '1 − 1 − 1 + 1 = 0',
    'N',
    0,
    () => shakes(four180).primary,
  ),
  worked(
    'Row of four at 180°, primary couple',
    '−1.5 + 0.5 − 0.5 + 1.5 = 0',
    'N m',
    0,
    () => shakes(four180).primaryCouple,
  ),
  worked(
    'Row of four at 180°, secondary force, rod of four throws',
    'all four agree: 4 × 1000 / 4',
    'N',
    1000,
    () => shakes(four180).secondary,
  ),
  worked(
    'Row of four at 90°, primary force',
    '(1, 0) + (−1, 0) + (0, −1) + (0, 1) = 0',
    'N',
    0,
    () => shakes(four90).primary,
  ),
  worked(
    'Row of four at 90°, secondary force',
    '1 + 1 − 1 − 1 = 0',
    'N',
    0,
    () => shakes(four90).secondary,
  ),
  worked(
    'Row of four at 90° firing 1-3-2-4, 100 mm apart, primary couple',
    'along −0.15 + 0.05, across −0.05 + 0.15 m: 1000 × 0.1 × √2',
    'N m',
    100 * Math.SQRT2,
    () => shakes(four90).primaryCouple,
  ),
  worked(
    'The same firing 1-3-4-2 by pins at 0°, 90°, 270°, 180°',
    'along −0.15 − 0.15, across −0.05 − 0.05 m: 1000 × √(0.3² + 0.1²)',
    'N m',
    100 * Math.sqrt(10),
    () => shakes(engine([0, 90, 270, 180])).primaryCouple,
  ),
  worked(
    'Vee twin of 90° on one pin, primary force without weights',
    'cos α along one axis and cos (90° − α) = sin α along the other: always 1, turning with the pin',
    'N',
    1000,
    () => shakes(vee).primary,
  ),
  worked(
    'Vee twin of 90° on one pin, half of each piston balanced',
    'a force of 1 that turns with the pin is met by a weight of 2 × ½',
    'N',
    0,
    () => shakes(vee, 0.5).primaryLeft,
  ),
  worked(
    'Vee twin of 90° on one pin, secondary force, rod of four throws',
    'cos 2α and cos (2α − 180°) are opposite, at right angles: √2 × 1000 / 4',
    'N',
    250 * Math.SQRT2,
    () => shakes(vee).secondary,
  ),
  published(
    'Vee twin of 90° on one pin, primary force left by the right weight on the crank',
    veePatent,
    'N',
    0,
    () => shakes(vee, 0.5).primaryLeft,
  ),
  published(
    'The same, how much more of the secondary force one shaft would have to meet than the other',
    veeShafts,
    'pistons',
    0,
    () => {
      const { direct, reverse } = cranks(vee, 'secondary', [1, 1]);
      return lengthOfSum(direct) - lengthOfSum(reverse);
    },
  ),
  published(
    'Vee twin of 90° on one pin, whether there is a secondary force to meet',
    veeShafts,
    'yes = 1',
    1,
    () => Number(shakes(vee).secondary > 1),
  ),
  published(
    'Row of three at 120°: primary force, which two equal weights against each other would not meet',
    threePatent,
    'N',
    0,
    () => shakes(three).primary,
  ),
  published(
    'Row of three at 120°: whether a primary couple is left',
    threePatent,
    'yes = 1',
    1,
    () => Number(shakes(three).primaryCouple > 1),
  ),
  published(
    'Row of three at 120°: from the weight at the first cylinder to the crank arm of the second',
    threePatent,
    '°',
    90,
    () => betweenWays(weightAtFirst(), three[1]!.pin),
  ),
  published(
    'Row of three at 120°: whether the weights at the first and third stand more than 90° from their own arms',
    threePatent,
    'yes = 1',
    1,
    () =>
      Number(
        betweenWays(weightAtFirst(), three[0]!.pin) > 90 &&
          betweenWays(weightAtFirst() + 180, three[2]!.pin) > 90,
      ),
  ),
  published(
    'Row of three at 120°: most of the primary couple over a turn with those weights and a countershaft',
    threePatent,
    'mm of one piston',
    0,
    leftByShaft,
  ),
  worked(
    'Row of four at 90° firing 1-4-2-3, 2 kg, throw 50 mm, rod 200 mm, 2000 rpm, 0.2 m apart: primary couple',
    'arms −0.3, −0.1, 0.1, 0.3 m at 0°, 180°, 270°, 90° make (−0.2, 0.2) m: × 2 × 0.05 × (200 π / 3)²',
    'N m',
    0.2 * Math.SQRT2 * 0.1 * ((200 * Math.PI) / 3) ** 2,
    () => shaking(spaced, heavy, 0).primaryCouple,
  ),
  worked(
    'The same, secondary couple',
    'at the doubled angles −0.3 − 0.1 − 0.1 − 0.3 = −0.8 m, by a quarter of the force',
    'N m',
    0.2 * 0.1 * ((200 * Math.PI) / 3) ** 2,
    () => shaking(spaced, heavy, 0).secondaryCouple,
  ),
  worked(
    'Single with half of its piston balanced',
    '1 − ½ along, ½ across',
    'N',
    500,
    () => shakes(engine([0]), 0.5).primaryLeft,
  ),
  worked(
    'Weight on a pin of 190 g rotating, 165 g reciprocating, 60 %',
    '190 + 0.6 × 165',
    'g',
    289,
    () => bobWeight(190, 165, 0.6),
  ),
  worked(
    'Second to fire of pins at 0°, 240°, 120°',
    'tops at 0°, −240° = 120° and −120° = 240°',
    'number',
    2,
    () => firingOf(topAngles([0, 240, 120], [0, 0, 0])).order[1]!,
  ),
  worked(
    'Second interval of a vee four of 90°, pins 0°, 0°, 180°, 180°, leans ∓45°',
    'tops at 0°, 90°, 180°, 270°',
    '°',
    90,
    () => firingOf(topAngles([0, 0, 180, 180], [-45, 45, -45, 45])).intervals[1]!,
  ),
  ...(['primary', 'secondary', 'primaryCouple', 'secondaryCouple'] as const).map(
    (name): OutsideCheck => ({
      topic,
      what: `Boxer of four cylinders, ${name.replace('Couple', ' couple')}`,
      source: exudyn,
      kind: 'published',
      unit: name.endsWith('Couple') ? 'N m' : 'N',
      expected: 0,
      ours: () => shakes(boxerFour)[name],
      tolerance: 1e-6,
    }),
  ),
];
