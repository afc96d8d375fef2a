import { MOST_CYLINDERS } from '../maths/limits/cylinder-count.ts';
import { MOST_COILS } from '../frame/ranges.ts';
import type { SheetFigure } from './figures.ts';

const group = 'What it has';

const howMany = (
  label: string,
  help: string,
  max: number,
  why: string,
): Pick<
  SheetFigure,
  'group' | 'label' | 'help' | 'unit' | 'min' | 'max' | 'why' | 'whole' | 'step'
> => ({
  group,
  label,
  help,
  unit: 'count',
  min: 0,
  max,
  why,
  whole: true,
  step: 1,
});

/** Answers by which steps of the job fall away. */
export const fittedFigures = {
  sets: {
    ...howMany(
      'Sets of points',
      'Empty for one to each cylinder. Fewer where one set fires two cylinders or more at once, with a coil of two leads or a coil for each: gap, timing and plate are then asked for by the set, and its timing is read at the lowest-numbered of its cylinders. All stand on one plate here: where an engine has two, each turns by itself, so keep a sheet for each.',
      MOST_CYLINDERS,
      'a set fires a cylinder at least, and the sheet has boxes for no more',
    ),
    min: 1,
    fills: { 'plate-layout': 'sets', 'plate-setting': 'cylinders' },
    takes: { 'firing-order': 'sets' },
  },
  carburettors: {
    ...howMany(
      'Carburettors',
      'Empty for one to each cylinder. Fewer where one feeds several cylinders: floats, jets, slides and cables are then asked for by the carburettor.',
      MOST_CYLINDERS,
      'a carburettor feeds a cylinder at least, and the sheet has boxes for no more',
    ),
    min: 1,
    fills: { 'slide-balance': 'slides', 'float-level': 'carburettors', 'jet-set': 'wanted' },
  },
  'throttle-slides': howMany(
    'Throttle slides',
    'Empty for one to each carburettor. 0 where a butterfly or a governor rules the air, or nothing but a fixed jet: cutaway, cables and slides are then not asked for.',
    MOST_CYLINDERS,
    'a carburettor has one at the most, and the sheet has boxes for no more',
  ),
  'jet-needles': howMany(
    'Jet needles',
    'Those that hang in a slide by a clip, not the float needles. Empty for one to each carburettor. 0 where there are none: their clips are then not asked for.',
    MOST_CYLINDERS,
    'a carburettor has one at the most, and the sheet has boxes for no more',
  ),
  'pilot-jets': howMany(
    'Pilot jets',
    'Empty for one to each carburettor. 0 where one fixed jet does all: pilot jets are then not asked for.',
    MOST_CYLINDERS,
    'a carburettor has one at the most, and the sheet has boxes for no more',
  ),
  reeds: {
    ...howMany(
      'Reed petals',
      'In the inlet of one cylinder. 0 where the piston or a disc opens it, and then its place is proved instead. The same for all cylinders: keep a sheet for each that differs.',
      24,
      'no inlet of such an engine has more',
    ),
    chooses: { 'port-timing': ['inlet', 'reed'], 'time-area': ['inlet', 'none'] },
  },
  condensers: howMany(
    'Condensers',
    'Those that can be reached, at the points or at the coils. 0 where there are none, or where they are shut up inside another part: they are then not asked for.',
    16,
    'no engine has more than two for each set',
  ),
  'fed-coils': {
    ...howMany(
      'Coils fed from a battery',
      '0 with a magneto that makes its own current: feed and polarity are then not asked for.',
      MOST_COILS,
      'no engine has more than two for each cylinder',
    ),
    fills: { wiring: 'coils' },
  },
} as const satisfies Record<string, SheetFigure>;
