import { attempt } from '../frame/attempt.ts';
import {
  plainText,
  readFigure,
  type FigureField,
  type ListField,
  type Reading as HowToRead,
} from '../frame/field/fields.ts';
import { doubtOf } from '../frame/field/other-unit.ts';
import { withoutMarks } from '../frame/field/parse.ts';
import { looksLikeSum } from '../frame/field/sums.ts';
import { showIn, shownUnit } from '../frame/text/format.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { sentenceIn } from '../frame/text/sentence.ts';
import { assertGeometry } from '../maths/crank/slider-crank.ts';
import { boxAt, orTooLong, placeOf, type Box, type NumberBox } from './box-places.ts';
import { isTravel, specOf } from './box-specs.ts';
import { knownAt } from './box-usual.ts';
import { maybeDegrees, ofDegrees } from './degrees-typed.ts';
import { readDisc } from './disc-places.ts';
import { figureDoubt } from './figure-doubt.ts';
import { sliderCrankOf } from './geometry.ts';
import { readingsAt } from './log.ts';
import type { Engine } from './model.ts';
import { inFull } from './refused-number.ts';

/** How a typed text is to be read: in which lengths, and by which reader of sums where one is offered. */
export type { HowToRead };

/**
 * Whether a reading box is past doubt: it was read once more and found the same, or what it holds as
 * found has another reading after it.
 */
function isSettled(engine: Engine, { step, moment, index }: Box & { kind: 'reading' }): boolean {
  if (moment === 'found' && typeof engine.readings[step]?.left[index] === 'number') return true;
  const [before, last] = readingsAt(engine, step, index).slice(-2);
  return last?.kind === 'check' && last.value === before!.value;
}

/** Figures that one box holds for all cylinders. */
const OF_ALL: ReadonlySet<string> = new Set(['stroke', 'rod', 'offset']);

/** What a sum comes to, without the rest that binary fractions leave: 0.1 + 0.2 is 0.3. */
const withoutRest = (value: number): number => Number(value.toPrecision(12));

/** The texts in boxes for figures and readings that may be sums and are not read yet; empty where there are none. */
export const waitingSums = ({ unread }: Engine): string =>
  Object.entries(unread)
    .filter(([place, text]) => {
      const kind = boxAt(place)?.kind;
      return (kind === 'figure' || kind === 'reading') && looksLikeSum(withoutMarks(text));
    })
    .map(([, text]) => text)
    .join('\n');

/** What speaks against a stroke, rod or pin offset beside the other two of the sheet, as the calculators say it. */
function crankProblem(
  engine: Engine,
  box: NumberBox,
  value: number | undefined,
  { lengths }: HowToRead,
): string | undefined {
  if (box.kind !== 'figure' || value === undefined) return undefined;
  if (box.key !== 'stroke' && box.key !== 'rod' && box.key !== 'offset') return undefined;
  const crank = sliderCrankOf({ ...engine, figures: { ...engine.figures, [box.key]: value } });
  const said = crank && attempt(() => assertGeometry(crank));
  return said ? sentenceIn(said.why, lengths) : undefined;
}

/** Further apart than this two readings of one crank or rod are hardly of the same, mm. */
const APART = 0.5;

/** What speaks against readings of a figure that all cylinders share, where they are too far apart for one part. */
function apart(
  box: NumberBox,
  { readings }: FigureField,
  lengths: LengthDisplay,
): string | undefined {
  if (box.kind !== 'figure' || !OF_ALL.has(box.key) || readings === undefined) return undefined;
  const by = Math.max(...readings) - Math.min(...readings);
  return by <= APART
    ? undefined
    : `Read as ${String(readings.length)} readings of one part, which are ${showIn(by, shownUnit([by], 'mm', lengths))} apart. If the parts of the cylinders differ, keep a sheet for each; the figure here is one for all.`;
}

/** A figure or a reading as its field reads it: nothing but what the text says, and never what stood there before. */
export function readNumber(
  engine: Engine,
  box: NumberBox,
  text: string,
  how: HowToRead,
): FigureField {
  const field = readPlainly(engine, box, text, how);
  if (box.kind !== 'reading' || box.step !== 'top') return field;
  const spec = { ...field.spec, min: -360, max: 360 };
  const { value: shown } = readFigure(placeOf(box), spec, text, undefined, undefined, how, 'yours');
  const disc = shown === undefined ? undefined : readDisc(engine, box.index, shown);
  if (disc === undefined) return field;
  const { problem, ...rest } = field;
  if (disc.value !== undefined) return { ...rest, value: disc.value, doubt: disc.words };
  return problem === undefined
    ? { ...field, doubt: disc.words }
    : { ...field, problem: `${problem} ${disc.words}` };
}

/** The same in the range of the box alone. */
function readPlainly(engine: Engine, box: NumberBox, text: string, how: HowToRead): FigureField {
  const place = placeOf(box);
  const key = box.kind === 'figure' ? box.key : place;
  const spec = specOf(engine, box);
  // What stands already is written and not typed: nobody is asked what was meant by it.
  const stands =
    box.kind === 'figure'
      ? engine.figures[box.key]
      : engine.readings[box.step]?.[box.moment][box.index];
  const origin = typeof stands === 'number' && text === plainText(stands) ? 'sheet' : 'yours';
  const known = box.kind === 'reading' ? knownAt(engine, box) : spec.usual;
  const likeKnown = { ...spec, ...(known === undefined ? {} : { usual: known }) };
  const { doubt: ofFigure, ...field } = readFigure(
    key,
    likeKnown,
    text,
    undefined,
    undefined,
    how,
    origin,
  );
  const problem =
    field.problem === undefined
      ? origin === 'yours'
        ? crankProblem(engine, box, field.value, how)
        : undefined
      : ((isTravel(box) ? ofDegrees(engine, spec, text, how.lengths) : undefined) ??
        inFull(engine, box, field.problem, text, how));
  const isSum = looksLikeSum(withoutMarks(text));
  const far = (value: number): string | undefined =>
    box.kind === 'reading' && !(value === stands && isSettled(engine, box))
      ? doubtOf(spec, value, text, how.lengths, known)
      : undefined;
  const deep = (value: number): string | undefined =>
    isTravel(box) ? maybeDegrees(engine, spec, value, text, how.lengths) : undefined;
  const atOdds = (value: number): string | undefined => {
    if (box.kind !== 'figure') return undefined;
    const said = figureDoubt(
      { ...engine, figures: { ...engine.figures, [box.key]: value } },
      box.key,
    );
    return said === undefined ? undefined : sentenceIn(said, how.lengths);
  };
  const doubt =
    problem === undefined && field.value !== undefined
      ? (deep(field.value) ??
        (box.kind === 'figure' ? ofFigure : far(field.value)) ??
        apart(box, field, how.lengths) ??
        atOdds(field.value))
      : undefined;
  return {
    ...field,
    ...(doubt === undefined ? {} : { doubt }),
    heldOver: false,
    // A figure of −0 is 0: files have no other.
    value:
      problem !== undefined || field.value === undefined
        ? undefined
        : (isSum ? withoutRest(field.value) : field.value) + 0,
    ...(problem === undefined ? {} : { problem: orTooLong(problem, place, text) }),
  };
}

/** Whether a text stands for nothing, since the page calls it wrong. */
export const isRefused = ({ problem }: FigureField | ListField): boolean => problem !== undefined;
