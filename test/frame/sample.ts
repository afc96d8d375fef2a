import { h } from 'preact';
import { choice, defineCalculator } from '../../calculators/frame/define.ts';
import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import type { EvaluateOptions } from '../../calculators/frame/gather.ts';
import { absent, type AnyCalculator, type Inputs } from '../../calculators/frame/types.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';

const length = { unit: 'mm', help: 'By rule.', why: 'no sample is otherwise', step: 0.5 } as const;

const inputs = {
  shape: choice({
    label: 'Shape',
    help: 'Seen from above.',
    options: { round: 'Round', square: 'Square', thick: 'Thick, and open' },
    default: 'round',
  }),
  width: { ...length, kind: 'number', label: 'Width', min: 10, max: 200, default: 50, error: 0.1 },
  depth: { ...length, kind: 'optional', label: 'Depth', min: -5, max: 60, error: 0.05 },
  count: {
    kind: 'number',
    label: 'Gaps',
    help: 'How many.',
    unit: 'count',
    min: 1,
    max: 3,
    why: 'there is room for three',
    whole: true,
    step: 1,
    default: 2,
    assumed: true,
  },
  gap: {
    ...length,
    kind: 'series',
    label: 'Gap',
    min: 0,
    max: 5,
    step: 0.01,
    error: 0.02,
    most: 3,
    count: (v) => v['count'] as number,
    member: (i) => `Gap ${String(i)}`,
    default: (i) => 0.3 + i / 10,
    givesWay: (own, v) => {
      const most = (v['corner'] as number | undefined) ?? 5;
      return own <= most ? undefined : most / 2;
    },
  },
  hole: {
    ...length,
    kind: 'series',
    label: 'Hole',
    min: 1,
    max: 9,
    most: 3,
    first: 2,
    count: (v) => (v['count'] as number) - 1,
    member: (i) => `Hole ${String(i + 1)}`,
    default: (i) => i * 20,
  },
  sizes: {
    ...length,
    kind: 'list',
    label: 'Sizes in the drawer',
    min: 0.5,
    max: 9,
    most: 3,
    default: [1, 2.5],
  },
  corner: {
    ...length,
    kind: 'number',
    label: 'Corner',
    min: 0,
    max: 5,
    default: 1,
    error: 0.5,
    givesWay: (own, v) =>
      own <= (v['width'] as number) / 20 ? undefined : (v['width'] as number) / 20,
    when: (v) => v['shape'] === 'square',
  },
} as const satisfies Inputs;

/** A calculator that has every kind of input and result, its sums easy to do in the head. */
export const sample = defineCalculator({
  slug: 'sample',
  title: 'A sample',
  purpose: 'Measures a sample.',
  alsoCalled: [],
  inputs,
  results: {
    area: { label: 'Area', unit: 'mm2', help: 'Of all.', lead: true, decimals: 1 },
    rest: {
      label: 'Width left',
      unit: 'mm',
      help: 'Beside the depth.',
      decimals: 3,
      signed: true,
      spreadFrom: 'play',
      sided: true,
      word: (value) => (value < 0 ? 'short' : 'over'),
    },
    play: { label: 'Play', unit: 'mm', help: 'A ± of its own.', decimals: 2, bare: true },
    share: { label: 'Share', unit: '%', help: 'Of the width.', decimals: 2, table: 'gaps' },
    grid: { label: 'Grid', unit: 'mm', help: 'Of gaps.', decimals: 2, table: 'gaps' },
    loose: { label: 'Loose ones', unit: 'mm', help: 'In no table.', decimals: 1 },
  },
  tables: {
    gaps: {
      caption: 'Gaps',
      rowHeading: 'Gap',
      row: (_values, i, inner) =>
        inner === undefined ? `Gap ${String(i)}` : `Gap ${String(i)} side ${String(inner)}`,
      verdict: {
        heading: 'Fit',
        say: (_values, results, i) =>
          (results['share'] as number[])[i - 1]! > 0.9 ? 'too wide' : '',
      },
    },
  },
  fieldOf: { theWidth: 'width' },
  compute: (v) => {
    if (v.depth !== undefined && v.depth > v.width) {
      throw new MathsError('too-deep', ['depth', 'theWidth'], 'The depth is more than the width.');
    }
    if (v.gap[0]! > 4) throw new MathsError('too-open', ['gap'], 'The first gap is too open.');
    if (v.width === 66) throw new MathsError('odd', [], 'No sample is so wide.');
    if (v.width === 77) throw new TypeError('a fault of the code');
    const filled = { round: 0.75, square: 1, thick: Number.POSITIVE_INFINITY }[v.shape];
    return {
      area: filled * v.width ** 2,
      rest: v.depth === undefined ? absent('Give the depth.') : v.depth - v.width / 2,
      play: 0.3,
      share: v.gap.map((gap) => (100 * gap) / v.width),
      grid: v.gap.map((gap) => [gap, filled === 0.75 ? 2 * gap : NaN]),
      loose: v.sizes,
    };
  },
  restsOn: {
    area: ['shape', 'width'],
    rest: ['width', 'depth'],
    play: [],
    share: ['width', 'gap-N'],
    grid: (v) => (v.shape === 'round' ? ['gap'] : ['shape', 'gap-N']),
    loose: ['sizes'],
  },
  remarks: (v, r, known) => [
    { about: 'the size', say: () => ((r.area as number) > 1000 ? 'It is large.' : undefined) },
    {
      about: 'the second gap',
      quiet: true,
      say: () => (v.gap.length > 1 && v.gap[1]! > 0.45 ? 'The second gap is open.' : undefined),
    },
    {
      about: 'the second share',
      say: () =>
        (known.spreads['share-2'] ?? 0) > 0.03 ? 'The second share is a guess.' : undefined,
    },
    { about: 'the lengths', say: () => (known.lengths === 'in' ? 'Inches it is.' : undefined) },
    ...(v.corner > 4 ? ['Round it off.'] : []),
  ],
  picture: () => h('svg', {}),
  care: 'A sample burns nobody.',
  limits: ['It is a sample.'],
  articles: [],
});

const calculator: AnyCalculator = sample;

export const run = (
  texts: Texts = {},
  options: Partial<EvaluateOptions> = {},
  of: AnyCalculator = calculator,
): Evaluation => evaluate(of, texts, { lengths: 'mm', ...options });

export const fieldNamed = (state: Evaluation, key: string) =>
  [...state.fields, ...state.errorFields].find((field) => field.key === key);
