import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** The scripts that no page names, nor any script that a page names, however far along. */
export function unusedScripts(
  pages: readonly string[],
  scripts: ReadonlyMap<string, string>,
): string[] {
  const used = new Set<string>();
  const follow = (text: string): void => {
    for (const [name, code] of scripts) {
      if (used.has(name) || !text.includes(name)) continue;
      used.add(name);
      follow(code);
    }
  };
  pages.forEach(follow);
  return [...scripts.keys()].filter((name) => !used.has(name));
}

/** Takes the scripts that nothing uses out of the finished site: a device would keep them. */
export function unused(): AstroIntegration {
  return {
    name: 'unused',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const files = await readdir(root, { recursive: true });
        const texts = (ending: string): Promise<string[]> =>
          Promise.all(
            files
              .filter((file) => file.endsWith(ending))
              .map((file) => readFile(join(root, file), 'utf8')),
          );
        const assets = join(root, '_astro');
        const names = (await readdir(assets)).filter((name) => name.endsWith('.js'));
        const scripts = new Map(
          await Promise.all(
            names.map(async (name) => [name, await readFile(join(assets, name), 'utf8')] as const),
          ),
        );
        const left = unusedScripts(await texts('.html'), scripts);
        await Promise.all(left.map((name) => rm(join(assets, name))));
      },
    },
  };
}
