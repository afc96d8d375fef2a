import { plainDecimal } from '../../calculators/maths/numeric/rounding.ts';
import { withUnit } from '../../calculators/frame/text/format.ts';
import { showResult } from '../../calculators/frame/show-result.ts';
import type { AnyValues, ResultSpec, ResultValue } from '../../calculators/frame/types.ts';
import { units, type LengthDisplay } from '../../calculators/frame/text/units.ts';

interface Props {
  readonly value: number;
  readonly spec: ResultSpec;
  readonly spread: number | undefined;
  readonly lengths: LengthDisplay;
  /** Those of the inputs. */
  readonly values: AnyValues;
  /** Name for a cell of a table: `error-1`. */
  readonly name?: string;
  /** Where room is short: the ± is in the figure's own unit, which is then not said again. */
  readonly brief?: boolean;
  /** The figures of its column. */
  readonly column?: ResultValue | undefined;
}

const isWord = (unit: string): boolean => /^\p{L}/u.test(unit);

/** One figure: the unrounded number for programs, the honest digits for people. */
export function Figure({ value, spec, spread, lengths, values, name, column, brief }: Props) {
  const shown = showResult(value, spec, spread, lengths, column);
  const word = spec.word?.(value, values) ?? '';
  // A unit of several words, mm per degree, may break between them.
  const long = units[shown.unit].label.includes(' ') ? 'long' : undefined;
  return (
    <>
      <data value={plainDecimal(value)} data-name={name} class={long}>
        {withUnit(shown.figure, shown.unit)}
      </data>
      {word === '' ? null : <span class="word"> {word}</span>}
      {/* The space stands outside what may not break, so that a narrow screen can break there. */}
      {shown.spread === undefined ? null : ' '}
      {shown.spread === undefined ? null : (
        <span class="spread">
          ± {brief && isWord(shown.unit) ? shown.spread : withUnit(shown.spread, shown.unit)}
        </span>
      )}
    </>
  );
}
