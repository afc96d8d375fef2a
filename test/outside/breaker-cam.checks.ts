import { derivative, evaluate } from 'mathjs';
import {
  dwellAngle,
  dwellPercent,
  gapForDwell,
  liftAt,
  openAngle,
  opensBefore,
  type BreakerCam,
} from '../../calculators/maths/ignition/breaker-cam.ts';
import { normalisedSlope } from '../../calculators/maths/ignition/cam-profile.ts';
import { fitLine, slopeError } from '../../calculators/maths/numeric/line-fit.ts';
import { coverageFactor } from '../../calculators/maths/numeric/student.ts';
import { drawnDwell, drawnLift, drawnOpening } from './references/cam-drawn.ts';
import type { OutsideCheck } from './types.ts';

/** A whole flank and no top: 1 mm of lift in 60 degrees. */
const flank: BreakerCam = {
  lobes: 1,
  speedRatio: 1,
  lift: 1,
  rise: 60,
  top: 0,
  profile: 'cycloidal',
};

const DRAWN =
  '@flatten-js/core 1.6: height of a point of a circle that rolls up a line, from which a cycloid has its name';

const cycloidalSlope = derivative(
  'theta / beta - sin(2 * pi * theta / beta) / (2 * pi)',
  'theta',
).compile();

const cycloidalChecks = [5, 10, 15, 20, 30, 40, 50].flatMap((angle): OutsideCheck[] => [
  {
    topic: 'breaker-cam',
    what: `lift on a cycloidal flank of 1 mm in 60°, ${String(angle)}° up it`,
    source: DRAWN,
    kind: 'library',
    unit: 'mm',
    expected: () => drawnLift(flank, angle),
    ours: () => liftAt(flank, angle - 60),
    tolerance: 1e-12,
  },
  {
    topic: 'breaker-cam',
    what: `slope of a cycloidal flank of 1 mm in 60°, ${String(angle)}° up it`,
    source: 'mathjs 15.2: symbolic derivative of θ/β − sin(2πθ/β)/2π',
    kind: 'library',
    unit: 'mm/°',
    expected: () => Number(cycloidalSlope.evaluate({ theta: angle, beta: 60 })),
    ours: () => (normalisedSlope(flank.profile, angle / flank.rise) * flank.lift) / flank.rise,
    tolerance: 1e-12,
  },
]);

const handbook =
  'H. A. Rothbart (ed.), Cam Design Handbook, McGraw-Hill, 2004, chapter 2, basic curves';

/** Equations of the handbook, with the rise h, the angle θ up it and the whole angle β of the rise. */
const equations = [
  {
    profile: 'harmonic',
    source: `${handbook}: equations 2.50 and 2.51, simple harmonic motion, page 40; worked by mathjs`,
    kind: 'published',
    equation: 'h / 2 * (1 - cos(pi * theta / beta))',
  },
  {
    profile: 'cycloidal',
    source: `${handbook}: equation 2.57, cycloidal motion, page 45; worked by mathjs`,
    kind: 'published',
    equation: 'h * (theta / beta - sin(2 * pi * theta / beta) / (2 * pi))',
  },
  {
    profile: 'uniform',
    source: 'By hand: equal lifts for equal angles, so θ/60 of the lift',
    kind: 'hand-worked',
    equation: 'h * theta / beta',
  },
] as const;

const handbookChecks = equations.flatMap(({ profile, source, kind, equation }) =>
  [7.5, 15, 30, 41, 55].map((angle): OutsideCheck => ({
    topic: 'breaker-cam',
    what: `lift on a ${profile} flank of 1 mm in 60°, ${String(angle)}° up it`,
    source,
    kind,
    unit: 'mm',
    expected: () => Number(evaluate(equation, { h: 1, theta: angle, beta: 60 })),
    ours: () => liftAt({ ...flank, profile }, angle - 60),
    tolerance: 1e-12,
  })),
);

const handWorked: readonly OutsideCheck[] = [
  {
    topic: 'breaker-cam',
    what: 'opening on a uniform flank: lift 0.8 mm in 40°, top 20°, gap 0.3 mm',
    source:
      'By hand: the gap is three eighths of the lift, so the points open three eighths of the rise (15°) below the top, which begins 10° from the middle: 25°',
    kind: 'hand-worked',
    unit: 'cam °',
    expected: 25,
    ours: () =>
      opensBefore(
        { lobes: 2, speedRatio: 1, lift: 0.8, rise: 40, top: 20, profile: 'uniform' },
        0.3,
      ),
    tolerance: 1e-9,
  },
  {
    topic: 'breaker-cam',
    what: 'opening on a harmonic flank: lift 0.8 mm in 60°, no top, gap 0.6 mm',
    source:
      'By hand: a quarter of the lift is left; (1 − cos x)/2 = 1/4 at x = 60°, a third of the way up, so 40° of the 60° remain',
    kind: 'hand-worked',
    unit: 'cam °',
    expected: 40,
    ours: () =>
      opensBefore(
        { lobes: 2, speedRatio: 1, lift: 0.8, rise: 60, top: 0, profile: 'harmonic' },
        0.6,
      ),
    tolerance: 1e-9,
  },
];

/** A cam of `lobes` whose flanks take two fifths of the pitch each and whose top takes a tenth. */
function commonCam(lobes: number): BreakerCam {
  const pitch = 360 / lobes;
  return {
    lobes,
    speedRatio: 0.5,
    lift: 0.6,
    rise: 0.4 * pitch,
    top: 0.1 * pitch,
    profile: 'harmonic',
  };
}

function openFor(lobes: number, dwell: number): number {
  const cam = commonCam(lobes);
  return openAngle(cam, gapForDwell(cam, dwell));
}

function percentFor(lobes: number, dwell: number): number {
  const cam = commonCam(lobes);
  return dwellPercent(cam, gapForDwell(cam, dwell));
}

/** Cams with one lobe, for one set of points to each cylinder, and with two on a half-speed shaft. */
const singles = (['harmonic', 'cycloidal', 'uniform'] as const).flatMap(
  (profile): readonly (readonly [words: string, cam: BreakerCam, gap: number])[] => [
    [
      `one lobe, ${profile}, lift 1 mm in 50°, top 120°, gap 0.35 mm`,
      { lobes: 1, speedRatio: 1, lift: 1, rise: 50, top: 120, profile },
      0.35,
    ],
    [
      `two lobes, ${profile}, lift 0.9 mm in 40°, top 10°, gap 0.4 mm`,
      { lobes: 2, speedRatio: 0.5, lift: 0.9, rise: 40, top: 10, profile },
      0.4,
    ],
  ],
);
const CONSTRUCTED =
  '@flatten-js/core 1.6: flank drawn with turning and rolling circles, the place where it is as high as lift less gap found by halving';

const drawnChecks = singles.flatMap(([words, cam, gap]): OutsideCheck[] => [
  {
    topic: 'breaker-cam',
    what: `opening before the middle of the lobe: ${words}`,
    source: CONSTRUCTED,
    kind: 'library',
    unit: 'cam °',
    expected: () => drawnOpening(cam, gap),
    ours: () => opensBefore(cam, gap),
    tolerance: 1e-9,
  },
  {
    topic: 'breaker-cam',
    what: `dwell: ${words}`,
    source: `${CONSTRUCTED}; the rest of a turn shared by the lobes is the dwell`,
    kind: 'library',
    unit: 'cam °',
    expected: () => drawnDwell(cam, gap),
    ours: () => dwellAngle(cam, gap),
    tolerance: 1e-9,
  },
]);

/** Parts of the 360° shared by the lobes: what is shut of it, and what that is in per cent. */
const dwellChecks: readonly OutsideCheck[] = [
  {
    topic: 'breaker-cam',
    what: 'open angle of a four-lobe cam with 52° dwell',
    source: 'By hand: 360°/4 − 52°',
    kind: 'hand-worked',
    unit: 'cam °',
    expected: 38,
    ours: () => openFor(4, 52),
    tolerance: 1e-9,
  },
  {
    topic: 'breaker-cam',
    what: 'open angle of a six-lobe cam with 35° dwell',
    source: 'By hand: 360°/6 − 35°',
    kind: 'hand-worked',
    unit: 'cam °',
    expected: 25,
    ours: () => openFor(6, 35),
    tolerance: 1e-9,
  },
  ...(
    [
      [6, 35, '35/60', 58.333333],
      [4, 45, '45/90', 50],
      [4, 50, '50/90', 55.555556],
      [2, 100, '100/180', 55.555556],
      [1, 200, '200/360', 55.555556],
    ] as const
  ).map(([lobes, dwell, share, expected]): OutsideCheck => ({
    topic: 'breaker-cam',
    what: `per cent dwell of a cam of ${lobes === 1 ? 'one lobe' : `${lobes} lobes`} with ${dwell}° dwell`,
    source: `By hand: ${share} of the turn from lobe to lobe`,
    kind: 'hand-worked',
    unit: '%',
    expected,
    ours: () => percentFor(lobes, dwell),
    tolerance: 1e-6,
  })),
  {
    topic: 'breaker-cam',
    what: 'dwell of an eight-lobe cam at two thirds of its pitch',
    source:
      'US Navy training course for construction mechanics, chapter 2, Automotive Electrical Circuits and Wiring, text to figure 2-52, year not known: “An eight-cylinder engine requires 30 degrees of dwell”',
    kind: 'published',
    unit: 'cam °',
    expected: 30,
    ours: () => {
      const cam = commonCam(8);
      return dwellAngle(cam, gapForDwell(cam, (360 / 8) * (2 / 3)));
    },
    tolerance: 1e-9,
  },
];

const norrisX = [
  0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9,
  338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0,
  779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
];
const norrisY = [
  0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8,
  339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5,
  778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
];
const norris = () => fitLine(norrisX.map((x, index) => ({ x, y: norrisY[index]! })));
const norrisSource =
  'NIST Statistical Reference Datasets, linear regression, data set “Norris” (36 points), certified value; year not known';

const fitChecks: readonly OutsideCheck[] = [
  ['slope', 1.00211681802045, () => norris().slope, 1e-12],
  ['height at nought', -0.262323073774029, () => norris().intercept, 1e-9],
  ['residual standard deviation', 0.884796396144373, () => norris().residual!, 1e-9],
  [
    'standard error of the slope',
    0.429796848199937e-3,
    () => slopeError(norris(), norris().residual!),
    1e-12,
  ],
].map(([name, expected, ours, tolerance]) => ({
  topic: 'breaker-cam',
  what: `line through readings: ${String(name)}`,
  source: norrisSource,
  kind: 'open data',
  unit: 'as the data',
  expected: expected as number,
  ours: ours as () => number,
  tolerance: tolerance as number,
}));

const studentChecks = [12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306].map(
  (expected, index): OutsideCheck => ({
    topic: 'breaker-cam',
    what: `factor for 95 per cent with ${String(index + 1)} degree${index === 0 ? '' : 's'} of freedom`,
    source:
      'Upper critical values of Student’s t distribution, column 0.025, NIST/SEMATECH e-Handbook of Statistical Methods, 2012, section 1.3.6.7.2',
    kind: 'published',
    unit: '1',
    expected,
    ours: () => coverageFactor(index + 1),
    tolerance: 0.0005,
  }),
);

export const checks: readonly OutsideCheck[] = [
  ...cycloidalChecks,
  ...handbookChecks,
  ...handWorked,
  ...drawnChecks,
  ...dwellChecks,
  ...fitChecks,
  ...studentChecks,
];
