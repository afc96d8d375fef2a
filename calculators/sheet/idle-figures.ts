import type { FigureKey } from './figures.ts';
import { wantedFigures } from './judge.ts';
import type { Engine } from './model.ts';
import { jobOf } from './progress.ts';
import { order, type StepId } from './steps.ts';

/** Empty figures that serve nothing but steps which the engine has not got, by what the sheet says. */
export function idleFigures(engine: Engine): readonly FigureKey[] {
  const job = jobOf(engine);
  const wanted = (ids: readonly StepId[]) => ids.flatMap((id) => wantedFigures(id, engine));
  const asked = new Set(wanted(job));
  return wanted(order.filter((id) => !job.includes(id))).filter(
    (key) => engine.figures[key] === undefined && !asked.has(key),
  );
}
