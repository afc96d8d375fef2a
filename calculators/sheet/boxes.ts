import { readOrder as inOrder } from '../plate/order-reader.ts';
import { attempt } from '../frame/attempt.ts';
import { fieldUnit } from '../frame/field/field-unit.ts';
import { bareFraction, doubtOf, readIn } from '../frame/field/other-unit.ts';
import { IMPLIED, quote, withoutMarks } from '../frame/field/parse.ts';
import { showIn } from '../frame/text/format.ts';
import { sentenceIn } from '../frame/text/sentence.ts';
import { looksLikeSum } from '../frame/field/sums.ts';
import { mayBeThousands } from '../frame/field/thousands.ts';
import type { UnitName } from '../frame/text/units.ts';
import {
  IN_OR_THOU,
  plainText,
  readFigure,
  readList,
  type FieldSpec,
  type FigureField,
  type ListField,
  type Reading as HowToRead,
} from '../frame/field/fields.ts';
import { assertGeometry } from '../maths/crank/slider-crank.ts';
import { maybeDegrees, ofDegrees } from './degrees-typed.ts';
import { readDisc } from './disc-places.ts';
import { figureSpec, isFigureKey, MOST_CYLINDERS, type FigureKey } from './figures.ts';
import { boxTitle } from './firing-order.ts';
import { sliderCrankOf, strokeOf } from './geometry.ts';
import { widest } from './widest.ts';
import { readingsAt } from './log.ts';
import { cylindersOf, entriesOf, LIMITS, setsOf, type Engine } from './model.ts';
import { isStepId, steps, type StepId } from './steps.ts';

/** How a typed text is to be read: in which lengths, and by which reader of sums where one is offered. */
export type { HowToRead };

export type Moment = 'found' | 'left';

export const momentWords: Readonly<Record<Moment, string>> = {
  found: 'as found',
  left: 'as left',
};

/** A place of the sheet that is typed into. */
export type Box =
  | { readonly kind: 'figure'; readonly key: FigureKey }
  | {
      readonly kind: 'reading';
      readonly step: StepId;
      readonly moment: Moment;
      readonly index: number;
    }
  | { readonly kind: 'order' }
  | { readonly kind: 'name' }
  | { readonly kind: 'notes' };

export const ORDER = 'order:firing';
export const NAME = 'text:name';
export const NOTES = 'text:notes';

/** The name under which a box keeps a text that cannot be read. */
export function placeOf(box: Box): string {
  if (box.kind === 'figure') return `figure:${box.key}`;
  if (box.kind === 'reading') return `${box.moment}:${box.step}:${String(box.index + 1)}`;
  return { order: ORDER, name: NAME, notes: NOTES }[box.kind];
}

/** The box of such a name; none where this sheet has no such box. */
export function boxAt(place: string): Box | undefined {
  if (place === ORDER) return { kind: 'order' };
  if (place === NAME) return { kind: 'name' };
  if (place === NOTES) return { kind: 'notes' };
  const [kind, key = '', number = ''] = place.split(':');
  if (kind === 'figure') {
    return isFigureKey(key) && place === `figure:${key}` ? { kind, key } : undefined;
  }
  if ((kind !== 'found' && kind !== 'left') || !isStepId(key) || !steps[key].reading) {
    return undefined;
  }
  const index = Number(number) - 1;
  const box = { kind: 'reading', step: key, moment: kind, index } as const;
  return index >= 0 && index < MOST_CYLINDERS && placeOf(box) === place ? box : undefined;
}

/** Whether a place holds running text, which may be long while it is being written. */
export const isDraft = (place: string): boolean => place === NAME || place === NOTES;

/** The longest text that is kept for a place while it cannot be read, in characters. */
export const longestAt = (place: string): number => (isDraft(place) ? LIMITS.draft : LIMITS.line);

const lengthOf = (text: string): number => [...text].length;

/** Whether a text that cannot be read is short enough to be kept. */
export const canKeep = (place: string, text: string): boolean => lengthOf(text) <= longestAt(place);

/** Whether a text that was refused stands in a box of a step, or at one cylinder of it (counted from 0). */
export const isUnread = ({ unread }: Engine, step: StepId, index?: number): boolean =>
  Object.keys(unread).some((place) => {
    const box = boxAt(place);
    return box?.kind === 'reading' && box.step === step && (index ?? box.index) === box.index;
  });

/** The box of a reading as a field: it may be left empty. */
export function readingSpec(
  engine: Engine,
  step: StepId,
  index: number,
  moment: Moment,
): FieldSpec {
  const reading = steps[step].reading!;
  const { unit, min, max, why, step: size, whole } = reading;
  return {
    label: `${boxTitle(reading, index, engine)}, ${reading.label.toLowerCase()} ${momentWords[moment]}`,
    help: '',
    unit,
    min,
    max,
    why,
    step: size,
    optional: true,
    ...(whole === undefined ? {} : { whole }),
  };
}

/** Whether a place holds a place of the piston, which its stroke bounds. */
export const isTravel = (
  box: { kind: 'figure'; key: FigureKey } | { kind: 'reading'; step: StepId },
): boolean =>
  box.kind === 'figure' ? box.key === 'target' : steps[box.step].reading?.judging === 'timing';

/** The unit of what is typed into a field of the sheet, by the field's name; none where it takes words. */
export function unitTypedAt(name: string): UnitName | undefined {
  if (isFigureKey(name)) return figureSpec(name).unit;
  if (name === 'log:hours') return 'h';
  const box = boxAt(name);
  return box?.kind === 'reading' ? steps[box.step].reading!.unit : undefined;
}

/** The box as a field of this engine: the piston goes no further than the sheet's stroke. */
function specOf(engine: Engine, box: Extract<Box, { kind: 'figure' | 'reading' }>): FieldSpec {
  const spec =
    box.kind === 'figure'
      ? figureSpec(box.key)
      : readingSpec(engine, box.step, box.index, box.moment);
  if (box.kind === 'figure' && (box.key === 'sets' || box.key === 'carburettors')) {
    const cylinders = cylindersOf(engine);
    return {
      ...spec,
      max: cylinders,
      why: `by the sheet it has ${cylinders === 1 ? 'one cylinder' : `${String(cylinders)} cylinders`}`,
    };
  }
  const [limit, why] = (box.kind === 'figure' ? widest[box.key] : undefined) ?? [];
  if (limit !== undefined && why !== undefined) return { ...spec, max: limit, why };
  const most = isTravel(box) ? strokeOf(engine) : undefined;
  if (most === undefined || most >= spec.max) return spec;
  return {
    ...spec,
    min: Math.max(spec.min, -most),
    max: most,
    why: 'by the stroke in the sheet the piston goes no further',
  };
}

/** Adds to a sentence that the text is too long to be kept, where it is. */
function orTooLong(problem: string, place: string, text: string): string {
  return canKeep(place, text)
    ? problem
    : `${problem} It has ${String(lengthOf(text))} characters, and no more than ${String(longestAt(place))} are kept: it stands here only until the page is left.`;
}

/** A kept text as the reader typed it: a sum is kept within brackets, where it was typed bare. */
const typedText = (kept: string): string => {
  const [typed = '', unit] = kept.split(IMPLIED);
  return (unit === undefined ? typed : typed.replace(/^\((.*)\)$/u, '$1')).trim();
};

/** A figure is often some tens of the smallest step that is read of it: where nothing else is known of its size. */
const USUAL_STEPS = 30;

/** What a box is known to read about: what the sheet has it set to, or what was read there. */
function known(
  engine: Engine,
  box: Extract<Box, { kind: 'figure' | 'reading' }>,
): number | undefined {
  if (box.kind === 'figure') return engine.figures[box.key];
  const { target, usual: commonly } = steps[box.step].reading!;
  const entries = entriesOf(engine, box.step).filter((value) => value !== null && value !== 0);
  return [
    target === undefined ? undefined : engine.figures[target],
    commonly,
    // The middle one: a slip among three is far from the other two, and not they from it.
    entries.sort((a, b) => a! - b!)[Math.floor(entries.length / 2)],
  ].find((value): value is number => value !== undefined && value !== null && value !== 0);
}

/**
 * Whether a reading box is past doubt: it was read once more and found the same, or what it holds as
 * found has another reading after it.
 */
function isSettled(engine: Engine, { step, moment, index }: Box & { kind: 'reading' }): boolean {
  if (moment === 'found' && typeof engine.readings[step]?.left[index] === 'number') return true;
  const [before, last] = readingsAt(engine, step, index).slice(-2);
  return last?.kind === 'check' && last.value === before!.value;
}

/** The same, or where nothing is known a guess by how fine it is read. */
const usual = (engine: Engine, box: Extract<Box, { kind: 'figure' | 'reading' }>): number =>
  known(engine, box) ?? specOf(engine, box).step * USUAL_STEPS;

/**
 * What a refused text needs to be told beside why it was refused: that sums are read elsewhere, or in
 * which unit a bare figure is read here, and the unit in which it would be of the usual size.
 */
function inFull(
  engine: Engine,
  box: Extract<Box, { kind: 'figure' | 'reading' }>,
  problem: string,
  kept: string,
  how: HowToRead,
): string {
  const typed = typedText(kept);
  const spec = specOf(engine, box);
  if (how.sums === undefined && looksLikeSum(typed)) {
    return `${quote(typed)} is a sum, and the boxes of the sheet read none: type what it comes to. The calculators read sums.`;
  }
  // These are asked about already, with what to type.
  if (kept.endsWith(IN_OR_THOU) || mayBeThousands(typed) || bareFraction(kept, spec.unit)) {
    return problem;
  }
  const share = box.kind === 'figure' ? shareOf(engine, box.key, spec, typed, how) : undefined;
  if (share !== undefined) return share;
  const read = readIn(spec, kept, usual(engine, box));
  return read === undefined ? problem : `${problem} ${read.sentence}`;
}

const PERCENT = /^(\d+(?:[.,]\d+)?)\s*%$/u;

/** What a tolerance typed per cent comes to, as parts are marked with it; nothing of any other text. */
function shareOf(
  engine: Engine,
  key: FigureKey,
  spec: FieldSpec,
  typed: string,
  { lengths }: HowToRead,
): string | undefined {
  const of = key.replace(/-tolerance$/, '');
  const [, percent] = PERCENT.exec(typed) ?? [];
  if (of === key || !isFigureKey(of) || percent === undefined) return undefined;
  const whole = engine.figures[of];
  const label = figureSpec(of).label.toLowerCase();
  if (whole === undefined) {
    return `${quote(typed)} of what? Give the figure “${label}” first, or type the tolerance in its unit.`;
  }
  const part = (Number(percent.replace(',', '.')) / 100) * Math.abs(whole);
  const type = showIn(part, fieldUnit(spec, lengths));
  return `This box takes a figure and no share: ${quote(typed)} of ${showIn(whole, fieldUnit(figureSpec(of), lengths))} is ${type}. Type “${type}”.`;
}

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
  box: Extract<Box, { kind: 'figure' | 'reading' }>,
  value: number | undefined,
  { lengths }: HowToRead,
): string | undefined {
  if (box.kind !== 'figure' || value === undefined) return undefined;
  if (box.key !== 'stroke' && box.key !== 'rod' && box.key !== 'offset') return undefined;
  const crank = sliderCrankOf({ ...engine, figures: { ...engine.figures, [box.key]: value } });
  const said = crank && attempt(() => assertGeometry(crank));
  return said ? sentenceIn(said.why, lengths) : undefined;
}

/** A figure or a reading as its field reads it: nothing but what the text says, and never what stood there before. */
export function readNumber(
  engine: Engine,
  box: Extract<Box, { kind: 'figure' | 'reading' }>,
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
function readPlainly(
  engine: Engine,
  box: Extract<Box, { kind: 'figure' | 'reading' }>,
  text: string,
  how: HowToRead,
): FigureField {
  const place = placeOf(box);
  const key = box.kind === 'figure' ? box.key : place;
  const spec = specOf(engine, box);
  // What stands already is written and not typed: nobody is asked what was meant by it.
  const stands =
    box.kind === 'figure'
      ? engine.figures[box.key]
      : engine.readings[box.step]?.[box.moment][box.index];
  const origin = typeof stands === 'number' && text === plainText(stands) ? 'sheet' : 'yours';
  const field = readFigure(key, spec, text, undefined, undefined, how, origin);
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
      ? doubtOf(spec, value, text, how.lengths, known(engine, box))
      : undefined;
  const deep = (value: number): string | undefined =>
    origin === 'yours' && isTravel(box) ? maybeDegrees(spec, value, text, how.lengths) : undefined;
  const doubt =
    problem === undefined && field.value !== undefined
      ? (deep(field.value) ?? far(field.value))
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

const orderSpec: FieldSpec = {
  label: 'Firing order',
  help: 'Cylinder numbers in the order in which they fire: 1-3-2, 1,3,2, 1 3 2 or 132. Where one set fires two at once, say under Sets of points how many sets there are, and join the two: 1+4-2+3. Leave empty if not known.',
  unit: 'count',
  min: 1,
  max: MOST_CYLINDERS,
  why: 'cylinders are counted from 1',
  whole: true,
  step: 1,
  list: MOST_CYLINDERS,
};

/** The firing order as its field reads it: every cylinder once, or nothing. */
export function readOrder(engine: Engine, text: string, how: HowToRead): ListField {
  const order = { cylinders: cylindersOf(engine), sets: setsOf(engine), read: inOrder };
  const spec = { ...orderSpec, order };
  const field = readList('firing-order', spec, text, [], [], how);
  const { problem } = field;
  return {
    ...field,
    heldOver: false,
    ...(problem === undefined ? {} : { problem: orTooLong(problem, ORDER, text) }),
  };
}

/** What is wrong with a name; nothing where it can be taken. */
export function nameProblem(text: string): string | undefined {
  const length = lengthOf(text.trim());
  if (length === 0) return 'An engine needs a name, so that it can be told from the others.';
  if (length <= LIMITS.name) return undefined;
  return orTooLong(
    `The name has ${String(length)} characters, and there is room for ${String(LIMITS.name)}. Until it is shorter the engine goes without one.`,
    NAME,
    text,
  );
}

/** What is wrong with the notes; nothing where they can be taken. */
export function notesProblem(text: string): string | undefined {
  const length = lengthOf(text);
  if (length <= LIMITS.notes) return undefined;
  return orTooLong(
    `The notes have ${String(length)} characters, and the sheet has room for ${String(LIMITS.notes)}. They stay here as typed, but are neither printed nor sent until ${String(length - LIMITS.notes)} are taken out.`,
    NOTES,
    text,
  );
}
