import { figureKeys, type FigureKey } from './figures.ts';
import type { Engine } from './model.ts';
import { hasStep, order, steps, type StepId } from './steps.ts';

/** What a step is held against. */
const usedBy = (id: StepId): readonly (FigureKey | undefined)[] => {
  const { reading, figures = [] } = steps[id];
  return [reading?.target, reading?.tolerance, ...figures];
};

/** Figures that serve nothing but steps which the sheet says the engine has not got. */
export function idleFigures({ figures }: Pick<Engine, 'figures'>): ReadonlySet<FigureKey> {
  const isOut = (id: StepId): boolean =>
    !hasStep(figures, id) && figures[steps[id].fallsAway!.by] !== undefined;
  return new Set(
    figureKeys.filter((key) => {
      const users = order.filter((id) => usedBy(id).includes(key));
      return users.length > 0 && users.every(isOut);
    }),
  );
}
