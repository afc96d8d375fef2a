import type { Evaluation, Origins, Texts } from './evaluate.ts';
import { mayBeThousands } from './field/thousands.ts';
import type { AnyCalculator, Input } from './types.ts';

interface CarriedOver {
  readonly texts: Texts;
  /** Whose the carried figures are: of whoever gave those from which they come. */
  readonly origins: Origins;
}

/** Digits of a carried figure: more than any reading has, so that there and back gives the same. */
const DIGITS = 6;

/** A figure as a text that is read in one way only: where its field reaches thousands, 1.234 is not. */
function plainly(value: number, input: Input | undefined): string {
  const text = String(Number(value.toPrecision(DIGITS)));
  const reaches = input !== undefined && 'max' in input && input.max >= 1000;
  return reaches && mayBeThousands(text) ? `${text}0` : text;
}

/** What the other fields hold once a choice has taken another option. */
export function carriedOver(
  calculator: AnyCalculator,
  { computed, values, results, fields }: Evaluation,
  key: string,
  option: string,
): CarriedOver {
  const { carry } = calculator;
  const chosen = calculator.inputs[key]?.kind === 'choice' && values[key] !== option;
  const all = carry && computed && chosen ? carry(key, option, values, results) : [];
  const pairs = all.flatMap(({ from, to }) =>
    Object.entries(to).map(([name, value]) => [name, from, value] as const),
  );
  return {
    texts: Object.fromEntries(
      pairs.map(([name, , value]) => [name, plainly(value, calculator.inputs[name])]),
    ),
    origins: Object.fromEntries(
      pairs.flatMap(([name, from]) =>
        fields.filter((field) => field.key === from).map(({ origin }) => [name, origin] as const),
      ),
    ),
  };
}
