import { stages, type Stage } from '../../calculators/frame/stages.ts';

/** What the sheet with the checks of a stage is called. */
export function benchTitle(stage: Stage): string {
  const { title } = stages[stage];
  return `At the bench: ${title.charAt(0).toLowerCase()}${title.slice(1)}`;
}
