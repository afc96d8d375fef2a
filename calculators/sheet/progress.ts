import { movedSince, readingOf } from './readings.ts';
import { judge } from './judge.ts';
import { boxesOf, entriesOf, type Engine } from './model.ts';
import { outdatedAt } from './outdated.ts';
import { stepDoubt } from './step-doubt.ts';
import { hasStep, needs, order, steps, type StepId } from './steps.ts';

/** A step that the engine has not counts as passed: nothing waits for it. */
export type StepState = 'open' | 'part' | 'unjudged' | 'fail' | 'again' | 'pass';

export interface Progress {
  readonly state: StepState;
  /** Steps, earlier or later in the order, that moved this one after it was last checked. */
  readonly because: readonly StepId[];
  /** Cylinders that were read before that, counted from 0; none for a step without readings. */
  readonly stale: readonly number[];
  /** Steps it depends on that have not passed, or are themselves to be checked again. */
  readonly waits: readonly StepId[];
  /** Earlier steps that are to be corrected, checked again, or proved, before the engine is fired in this one. */
  readonly against: readonly StepId[];
}

export const stateWords: Readonly<Record<StepState, string>> = {
  open: 'To do',
  part: 'Part filled',
  unjudged: 'Filled, not judged',
  fail: 'To correct',
  again: 'Check again',
  pass: 'Done',
};

/** How a step stands, in words for where its readings are not told one by one: what passes may yet be doubted. */
export function stateTold(engine: Engine, id: StepId, state: StepState): string {
  const isDoubted = state === 'pass' && stepDoubt(engine, id, 'mm') !== undefined;
  return isDoubted ? `${stateWords.pass}, but doubted` : stateWords[state];
}

/** State by the step's own readings alone. */
function ownState(engine: Engine, id: StepId): Exclude<StepState, 'again'> {
  if (!hasStep(engine.figures, id)) return 'pass';
  if (!steps[id].reading) return readingOf(engine, id).done ? 'pass' : 'open';
  const { rows } = judge(engine, id, 'mm');
  if (rows.every(({ result }) => result === 'empty')) return 'open';
  if (rows.some(({ result }) => result === 'fail')) return 'fail';
  if (rows.some(({ result }) => result === 'empty')) return 'part';
  return rows.every(({ result }) => result === 'pass') ? 'pass' : 'unjudged';
}

/** Whether nobody fires an engine before this step is done, and it is not, or nothing has judged it. */
const isMissing = (id: StepId, state: StepState): boolean =>
  steps[id].beforeFire !== undefined && state !== 'pass';

/**
 * How far the job has come. A step that has passed is to be checked again when a step that moves it
 * has altered the engine since; it stays so until it is read again or confirmed. Two steps may move
 * each other, as gap and timing do: only the clock of each is compared, so nothing runs in a circle,
 * and waiting goes by the order alone. Of a step with readings each cylinder waits by itself; one that
 * was read before a turning that moved it, by its own step. A step in which the engine fires is not
 * done, ticked or not, while an earlier one is to be corrected or checked again; one that is merely
 * missing stops a firing that is still to come, and undoes none that has been.
 */
export function progressOf(engine: Engine): Readonly<Record<StepId, Progress>> {
  const done = {} as Record<StepId, Progress>;
  for (const id of order) {
    const own = ownState(engine, id);
    const old = outdatedAt(engine, id);
    const movers = (i: number): StepId[] =>
      hasStep(engine.figures, id)
        ? [
            ...movedSince(engine, id, i).filter((other) => hasStep(engine.figures, other)),
            ...(old.includes(i) ? [id] : []),
          ]
        : [];
    const read = entriesOf(engine, id).flatMap((entry, i) => (entry === null ? [] : [i]));
    const stale = read.filter((i) => movers(i).length > 0);
    const moved = (steps[id].reading ? stale : [0]).flatMap(movers);
    const because = own === 'open' ? [] : order.filter((other) => moved.includes(other));
    const earlier = steps[id].fires ? order.slice(0, order.indexOf(id)) : [];
    const stands = earlier.filter((other) => {
      const { state } = done[other];
      if (state === 'fail') return true;
      // What an earlier fire waits for is said there.
      if (state === 'again') return steps[other].fires !== true;
      return own !== 'pass' && isMissing(other, state);
    });
    // What is known to be wrong comes before what is not known.
    const isOut = (other: StepId): boolean => done[other].state === 'fail';
    const against = [...stands.filter(isOut), ...stands.filter((other) => !isOut(other))];
    const again = because.length > 0 || (against.length > 0 && own === 'pass');
    done[id] = {
      state: again && own !== 'fail' ? 'again' : own,
      because,
      against,
      stale,
      waits: needs(id).filter((other) => done[other].state !== 'pass'),
    };
  }
  return done;
}

/** The steps that this engine has, in the order of the job. */
export const jobOf = ({ figures }: Engine): StepId[] => order.filter((id) => hasStep(figures, id));

/** The step to do next: the first that is not done. */
export function nextStep(progress: Readonly<Record<StepId, Progress>>): StepId | undefined {
  return order.find((id) => progress[id].state !== 'pass');
}

/** Whether every cylinder of a step has its reading as left. */
export function isLeftFull(engine: Engine, id: StepId): boolean {
  const { left } = readingOf(engine, id);
  return Array.from({ length: boxesOf(engine, id) }, (_, i) => left[i] ?? null).every(
    (entry) => entry !== null,
  );
}

/**
 * The cylinders that a step's state is about, counted from 0: those to correct, or those to be read
 * again where not all are.
 */
export function concerned(
  engine: Engine,
  id: StepId,
  { state, stale }: Progress,
): readonly number[] {
  if (state === 'again') return stale.length < boxesOf(engine, id) ? stale : [];
  if (state !== 'fail') return [];
  return judge(engine, id, 'mm').rows.flatMap(({ result }, i) => (result === 'fail' ? [i] : []));
}
