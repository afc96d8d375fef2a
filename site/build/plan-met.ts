import type { Plugin } from 'vite';
import { liesIn, plan } from './script-files.ts';

/** The places of the plan of script files at which no module lies. */
export const unmet = (modules: readonly string[]): string[] =>
  plan
    .flatMap(({ from }) => from)
    .filter((place) => !modules.some((module) => liesIn(module, place)));

/** Stops a build whose plan of script files names a place that holds nothing. */
export function planMet(): Plugin {
  return {
    name: 'gudgeon:plan-met',
    applyToEnvironment: ({ name }) => name === 'client',
    generateBundle() {
      const names = unmet([...this.getModuleIds()]);
      if (names.length > 0)
        this.error(`The plan of script files names nothing at: ${names.join(', ')}`);
    },
  };
}
