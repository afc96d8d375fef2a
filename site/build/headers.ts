import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** The paths of `_headers` that fit a page at the top of the site, or all that lies in its folder. */
function pathsAround(file: string): string[] {
  const [top = '', ...below] = file.replaceAll('\\', '/').split('/');
  if (below.length > 0) return [`/${top}`, `/${top}/*`];
  return top === 'index.html' ? ['/', '/index.html'] : [`/${top}`, `/${top.replace('.html', '')}`];
}

/**
 * Tells hosts that a page is to be asked for anew each time, by whichever form of its address: kept
 * for a while, it would name scripts that a newer copy of the site no longer has. No path reaches
 * into `_astro`, since hosts differ in what they make of two paths that both name a header. Folders
 * are named whole: some hosts read no more than a hundred paths.
 */
export function pageHeaders(files: readonly string[]): string {
  const pages = files.filter((file) => file.endsWith('.html'));
  const paths = new Set(pages.flatMap(pathsAround));
  return [...paths]
    .sort()
    .map((path) => `\n${path}\n  Cache-Control: no-cache\n`)
    .join('');
}

/** Writes those headers into the finished site. */
export function headers(): AstroIntegration {
  return {
    name: 'headers',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const path = join(root, '_headers');
        const files = await readdir(root, { recursive: true });
        await writeFile(path, (await readFile(path, 'utf8')) + pageHeaders(files));
      },
    },
  };
}
