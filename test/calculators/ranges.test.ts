import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { seriesKeys } from '../../calculators/frame/gather.ts';
import type {
  AnyCalculator,
  AnyValues,
  Input,
  NumberInput,
} from '../../calculators/frame/types.ts';
import { AIR_TEMPERATURES } from '../../calculators/maths/carburettor/air.ts';
import { LEAST_DISC } from '../../calculators/maths/crank/degree-disc.ts';
import { FUEL_TEMPERATURES, PETROL_DENSITIES } from '../../calculators/maths/fuel/fuel-density.ts';
import { MOST_SWEEP } from '../../calculators/maths/plate/plate-walls.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
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
    // A link is asked nothing: a range without an end reaches thousands.
    const origins = { [member]: 'link' } as const;
    const typed = { ...texts, [member]: String(figure) };
    const { problems } = evaluate(free, typed, { ...reading, origins });
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
  'float-level petrol min': PETROL_DENSITIES.min,
  'float-level petrol max': PETROL_DENSITIES.max,
  'float-level warmth min': FUEL_TEMPERATURES.min,
  'float-level warmth max': FUEL_TEMPERATURES.max,
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

/** What a compute refuses, whose quantities it names; nothing where it takes the figures. */
function refused(calculator: AnyCalculator, values: AnyValues): MathsError | undefined {
  try {
    calculator.compute(values);
    return undefined;
  } catch (error) {
    if (error instanceof MathsError) return error;
    throw error;
  }
}

/** Codes of refusals that hold a figure against the reader's others, and the other's limit is not ours. */
const AGAINST_ANOTHER = new Set([
  'beyond-bottom',
  'exhaust-closes',
  'exhaust-opens',
  'height-out-of-reach',
  'no-metal',
  'offset-too-large',
  'ring-gap',
  'tape-too-thick',
  'thread-pitch',
  'travel-beyond-stroke',
]);

/** The limits that the maths has of its own, by code and quantity: each with the reason for it. */
const NATURAL: Readonly<Record<string, string>> = {
  'out-of-range altitude': 'the standard atmosphere cools evenly between its limits only',
  'out-of-range balanceFactor': 'it is a share',
  'out-of-range coefficient': 'nothing runs faster than in free fall',
  'out-of-range ethanolPercent': 'it is a share',
  'out-of-range humidity': 'it is a share of all that air can hold',
  'out-of-range petrolDensity': 'the standard tells the expansion of petrol in its range only',
  'out-of-range taper': 'the sides of a taper meet before they lie in one line',
  'out-of-range tilt': 'a float on its side shuts nothing',
  'reading-off-disc after': 'a disc has 360°',
  'reading-off-disc before': 'a disc has 360°',
  'share share': 'the current never reaches its final value',
  'slot-out-of-range slotSweep': 'two slots of a quarter each way cut the plate in two',
  'target-out-of-range target': 'angles differ by what they seem within a turn only',
  'tilt-too-large tilt': 'an indicator across the bore follows nothing',
};

/** Temperatures between which a standard or a formula holds, or above which there is any resistance. */
const TEMPERATURES = /^out-of-range temperature /;

/** How many times a figure goes beyond an edge of its range. */
const FAR = [2, 10, 1e3];

/**
 * Limits of the maths beyond the input's own: a figure far outside its range is refused by itself,
 * and not because it does not go with another.
 */
function furtherLimits(calculator: AnyCalculator): string[] {
  const given = states(calculator).map((texts) => evaluate(calculator, texts, reading).values);
  const edges = Object.entries<Input>(calculator.inputs).flatMap(([key, input]) =>
    input.kind === 'number' && input.whole !== true
      ? [input.min, input.max]
          .filter((edge) => Math.abs(edge) > 0 && (edge < 0 || edge === input.max))
          .map((edge) => [key, edge] as const)
      : [],
  );
  const said = edges.flatMap(([key, edge]) =>
    given.flatMap((values) =>
      FAR.flatMap((times) => {
        const error = refused(calculator, { ...values, [key]: times * edge });
        if (error?.quantities.length !== 1 || AGAINST_ANOTHER.has(error.code)) return [];
        const name = `${error.code} ${error.quantities[0]!.replace(/^right-/, '')}`;
        return Object.hasOwn(NATURAL, name) ? [] : [`${name} (${key}): ${error.message}`];
      }),
    ),
  );
  return [...new Set(said)].filter((line) => !TEMPERATURES.test(line));
}

/** Small numbers as a sentence writes them. */
const WORDS = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** The figures of a range that its own words say again. */
function saidInWords({ help, why, ...input }: Figure): string[] {
  const words = `${help} ${why}`;
  return [input.min, input.max]
    .filter((figure) => Math.abs(figure) > 2 && Math.abs(figure) !== 360)
    .map((figure) => WORDS[figure] ?? String(figure))
    .filter((text) => new RegExp(`(?<![\\d.])${text}(?!%|[\\d.]\\d|\\d|\\p{L})`, 'u').test(words));
}

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (_, calculator) => {
    it('states the range of each input once', () => {
      expect(twice(calculator)).toEqual([]);
    });

    it('has no second range in the maths', () => {
      expect(furtherLimits(calculator)).toEqual([]);
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

  it('is a limit further out, which no nature sets', () => {
    const limited: AnyCalculator = {
      ...calculator!,
      compute: (values) => {
        if (Number(values['rpm']) > 30_000) {
          throw new MathsError('rpm', ['rpm'], 'The speed must be at most 30 000 rpm.');
        }
        return calculator!.compute(values);
      },
    };
    expect(furtherLimits(limited)).toEqual([
      'rpm rpm (rpm): The speed must be at most 30 000 rpm.',
    ]);
  });
});
