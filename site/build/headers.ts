import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** A page's address from the root of the site, as hosts see it. */
const addressOf = (file: string): string =>
  `/${file.replaceAll('\\', '/').replace(/(^|\/)index\.html$/, '$1')}`;

/**
 * Tells hosts that a page is to be asked for anew each time. Kept for a while, it would name scripts
 * that a newer copy of the site no longer has. Each page has a line of its own, since hosts differ in
 * what they make of two patterns that both fit.
 */
export function headers(): AstroIntegration {
  return {
    name: 'headers',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const pages = (await readdir(root, { recursive: true }))
          .filter((file) => file.endsWith('.html') && file !== '404.html')
          .map(addressOf)
          .sort();
        const path = join(root, '_headers');
        const rules = pages.map((page) => `\n${page}\n  Cache-Control: no-cache\n`);
        await writeFile(path, (await readFile(path, 'utf8')) + rules.join(''));
      },
    },
  };
}
