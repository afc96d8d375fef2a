import type { Plugin, Rolldown } from 'vite';

type Output = Rolldown.RolldownOutput['output'] | Rolldown.OutputBundle;

/** Which modules went into which of the site's scripts. */
export class Shipped {
  readonly #modules = new Map<string, readonly string[]>();

  add(output: Output): void {
    for (const file of Object.values(output)) {
      if (file.type === 'chunk') this.#modules.set(file.fileName, file.moduleIds);
    }
  }

  /** Folders of the packages of which something is in one of the scripts `kept`. */
  packages(kept: (script: string) => boolean): string[] {
    const folders = new Set<string>();
    for (const [script, modules] of this.#modules) {
      if (!kept(script)) continue;
      for (const id of modules) {
        const folder = /^\0?(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
        if (folder !== undefined) folders.add(folder);
      }
    }
    return [...folders];
  }
}

/** Writes down what goes into the scripts of the pages. */
export function watchShipped(shipped: Shipped): Plugin {
  return {
    name: 'shipped',
    apply: 'build',
    applyToEnvironment: ({ name }) => name === 'client',
    generateBundle(_, bundle) {
      shipped.add(bundle);
    },
  };
}
