import type { FigureKey } from './figures.ts';
import type { StepId } from './steps.ts';

/** How a reading came about: as the engine was found, after something was changed, or in a check. */
export type ReadingKind = 'found' | 'change' | 'check';

interface Written {
  /** The engine's clock when it was written: what came before what, whatever the wall clock said. */
  readonly clock: number;
  /** The day by the wall clock, such as 2026-03-21; empty where it is not known. */
  readonly on: string;
}

/** A reading at one cylinder of a step, in the step's unit. */
export interface LoggedReading extends Written {
  readonly kind: ReadingKind;
  readonly step: StepId;
  /** Counted from 1. */
  readonly cylinder: number;
  readonly value: number;
}

/** A step without readings that was ticked, or whose tick was taken away. */
export interface LoggedTick extends Written {
  readonly kind: 'done' | 'undone';
  readonly step: StepId;
}

/** A measure of the engine itself that was changed after readings had been taken on it. */
export interface LoggedFigure extends Written {
  readonly kind: 'figure';
  readonly figure: FigureKey;
  readonly value: number | null;
}

/** Hours that the engine has run since the last of these. */
export interface LoggedHours extends Written {
  readonly kind: 'hours';
  readonly value: number;
}

export interface LoggedNote extends Written {
  readonly kind: 'note';
  readonly text: string;
}

/** A line of the list of the first start that was ticked, or whose tick was taken away. */
export interface LoggedLine extends Written {
  readonly kind: 'ticked' | 'unticked';
  readonly line: string;
}

/** The list of the first start begun anew. */
export interface LoggedStart extends Written {
  readonly kind: 'anew';
}

/** One line of an engine's log. */
export type LogEntry =
  LoggedReading | LoggedTick | LoggedFigure | LoggedHours | LoggedNote | LoggedLine | LoggedStart;

/** An entry before its clock is known. */
export type NewEntry = LogEntry extends infer E
  ? E extends LogEntry
    ? Omit<E, 'clock' | 'on'>
    : never
  : never;

export const isReading = (entry: LogEntry): entry is LoggedReading =>
  entry.kind === 'found' || entry.kind === 'change' || entry.kind === 'check';
