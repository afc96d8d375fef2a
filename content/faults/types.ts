import type { FigureKey } from '../../calculators/sheet/figures.ts';
import type { StepId } from '../../calculators/sheet/steps.ts';

export type Measured = 'out' | 'early' | 'late';

/** The end of a way through the questions: what is wrong, and what to do about it. */
export interface Action {
  /** Name within its symptom; with the symptom's it is the address of this action. */
  readonly id: string;
  readonly cause: string;
  readonly act: string;
  /** The step of the sheet that measures it. */
  readonly step?: StepId;
  /**
   * What the readings of that step show where this is so: one outside its limits, or one early or
   * late. Left out where the readings do not decide it.
   */
  readonly measured?: Measured | undefined;
  readonly calculator?: string;
  readonly article?: string;
  /** Figures of the sheet to hold it against, beside that of the step. */
  readonly figures?: readonly FigureKey[];
}

/** One test that is answered by yes or no. */
export interface Question {
  readonly ask: string;
  /** How to do it, with what, and the reading to take. */
  readonly how: string;
  readonly yes: Answer;
  readonly no: Answer;
}

export type Answer = Question | Action;

export const isAction = (answer: Answer): answer is Action => 'act' in answer;

/** A symptom, and its questions, the quickest test first. */
export interface Symptom {
  readonly id: string;
  readonly title: string;
  /** What else it is called, as a search is typed. */
  readonly also: readonly string[];
  /** What must be done before anything is looked at. */
  readonly atOnce?: string;
  readonly first: Question;
}

/** Every question and action of a symptom, with how many questions stand before it. */
export function everyAnswer({ first }: Symptom): { answer: Answer; depth: number }[] {
  const from = (answer: Answer, depth: number): { answer: Answer; depth: number }[] => [
    { answer, depth },
    ...(isAction(answer) ? [] : [...from(answer.yes, depth + 1), ...from(answer.no, depth + 1)]),
  ];
  return from(first, 0);
}

/** The actions that a symptom can end in. */
export const actionsOf = (symptom: Symptom): Action[] =>
  everyAnswer(symptom)
    .map(({ answer }) => answer)
    .filter(isAction);
