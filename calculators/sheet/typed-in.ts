import { sheetFigures, type FigureKey } from './figures.ts';
import type { Engine } from './model.ts';
import { steps, type StepId } from './steps.ts';

/** The finest that is read of an indicator: a tenth of a thou, and five thousandths of a millimetre, mm. */
const TENTH_OF_A_THOU = 0.00254;
const METRIC = 0.005;

const isWhole = (value: number, of: number): boolean =>
  Math.abs(value / of - Math.round(value / of)) < 1e-6;

/** Every length that an engine holds, mm. */
function lengthsOf({ figures, readings }: Engine): number[] {
  const own = Object.entries(figures).flatMap(([key, value]) =>
    sheetFigures[key as FigureKey].unit === 'mm' ? [value] : [],
  );
  const read = Object.entries(readings).flatMap(([id, { found, left }]) =>
    steps[id as StepId].reading?.unit === 'mm' ? [...found, ...left] : [],
  );
  return [...own, ...read].filter((value) => value !== null && value !== undefined);
}

/**
 * Whether an engine's lengths were typed in inches: more of them come out even in inches alone than
 * in millimetres alone. A file keeps millimetres and says nothing of it.
 */
export function isTypedInInches(engine: Engine): boolean {
  const lengths = lengthsOf(engine);
  const even = (of: number, not: number): number =>
    lengths.filter((value) => isWhole(value, of) && !isWhole(value, not)).length;
  return even(TENTH_OF_A_THOU, METRIC) > even(METRIC, TENTH_OF_A_THOU);
}
