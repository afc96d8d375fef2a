import type { LengthDisplay } from '../frame/units.ts';
import type { Spot } from './due.ts';
import { judge } from './judge.ts';
import { boxName, type Engine } from './model.ts';
import { steps, type StepId } from './steps.ts';

/** A step that is to be corrected before the engine is fired. */
export interface AgainstFire {
  /** The first reading that is out. */
  readonly spot: Spot;
  readonly title: string;
  /** What it asks for, at each cylinder that is out. */
  readonly asks: string;
}

/** What steps that are to be corrected ask for, in words. */
export const againstWords = (
  engine: Engine,
  against: readonly StepId[],
  lengths: LengthDisplay,
): AgainstFire[] =>
  against.map((step) => {
    const { title, reading } = steps[step];
    const { rows } = judge(engine, step, lengths);
    const out = rows.flatMap(({ result }, i) => (result === 'fail' ? [i] : []));
    return {
      spot: { step, index: out[0] ?? 0 },
      title,
      asks: out.map((i) => `${boxName(reading!, i, engine)}: ${rows[i]!.words}`).join(' '),
    };
  });
