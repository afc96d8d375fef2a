import {
  crankDegreesPerGap,
  dwellAngle,
  gapForDwell,
  openAngle,
} from '../../calculators/maths/ignition/breaker-cam.ts';
import {
  fractionAtLift,
  normalisedLift,
  normalisedSlope,
} from '../../calculators/maths/ignition/cam-profile.ts';
import {
  assertDwell,
  assertPrimary,
  assertSpeed,
  ballastForCurrent,
  highestSwing,
  speedAtShare,
} from '../../calculators/maths/ignition/coil-charge.ts';
import { fitGapReadings } from '../../calculators/maths/ignition/gap-readings.ts';
import {
  runUntilRetard,
  runUntilShut,
  wornPoints,
} from '../../calculators/maths/ignition/heel-wear.ts';
import { fitLine } from '../../calculators/maths/numeric/line-fit.ts';
import {
  arcForTiming,
  settlePlate,
  withinTolerance,
} from '../../calculators/maths/plate/plate-setting.ts';
import { setPlaces } from '../../calculators/maths/plate/set-places.ts';
import { holdsTo } from './limits.ts';

const cam = {
  lobes: 1,
  speedRatio: 1,
  lift: 1,
  rise: 60,
  top: 20,
  profile: 'harmonic',
} as const;
const primary = { volts: 12, resistance: 3, ballast: 0, inductance: 8 };
const wear = { leverRatio: 1, rate: 0.01 };

holdsTo([
  {
    code: 'lobes',
    of: ['lobes'],
    run: (lobes) => dwellAngle({ ...cam, rise: 10, top: 5, lobes }, 0.4),
    takes: [1, 13],
    refuses: [0, 1.5, NaN],
    says: /a whole number of lobes, 1 or more, and .* is not one/,
  },
  {
    code: 'speed-ratio',
    of: ['speedRatio'],
    run: (speedRatio) => dwellAngle({ ...cam, speedRatio }, 0.4),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: /turns of the cam for one turn of the crank, above 0\./,
  },
  {
    code: 'lift',
    of: ['lift'],
    run: (lift) => dwellAngle({ ...cam, lift }, lift / 2),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: /must be above 0 mm: without lift/,
  },
  {
    code: 'rise',
    of: ['rise', 'lobes'],
    run: (rise) => dwellAngle({ ...cam, top: 0, rise }, 0.4),
    takes: [0.001, 180],
    refuses: [0, -1, 180.1, NaN],
    says: /above 0 and at most 180 cam degrees, half the 360° from one lobe/,
  },
  {
    code: 'top',
    of: ['top'],
    run: (top) => dwellAngle({ ...cam, top }, 0.4),
    takes: [0, 240],
    refuses: [-0.1, NaN],
    says: /cannot cover less than 0 cam degrees/,
  },
  {
    code: 'lobes-overlap',
    of: ['rise', 'top', 'lobes'],
    run: (top) => dwellAngle({ ...cam, top }, 0.4),
    takes: [240],
    refuses: [250],
    says: /together take 370 cam degrees, and 1 lobe leaves only 360°/,
  },
  {
    code: 'lobes-overlap',
    of: ['rise', 'top', 'lobes'],
    run: (top) => dwellAngle({ ...cam, lobes: 2, top }, 0.4),
    takes: [60],
    refuses: [61],
    says: /together take 181 cam degrees, and 2 lobes leave only 180°/,
  },
  ...[openAngle, dwellAngle, crankDegreesPerGap].flatMap((run) => [
    {
      code: 'never-open',
      of: ['gap'],
      run: (gap: number) => run(cam, gap),
      takes: [0.001],
      refuses: [0, -0.1, NaN],
      says: /above 0 and below the lift of 1 mm/,
    },
    {
      code: 'never-close',
      of: ['gap', 'lift'],
      run: (gap: number) => run(cam, gap),
      takes: [0.999],
      refuses: [1, 1.1],
      says: /^A gap of 1(\.1)? mm is not less than the lift of 1 mm/,
    },
  ]),
  {
    code: 'lift',
    of: ['lift'],
    run: (lift) => gapForDwell({ ...cam, lift }, 300),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: /must be above 0 mm: without lift/,
  },
  {
    code: 'dwell-beyond-pitch',
    of: ['dwell', 'lobes'],
    run: (dwell) => gapForDwell(cam, dwell),
    takes: [],
    refuses: [360, 400, NaN],
    says: /is not less than the 360° from one lobe to the next/,
  },
  {
    // 360° less two flanks of 60° and a top of 20° leaves 220°; without the top alone, 340°.
    code: 'dwell-out-of-reach',
    of: ['dwell', 'rise', 'top'],
    run: (dwell) => gapForDwell(cam, dwell),
    takes: [220.1, 339.9],
    refuses: [220, 340, 100, 350],
    says: /between 220°, .* and 340°/,
  },
  ...[normalisedLift, normalisedSlope].flatMap((of) =>
    (['harmonic', 'cycloidal', 'uniform'] as const).map((profile) => ({
      code: 'fraction-out-of-range',
      of: ['fraction'],
      run: (fraction: number) => of(profile, fraction),
      takes: [0, 1],
      refuses: [-0.001, 1.001, NaN],
      says: /Give a figure between 0 and 1/,
    })),
  ),
  {
    code: 'fraction-out-of-range',
    of: ['share'],
    run: (share) => fractionAtLift('harmonic', share),
    takes: [0, 1],
    refuses: [-0.001, 1.001, NaN],
    says: /Give a figure between 0 and 1/,
  },
]);

holdsTo([
  {
    code: 'volts',
    of: ['volts'],
    run: (volts) => assertPrimary({ ...primary, volts }),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: /voltage at the coil must be above 0 V\./,
  },
  {
    code: 'resistance',
    of: ['resistance'],
    run: (resistance) => assertPrimary({ ...primary, resistance }),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: /primary winding must be above 0 ohm\./,
  },
  {
    code: 'ballast',
    of: ['ballast'],
    run: (ballast) => assertPrimary({ ...primary, ballast }),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: /ballast resistance must be 0 ohm or more\./,
  },
  {
    code: 'inductance',
    of: ['inductance'],
    run: (inductance) => assertPrimary({ ...primary, inductance }),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: /inductance must be above 0 mH:/,
  },
  {
    code: 'rpm',
    of: ['rpm'],
    run: assertSpeed,
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: /speed of the crank must be above 0 rpm:/,
  },
  {
    code: 'dwell-beyond-pitch',
    of: ['dwellAngle', 'lobes'],
    run: (dwell) => assertDwell(dwell, 1),
    takes: [0.1, 359.9],
    refuses: [0, -1, 360, NaN],
    says: /below 360 cam degrees, the pitch of 1 lobe:/,
  },
  {
    code: 'dwell-beyond-pitch',
    of: ['dwellAngle', 'lobes'],
    run: (dwell) => assertDwell(dwell, 3),
    takes: [119.9],
    refuses: [120],
    says: /below 120 cam degrees, the pitch of 3 lobes:/,
  },
  {
    code: 'share',
    of: ['share'],
    run: (share) => speedAtShare(primary, 100, 1, share),
    takes: [0.001, 0.999],
    refuses: [0, -1, 1, NaN],
    says: /above 0 and below 100 per cent/,
  },
  {
    code: 'current-limit',
    of: ['limit'],
    run: (limit) => ballastForCurrent(primary, limit),
    takes: [0.001],
    refuses: [0, -1, NaN],
    says: /above 0 A/,
  },
  {
    code: 'capacitance',
    of: ['capacitance'],
    run: (capacitance) => highestSwing(3, 8, capacitance),
    takes: [0.001],
    refuses: [0, -1, NaN],
    says: /more than 0 µF/,
  },
]);

holdsTo([
  ...[
    (changed: Partial<typeof wear>) => wornPoints(cam, 0.4, { ...wear, ...changed }, 0),
    (changed: Partial<typeof wear>) => runUntilShut(0.4, { ...wear, ...changed }),
    (changed: Partial<typeof wear>) => runUntilRetard(cam, 0.4, { ...wear, ...changed }, 1),
  ].flatMap((run) => [
    {
      code: 'lever-ratio',
      of: ['leverRatio'],
      run: (leverRatio: number) => run({ leverRatio }),
      takes: [0.001, 1e6],
      refuses: [0, -1, NaN, Infinity],
      says: /lever ratio must be above 0:/,
    },
    {
      code: 'wear-rate',
      of: ['rate'],
      run: (rate: number) => run({ rate }),
      takes: [0, 1],
      refuses: [-0.001, NaN],
      says: /cannot be less than 0/,
    },
  ]),
  {
    code: 'run',
    of: ['run'],
    run: (run) => wornPoints(cam, 0.4, wear, run),
    takes: [0, 39.9],
    refuses: [-0.1, NaN],
    says: /cannot be less than 0/,
  },
  {
    // 0.4 mm at 0.01 mm an hour is gone after 40 hours.
    code: 'worn-shut',
    of: ['run', 'rate'],
    run: (run) => wornPoints(cam, 0.4, wear, run),
    takes: [39.9],
    refuses: [40, 50],
    says: /gone after 40 of the same units/,
  },
  {
    code: 'retard',
    of: ['retard'],
    run: (retard) => runUntilRetard(cam, 0.4, wear, retard),
    takes: [0.001],
    refuses: [0, -1, NaN],
    says: /above 0 crank degrees/,
  },
  {
    code: 'never-open',
    of: ['gap'],
    run: (gap) => wornPoints(cam, gap, wear, 0),
    takes: [0.001],
    refuses: [0, -1],
    says: /the points never open/,
  },
  {
    code: 'never-open',
    of: ['trialGap'],
    run: (gap) =>
      fitGapReadings([
        { gap, angle: 20 },
        { gap: 0.5, angle: 25 },
      ]),
    takes: [0.001],
    refuses: [0, -1, NaN],
    says: /above 0 mm/,
  },
  {
    code: 'too-few-readings',
    of: ['trials'],
    run: (count) =>
      fitGapReadings(
        [
          { gap: 0.3, angle: 20 },
          { gap: 0.5, angle: 25 },
        ].slice(0, count),
      ),
    takes: [2],
    refuses: [0, 1],
    says: /^Two trials at different gaps are the least/,
  },
  {
    code: 'same-gap',
    of: ['trialGap'],
    run: (gap) =>
      fitGapReadings([
        { gap, angle: 20 },
        { gap: 0.5, angle: 25 },
      ]),
    takes: [0.4],
    refuses: [0.5],
    says: /at one gap/,
  },
  {
    code: 'wider-opens-later',
    of: ['trialAngle'],
    run: (angle) =>
      fitGapReadings([
        { gap: 0.3, angle },
        { gap: 0.5, angle: 25 },
      ]),
    takes: [24.9],
    refuses: [25, 26],
    says: /a wider gap opens the points later/,
  },
  {
    code: 'too-few-points',
    of: ['points'],
    run: (count) =>
      fitLine(
        [
          { x: 1, y: 1 },
          { x: 2, y: 1 },
        ].slice(0, count),
      ),
    takes: [2],
    refuses: [0, 1],
    says: /at least two readings/,
  },
  {
    code: 'same-x',
    of: ['points'],
    run: (x) =>
      fitLine([
        { x, y: 1 },
        { x: 2, y: 1 },
      ]),
    takes: [1.999],
    refuses: [2, NaN],
    says: /at one setting/,
  },
]);

holdsTo([
  {
    code: 'cylinders',
    of: ['cylinders'],
    run: (count) => settlePlate(Array<number>(count).fill(20), 20),
    takes: [1, 8],
    refuses: [0, 9],
    says: /from 1 to 8 cylinders, and [09] were given/,
  },
  {
    code: 'found-out-of-range',
    of: ['fired-2'],
    run: (found) => settlePlate([20, found], 20),
    takes: [-90, 180],
    refuses: [-90.1, 180.1, NaN],
    says: /^Cylinder 2 was found at /,
  },
  {
    code: 'target-out-of-range',
    of: ['target'],
    run: (target) => settlePlate([20], target),
    takes: [-90, 180],
    refuses: [-90.1, 180.1, NaN],
    says: /between 180° before top dead centre and 90° after it/,
  },
  {
    code: 'radius',
    of: ['radius'],
    run: (radius) => arcForTiming(5, radius, 1),
    takes: [0.001],
    refuses: [0, -1, NaN],
    says: /above 0 mm/,
  },
  {
    code: 'tolerance',
    of: ['tolerance'],
    run: (tolerance) => withinTolerance([1], tolerance),
    takes: [0.001],
    refuses: [0, -1, NaN],
    says: /above 0 crank degrees/,
  },
  {
    code: 'spacings',
    of: ['spacings'],
    run: (spacing) => setPlaces([180, spacing]),
    takes: [180, 0],
    refuses: [NaN, Infinity],
    says: /at least one/,
  },
  {
    code: 'spacings',
    of: ['spacings'],
    run: (direction) => setPlaces([180, 180], [0, direction]),
    takes: [180, 0],
    refuses: [NaN, Infinity],
    says: /at least one/,
  },
  {
    code: 'spacings',
    of: ['spacings'],
    run: (count) => setPlaces([180, 180].slice(0, count), [0, 180]),
    takes: [2],
    refuses: [0, 1],
    says: /at least one/,
  },
]);
