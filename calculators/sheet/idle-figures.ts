import type { FigureKey } from './figures.ts';
import type { Engine } from './model.ts';
import { hasStep, order, steps } from './steps.ts';

/** What the readings are held against that are not taken on this engine, by what its sheet says. */
export const idleFigures = ({ figures }: Engine): readonly (FigureKey | undefined)[] =>
  order
    .filter((id) => !hasStep(figures, id))
    .flatMap((id) => [steps[id].reading?.target, steps[id].reading?.tolerance]);
