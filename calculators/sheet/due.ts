import { judge } from './judge.ts';
import { boxesOf, type Engine } from './model.ts';
import { jobOf, type Progress } from './progress.ts';
import { isStepId, order, steps, type StepId } from './steps.ts';

/** One reading of the job: a box of a step, counted from 0, or the tick of a step without boxes. */
export interface Spot {
  readonly step: StepId;
  readonly index: number;
}

type All = Readonly<Record<StepId, Progress>>;

/** The readings of the job in their order. */
export const spotsOf = (engine: Engine): Spot[] =>
  jobOf(engine).flatMap((step) =>
    steps[step].reading
      ? Array.from({ length: boxesOf(engine, step) }, (_, index) => ({ step, index }))
      : [{ step, index: 0 }],
  );

/** What the address of a reading holds after its `#`: `read-gap-2`, `read-measure`. */
export const spotFragment = ({ step, index }: Spot): string =>
  steps[step].reading ? `read-${step}-${String(index + 1)}` : `read-${step}`;

/** The reading that a fragment names on this engine; nothing where it names none. */
export function spotAt(fragment: string, engine: Engine): Spot | undefined {
  const [, step = '', number] = /^read-([a-z-]+?)(?:-(\d{1,2}))?$/.exec(fragment) ?? [];
  if (!isStepId(step)) return undefined;
  const index = number === undefined ? 0 : Number(number) - 1;
  const most = steps[step].reading ? boxesOf(engine, step) : 1;
  return index >= 0 && index < most ? { step, index } : undefined;
}

const isSame = (a: Spot, b: Spot): boolean => a.step === b.step && a.index === b.index;

/** Whether something is to be done at a reading: to be taken, to be corrected, or to be taken again. */
export function isDue(engine: Engine, { state, stale }: Progress, { step, index }: Spot): boolean {
  if (!steps[step].reading) return state !== 'pass';
  const { result } = judge(engine, step, 'mm').rows[index]!;
  return result === 'empty' || result === 'fail' || stale.includes(index);
}

/**
 * The reading to take next: the first that is due after `from` in the order of the job, and then
 * from the beginning; nothing where no other is due.
 */
export function nextDue(engine: Engine, progress: All, from?: Spot): Spot | undefined {
  const spots = spotsOf(engine);
  // An engine may have lost the step that is gone on from.
  const place = from ? order.indexOf(from.step) : -1;
  const at = from
    ? spots.findLastIndex((spot) => isSame(spot, from) || order.indexOf(spot.step) < place)
    : -1;
  const round = [...spots.slice(at + 1), ...spots.slice(0, at + 1)].filter(
    (spot) => from === undefined || !isSame(spot, from),
  );
  return round.find((spot) => isDue(engine, progress[spot.step], spot));
}

/** The first reading of a step that is due, or its first. */
export const spotOf = (engine: Engine, progress: Progress, step: StepId): Spot =>
  spotsOf(engine).find((spot) => spot.step === step && isDue(engine, progress, spot)) ?? {
    step,
    index: 0,
  };
