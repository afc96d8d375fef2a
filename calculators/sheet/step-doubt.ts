import type { LengthDisplay } from '../frame/text/units.ts';
import { sentenceIn } from '../frame/text/sentence.ts';
import { figureDoubt } from './figure-doubt.ts';
import { judge } from './judge.ts';
import { boxName, type Engine } from './model.ts';
import { steps, type StepId } from './steps.ts';

interface StepDoubt {
  /** The box that is doubted, counted from 0. */
  readonly index: number;
  readonly words: string;
}

/** What speaks against a step that has passed: one of its readings, or a figure that one without readings is done by. */
export function stepDoubt(
  engine: Engine,
  id: StepId,
  lengths: LengthDisplay,
): StepDoubt | undefined {
  const { reading, figures = [] } = steps[id];
  if (reading === undefined) {
    const said = figures.map((key) => figureDoubt(engine, key)).find(Boolean);
    return said === undefined ? undefined : { index: 0, words: sentenceIn(said, lengths) };
  }
  const { rows } = judge(engine, id, lengths);
  const index = rows.findIndex(({ doubted }) => doubted === true);
  return index < 0
    ? undefined
    : { index, words: `${boxName(reading, index, engine)}: ${rows[index]!.words}` };
}
