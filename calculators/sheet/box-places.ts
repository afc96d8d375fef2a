import { isFigureKey, MOST_CYLINDERS, type FigureKey } from './figures.ts';
import { LIMITS, type Engine } from './model.ts';
import { isStepId, steps, type StepId } from './steps.ts';

export type Moment = 'found' | 'left';

export const momentWords: Readonly<Record<Moment, string>> = {
  found: 'as found',
  left: 'as left',
};

/** The same as headings of the boxes in the list, which what is said of them names. */
export const momentHeads: Readonly<Record<Moment, string>> = { found: 'found', left: 'last' };

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

/** One that holds a figure or a reading. */
export type NumberBox = Extract<Box, { kind: 'figure' | 'reading' }>;

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

export const lengthOf = (text: string): number => [...text].length;

/** Whether a text that cannot be read is short enough to be kept. */
export const canKeep = (place: string, text: string): boolean => lengthOf(text) <= longestAt(place);

/** Whether a text that was refused stands in a box of a step, or at one cylinder of it (counted from 0). */
export const isUnread = ({ unread }: Engine, step: StepId, index?: number): boolean =>
  Object.keys(unread).some((place) => {
    const box = boxAt(place);
    return box?.kind === 'reading' && box.step === step && (index ?? box.index) === box.index;
  });

/** Adds to a sentence that the text is too long to be kept, where it is. */
export function orTooLong(problem: string, place: string, text: string): string {
  return canKeep(place, text)
    ? problem
    : `${problem} It has ${String(lengthOf(text))} characters, and no more than ${String(longestAt(place))} are kept: it stands here only until the page is left.`;
}
