import { plainDecimal } from '../../calculators/maths/rounding.ts';
import { showFigure, withUnit } from '../../calculators/frame/format.ts';
import type { ResultSpec } from '../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';

interface Props {
  readonly value: number;
  readonly spec: ResultSpec;
  readonly spread: number | undefined;
  readonly lengths: LengthDisplay;
  /** Name for a cell of a table: `error-1`. */
  readonly name?: string;
}

/** One figure: the unrounded number for programs, the honest digits for people. */
export function Figure({ value, spec, spread, lengths, name }: Props) {
  const shown = showFigure(value, spec.unit, spec.decimals, lengths, spread, spec);
  const word = spec.word?.(value) ?? '';
  return (
    <>
      <data value={plainDecimal(value)} data-name={name}>
        {withUnit(shown.figure, shown.unit)}
      </data>
      {word === '' ? null : <span class="word"> {word}</span>}
      {/* The space stands outside what may not break, so that a narrow screen can break there. */}
      {shown.spread === undefined ? null : ' '}
      {shown.spread === undefined ? null : (
        <span class="spread">± {withUnit(shown.spread, shown.unit)}</span>
      )}
    </>
  );
}
