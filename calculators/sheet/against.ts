import type { LengthDisplay } from '../frame/units.ts';
import { spotOf, type Spot } from './due.ts';
import { judge } from './judge.ts';
import { boxName, type Engine } from './model.ts';
import { progressOf } from './progress.ts';
import { steps, type StepId } from './steps.ts';

/** A step that is to be corrected, or proved, before the engine is fired. */
export interface AgainstFire {
  /** The first reading that is out, or is to be taken. */
  readonly spot: Spot;
  readonly title: string;
  /** What it asks for, at each cylinder that is out; or why it comes first. */
  readonly asks: string;
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
    const { state } = progress[step];
    if (state !== 'fail') {
      const so = state === 'again' ? 'To be checked again' : 'Not proved yet';
      return { spot: spotOf(engine, progress[step], step), title, asks: `${so}. ${beforeFire}` };
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
