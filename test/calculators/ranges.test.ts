import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { seriesKeys } from '../../calculators/frame/gather.ts';
import type { AnyCalculator, Input, NumberInput } from '../../calculators/frame/types.ts';
import {
  CARBURETTOR_TILTS,
  GAUGE_READINGS,
} from '../../calculators/maths/carburettor/float-level.ts';
import { AIR_TEMPERATURES } from '../../calculators/maths/carburettor/air.ts';
import { LEAST_DISC } from '../../calculators/maths/crank/degree-disc.ts';
import { FUEL_TEMPERATURES, PETROL_DENSITIES } from '../../calculators/maths/fuel/fuel-density.ts';
import { MOST_SWEEP } from '../../calculators/maths/plate/plate-walls.ts';
import { calculators } from '../../site/all-calculators.ts';
import { reading, someState, spreader, whole } from './states.ts';

type Edge = 'min' | 'max';
type Figure = Exclude<Input, { kind: 'choice' }>;

/** States of a calculator that hold every option of every choice, and some drawn at random. */
function states(calculator: AnyCalculator): Texts[] {
  const options = Object.entries<Input>(calculator.inputs).flatMap(([key, input]) =>
    input.kind === 'choice' ? Object.keys(input.options).map((option) => ({ [key]: option })) : [],
  );
  const next = spreader(19);
  const drawn = [1, 2, 3].flatMap(() => someState(calculator, next) ?? []);
  return [
    ...[{}, ...options].filter((texts) => evaluate(calculator, texts, reading).computed),
    ...drawn.map(whole),
  ];
}

/** The same calculator with an input that takes any figure. */
const withoutRange = (calculator: AnyCalculator, key: string, input: Figure): AnyCalculator => ({
  ...calculator,
  inputs: { ...calculator.inputs, [key]: { ...input, min: -Infinity, max: Infinity } },
});

/** What the maths says against a figure beyond the edge that it takes at the edge; nothing where it takes both. */
function saidTwice(
  calculator: AnyCalculator,
  texts: Texts,
  [key, input]: readonly [string, Figure],
  edge: Edge,
): string | undefined {
  const free = withoutRange(calculator, key, input);
  const member = input.kind === 'series' ? seriesKeys(key, 1, input.first)[0]! : key;
  const against = (figure: number): string | undefined => {
    const { problems } = evaluate(free, { ...texts, [member]: String(figure) }, reading);
    return problems.find(({ key: at }) => at === member)?.sentence;
  };
  const at = input[edge];
  const further = input.whole === true ? 1 : Math.max(1, Math.abs(at)) / 1e5;
  return against(at) === undefined
    ? against(edge === 'max' ? at + further : at - further)
    : undefined;
}

/** Edges that are the nature of the quantity, which the maths cannot go beyond whoever asks. */
function physical(input: Figure, edge: Edge): boolean {
  const at = Math.abs(input[edge]);
  if (at === 0) return edge === 'min';
  if (input.whole === true) return edge === 'min' && at <= 2;
  if (input.unit === '%') return at === 100;
  return input.unit === 'deg' && (at === 180 || at === 360);
}

/** Edges that the maths sets, and the input takes from there: what a formula or a drawing can do. */
const TAKEN: Readonly<Record<string, number>> = {
  'air-and-jet temperature min': AIR_TEMPERATURES.min,
  'air-and-jet temperature max': AIR_TEMPERATURES.max,
  'air-and-jet right-temperature min': AIR_TEMPERATURES.min,
  'air-and-jet right-temperature max': AIR_TEMPERATURES.max,
  'degree-disc outside min': LEAST_DISC,
  'float-level height min': GAUGE_READINGS.min,
  'float-level petrol min': PETROL_DENSITIES.min,
  'float-level petrol max': PETROL_DENSITIES.max,
  'float-level warmth min': FUEL_TEMPERATURES.min,
  'float-level warmth max': FUEL_TEMPERATURES.max,
  'float-level tilt min': CARBURETTOR_TILTS.min,
  'float-level tilt max': CARBURETTOR_TILTS.max,
  'plate-layout slot-sweep max': MOST_SWEEP,
};

/** Edges beyond which the maths refuses for a reason that is not the input's own range. */
const OTHERWISE: Readonly<Record<string, RegExp>> = {
  'jet-set coefficient max': /free fall/,
  'jet-set wanted max': /out of 8/,
  'needle-and-clip clip max': /a needle with 12/,
  'wiring peukert min': /A battery without loss/,
};

const EDGES = ['min', 'max'] as const;

/** What stands twice of a calculator: each edge with what the maths says of it. */
function twice(calculator: AnyCalculator): string[] {
  const given = states(calculator);
  const figures = Object.entries<Input>(calculator.inputs).flatMap(([key, input]) =>
    input.kind === 'choice' ? [] : [[key, input] as const],
  );
  return figures.flatMap((figure) =>
    EDGES.flatMap((edge) => {
      const [key, input] = figure;
      const name = `${calculator.slug} ${key} ${edge}`;
      if (physical(input, edge) || TAKEN[name] === input[edge]) return [];
      const said = given.map((texts) => saidTwice(calculator, texts, figure, edge));
      return said
        .flatMap((sentence) => sentence ?? [])
        .filter((sentence) => OTHERWISE[name]?.test(sentence) !== true)
        .slice(0, 1)
        .map((s) => `${name}: ${s}`);
    }),
  );
}

/** Small numbers as a sentence writes them. */
const WORDS = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** The figures of a range that its own words say again. */
function saidInWords({ help, why, ...input }: Figure): string[] {
  const words = `${help} ${why}`;
  return [input.min, input.max]
    .filter((figure) => Math.abs(figure) > 2 && Math.abs(figure) !== 360)
    .map((figure) => WORDS[figure] ?? String(figure))
    .filter((text) => new RegExp(`(?<![\\d.])${text}(?! %|[\\d.]\\d|\\d|\\p{L})`, 'u').test(words));
}

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (_, calculator) => {
    it('states the range of each input once', () => {
      expect(twice(calculator)).toEqual([]);
    });

    it('says no range again in words', () => {
      const again = Object.entries<Input>(calculator.inputs).flatMap(([key, input]) =>
        input.kind === 'choice' ? [] : saidInWords(input).map((text) => `${key}: ${text}`),
      );
      expect(again).toEqual([]);
    });
  },
);

describe('what is taken for a range that stands twice', () => {
  const [calculator] = calculators.filter(({ slug }) => slug === 'coil-charge');

  it('is an edge that the maths refuses beyond', () => {
    const { resistance } = calculator!.inputs as Readonly<Record<string, NumberInput>>;
    const least = { ...resistance!, min: Number.MIN_VALUE };
    const changed = { ...calculator!, inputs: { ...calculator!.inputs, resistance: least } };
    expect(twice(changed)).toEqual([
      expect.stringMatching(/^coil-charge resistance min: .* above 0/),
    ]);
  });
});
