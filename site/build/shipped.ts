import type { Plugin, Rolldown } from 'vite';

type Output = Rolldown.RolldownOutput['output'] | Rolldown.OutputBundle;

/** Which modules went into which of the site's scripts. */
export class Shipped {
  readonly #modules = new Map<string, readonly string[]>();
  readonly #whole = new Set<string>();

  add(output: Output): void {
    for (const file of Object.values(output)) {
      if (file.type === 'chunk') this.#modules.set(file.fileName, file.moduleIds);
    }
  }

  /** A package of which something is shipped that is no script, by its folder. */
  addPackage(folder: string): void {
    this.#whole.add(folder);
  }

  /** Folders of the packages of which something is shipped: of scripts, in those that are `kept`. */
  packages(kept: (script: string) => boolean): string[] {
    const folders = new Set<string>(this.#whole);
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
