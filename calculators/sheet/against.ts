import { proseIn } from '../frame/text/prose.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { spotOf, type Spot } from './due.ts';
import { sheetFigures, type FigureKey } from './figures.ts';
import { leadWords } from './leads.ts';
import { judge } from './judge.ts';
import { listed } from '../maths/numeric/listed.ts';
import { boxName, type Engine } from './model.ts';
import { jobOf, progressOf, type Progress } from './progress.ts';
import { stepDoubt } from './step-doubt.ts';
import { reopening, steps, type StepId } from './steps.ts';
import { figureLine } from './summary.ts';

/** A step that is to be corrected, checked again, or proved, before the engine is fired. */
export interface AgainstFire {
  /** The first reading that is out, or is to be taken. */
  readonly spot: Spot;
  readonly title: string;
  /** What it asks for, at each cylinder that is out; or why it comes first. */
  readonly asks: string;
}

/** Why a step is to be checked again: what the change of another, or one turning of its own, does to it. */
const whyAgain = (id: StepId, by: StepId | undefined): string =>
  (by === undefined ? undefined : by === id ? steps[id].reading?.movesAll : reopening(id, by)) ??
  '';

/** Why readings that are there prove nothing yet: what the sheet lacks to judge them by, or what is said of them. */
function whyUnjudged(engine: Engine, id: StepId, lengths: LengthDisplay): string {
  const { missing, rows, whole } = judge(engine, id, lengths);
  if (missing.length === 0)
    return [...rows.map(({ words }) => words), ...whole].find(Boolean) ?? '';
  const lacks = listed(missing.map((key) => `“${sheetFigures[key].label}”`));
  return `Read, but nothing judges it: the sheet lacks ${lacks}.`;
}

/** What steps that keep the engine from being fired ask for, in words. */
export function againstWords(
  engine: Engine,
  against: readonly StepId[],
  lengths: LengthDisplay,
): AgainstFire[] {
  const progress = progressOf(engine);
  return against.map((step) => {
    const { title, reading, beforeFire = '' } = steps[step];
    const { state, because } = progress[step];
    if (state !== 'fail') {
      const asks =
        state === 'again'
          ? `To be checked again. ${proseIn(whyAgain(step, because[0]), lengths)}`
          : `${state === 'unjudged' ? whyUnjudged(engine, step, lengths) : 'Not proved yet.'} ${beforeFire}`;
      return { spot: spotOf(engine, progress[step], step), title, asks };
    }
    const { rows } = judge(engine, step, lengths);
    const out = rows.flatMap(({ result }, i) => (result === 'fail' ? [i] : []));
    return {
      spot: { step, index: out[0] ?? 0 },
      title,
      asks: out.map((i) => `${boxName(reading!, i, engine)}: ${rows[i]!.words}`).join(' '),
    };
  });
}

/** Steps before the first fire that have passed and are doubted all the same, each with what is said of it. */
export function doubtedBefore(
  engine: Engine,
  progress: Readonly<Record<StepId, Progress>>,
  lengths: LengthDisplay,
): AgainstFire[] {
  const job = jobOf(engine);
  return job.slice(0, job.indexOf('start')).flatMap((step) => {
    if (progress[step].state !== 'pass') return [];
    const doubt = stepDoubt(engine, step, lengths);
    if (doubt === undefined) return [];
    const { index, words } = doubt;
    return [{ spot: { step, index }, title: steps[step].title, asks: words }];
  });
}

/** The steps before the first fire that are not done, whether they keep the engine from being fired or not. */
export const openBefore = (
  engine: Engine,
  progress: Readonly<Record<StepId, Progress>>,
): StepId[] => {
  const job = jobOf(engine);
  return job.slice(0, job.indexOf('start')).filter((id) => progress[id].state !== 'pass');
};

/** Figures of the sheet to have beside the list of the first start. */
const AT_HAND: readonly FigureKey[] = ['gap', 'target', 'plug-gap', 'ratio'];

/** What stands in the sheet for a first start, or that it does not; with the order of the leads. */
export function figuresAtHand(engine: Engine, lengths: LengthDisplay): string[] {
  const leads = leadWords(engine);
  return [
    ...AT_HAND.map((key) => figureLine(engine, key, lengths)),
    ...(leads === undefined ? [] : [leads]),
  ];
}
