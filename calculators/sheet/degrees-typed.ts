import { listed } from '../maths/numeric/listed.ts';
import { fieldUnit, type Ranged } from '../frame/field/field-unit.ts';
import { fixed, withUnit } from '../frame/text/format.ts';
import { numberAndUnit, parse, quote, withoutMarks } from '../frame/field/parse.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { EARLIEST_SPARK } from '../maths/limits/earliest-spark.ts';
import { positionAt, timingAt } from '../maths/plate/plate-setting.ts';
import { sheetFigures } from './figures.ts';
import { crankFigures, sliderCrankOf } from './geometry.ts';
import { attempted, isWithin, signedAmount } from './judge-words.ts';
import type { Engine } from './model.ts';

/** Rods of such engines for their stroke, common practice: the least and the most. */
const RODS = [1.75, 2.25] as const;

/** The degrees of a text that gives the place of the piston by them, where a length is read. */
function degreesIn(text: string): number | undefined {
  if (parse(text, 'mm').kind === 'value') return undefined;
  const read = parse(text, 'deg');
  return read.kind === 'value' ? read.value : undefined;
}

/** The place of the piston at so many degrees, mm; nothing where it comes to no such place. */
function placeAt(engine: Engine, angle: number): number | undefined {
  const crank = sliderCrankOf(engine)!;
  const place = attempted(() => positionAt(crank, angle));
  if (typeof place === 'string') return undefined;
  const back = attempted(() => timingAt(crank, place));
  return typeof back === 'number' && isWithin(back - angle, 1e-6) ? place : undefined;
}

/**
 * What so many degrees are where the place of the piston is a length: the length that they come to, or
 * what gives it, and how they are set where it cannot be known. Nothing where they come to no such place.
 */
function asLength(
  engine: Engine,
  spec: Ranged,
  angle: number,
  lengths: LengthDisplay,
): string | undefined {
  const degrees = (amount: number): string =>
    withUnit(String(Number(fixed(amount, 2))), 'deg').trim();
  const unit = fieldUnit(spec, lengths);
  const show = (place: number): string => signedAmount(place, unit, spec.step!);
  const missing = crankFigures.filter((key) => engine.figures[key] === undefined);
  if (missing.length === 0) {
    const place = placeAt(engine, angle);
    return place === undefined || place < spec.min || place > spec.max
      ? undefined
      : `On the stroke and rod in the sheet ${degrees(angle)} is ${show(place)}: type “${show(place)}”.`;
  }
  const { stroke } = engine.figures;
  const between =
    stroke === undefined
      ? []
      : RODS.map((strokes) =>
          placeAt({ ...engine, figures: { ...engine.figures, rod: strokes * stroke } }, angle),
        );
  const [long, short] = [Math.max(...between.map(Number)), Math.min(...between.map(Number))];
  const about =
    between.length > 0 && between.every((place) => place !== undefined)
      ? ` A rod of ${RODS.join(' to ')} strokes, as most are (common practice), puts it from ${show(short)} to ${show(long)}.`
      : '';
  const labels = listed(missing.map((key) => `“${sheetFigures[key].label}”`));
  const at = `${degrees(Math.abs(angle))} ${angle < 0 ? 'after' : 'before'} it`;
  return `With ${labels} in the sheet the length is offered here; the calculator Piston position turns it too.${about} Without, set the points by a degree disc, zeroed on the true top, to open at ${at}: that needs no rod. Write the degrees in the notes; nothing is judged against them here.`;
}

/** What is said of degrees that were typed where the place of the piston is a length. Nothing of any other text. */
export function ofDegrees(
  engine: Engine,
  spec: Ranged,
  kept: string,
  lengths: LengthDisplay,
): string | undefined {
  const angle = degreesIn(withoutMarks(kept));
  const length = angle === undefined ? undefined : asLength(engine, spec, angle, lengths);
  return length && `${quote(kept)} is an angle, and this box takes a length. ${length}`;
}

/** Further down than this such engines do not fire, common practice, mm. */
export const DEEPEST = 10;

/** What is said of a bare figure that is too large for millimetres: it may be degrees without their sign. */
export function degreesMeant(
  engine: Engine,
  spec: Ranged,
  typed: string,
  lengths: LengthDisplay,
): string | undefined {
  const value = numberAndUnit(typed)?.unit === '' ? Number(typed.replace(',', '.')) : NaN;
  if (!(value >= DEEPEST && value <= EARLIEST_SPARK)) return undefined;
  const length = asLength(engine, spec, value, lengths);
  return length && `Does the note mean degrees? ${length}`;
}

/** What speaks against a bare figure that puts the piston deep: degrees are often noted without their sign. */
export function maybeDegrees(
  engine: Engine,
  spec: Ranged,
  value: number,
  kept: string,
  lengths: LengthDisplay,
): string | undefined {
  const typed = withoutMarks(kept).trim();
  if (value <= DEEPEST || fieldUnit(spec, lengths) !== 'mm' || numberAndUnit(typed)?.unit !== '') {
    return undefined;
  }
  const degrees = degreesMeant(engine, spec, typed, lengths);
  return `Read as ${typed} mm, further down than such engines fire. ${degrees === undefined ? '' : `${degrees} `}If it is millimetres, type “${typed} mm”.`;
}
