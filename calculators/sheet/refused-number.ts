import { fieldUnit } from '../frame/field/field-unit.ts';
import {
  IN_OR_THOU,
  rangeWords,
  takes,
  type FieldSpec,
  type Reading as HowToRead,
} from '../frame/field/fields.ts';
import { asStamped, bareFraction, readIn } from '../frame/field/other-unit.ts';
import { asTyped, quote } from '../frame/field/parse.ts';
import { looksLikeSum } from '../frame/field/sums.ts';
import { rangeIn, rangeTyped } from '../frame/field/two-figures.ts';
import { mayBeThousands } from '../frame/field/thousands.ts';
import { showIn } from '../frame/text/format.ts';
import type { NumberBox } from './box-places.ts';
import { isTravel, specOf } from './box-specs.ts';
import { usualAt } from './box-usual.ts';
import { degreesMeant } from './degrees-typed.ts';
import { figureSpec, isFigureKey, type FigureKey } from './figures.ts';
import { entriesOf, type Engine } from './model.ts';
import { steps } from './steps.ts';

const PERCENT = /^(\d+(?:[.,]\d+)?)\s*%$/u;

/** The highest compression read so far, kPa; nothing before any is. */
function highestRead(engine: Engine): number | undefined {
  const read = entriesOf(engine, 'compression').filter((entry) => entry !== null);
  return read.length === 0 ? undefined : Math.max(...read);
}

function partOf(
  typed: string,
  percent: string,
  whole: number,
  ofWhole: FieldSpec,
  spec: FieldSpec,
  lengths: HowToRead['lengths'],
): string {
  const part = (Number(percent.replace(',', '.')) / 100) * Math.abs(whole);
  const is = showIn(part, fieldUnit(spec, lengths));
  const remedy =
    part >= spec.min && part <= spec.max
      ? `Type “${is}”.`
      : `That is out of its range, ${rangeWords(spec, lengths)}.`;
  return `This box takes a figure and no share: ${quote(typed)} of ${showIn(whole, fieldUnit(ofWhole, lengths))} is ${is}. ${remedy}`;
}

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
  if (of === key || percent === undefined) return undefined;
  if (of === 'compression') {
    const highest = highestRead(engine);
    return highest === undefined
      ? `${quote(typed)} of the highest is not known before the cylinders are read. Read them first, then type ${percent} per cent of the highest here.`
      : partOf(typed, percent, highest, spec, spec, lengths);
  }
  if (!isFigureKey(of)) return undefined;
  const whole = engine.figures[of];
  const label = figureSpec(of).label.toLowerCase();
  if (whole === undefined) {
    return `${quote(typed)} of what? Give the figure “${label}” first, or type the tolerance in its unit.`;
  }
  return partOf(typed, percent, whole, figureSpec(of), spec, lengths);
}

/** Whether a text says that an instrument read beyond its scale, where a reading is only to be large enough. */
const isBeyondScale = (box: NumberBox, typed: string): boolean =>
  box.kind === 'reading' &&
  steps[box.step].reading!.judging === 'at-least' &&
  /^(?:[>≥∞]|inf|o\.?l\b|over)/iu.test(typed);

/** Where the width of a range goes, where the sheet has a place for it. */
function forTolerance(box: NumberBox, kept: string): string {
  const key = box.kind === 'figure' ? `${box.key}-tolerance` : '';
  return isFigureKey(key)
    ? ` Half its width, ${rangeIn(kept)!.half}, is for “${figureSpec(key).label}”.`
    : '';
}

/**
 * What a refused text needs to be told beside why it was refused: that sums are read elsewhere, or in
 * which unit a bare figure is read here, and the unit in which it would be of the usual size.
 */
export function inFull(
  engine: Engine,
  box: NumberBox,
  problem: string,
  kept: string,
  how: HowToRead,
): string {
  const typed = asTyped(kept).trim();
  const spec = specOf(engine, box);
  const range = rangeTyped(kept, takes(spec, how));
  if (range !== undefined) return `${range}${forTolerance(box, kept)}`;
  if (how.sums === undefined && looksLikeSum(typed)) {
    return `${quote(typed)} is a sum, and the boxes of the sheet read none: type what it comes to. The calculators read sums.`;
  }
  // These are asked about already, with what to type.
  if (kept.endsWith(IN_OR_THOU) || mayBeThousands(typed) || bareFraction(kept, spec.unit)) {
    return problem;
  }
  if (isBeyondScale(box, typed)) {
    return `${problem.replace(/ Type a figure.*$/u, '')} A tester that reads beyond its scale has shown at least the end of that scale: type that figure.`;
  }
  const share = box.kind === 'figure' ? shareOf(engine, box.key, spec, typed, how) : undefined;
  if (share !== undefined) return share;
  const degrees = isTravel(box) ? degreesMeant(engine, spec, typed, how.lengths) : undefined;
  if (degrees !== undefined) return `${problem} ${degrees}`;
  const stamped = asStamped(spec, kept);
  if (stamped !== undefined) return problem.includes(stamped) ? problem : `${problem} ${stamped}`;
  const read = readIn(spec, kept, usualAt(engine, box));
  return read === undefined || problem.includes(read.sentence)
    ? problem
    : `${problem} ${read.sentence}`;
}
