import { createHash } from 'node:crypto';
import { globSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build, type Rolldown } from 'vite';
import type { Shipped } from './shipped.ts';

const KEPT = [
  '**/*.{html,css,js,svg,json,webmanifest,woff2,pdf,dxf}',
  'drawings/*.webp',
  'icons/48.png',
];
const HASHED = /^_astro\//;
const WORKER = 'sw.js';

export interface KeptFile {
  readonly url: string;
  readonly revision: string | null;
  /** A file that is not this very one, as in a folder half copied, spoils the copy, and it is tried again. */
  readonly integrity: string;
}

/** The files that the device keeps, by the addresses at which pages ask for them. */
async function keptFiles(root: string): Promise<KeptFile[]> {
  const files = globSync(KEPT, { cwd: root })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file !== WORKER)
    .sort();
  return Promise.all(
    files.map(async (file) => {
      const digest = createHash('sha256').update(await readFile(join(root, file)));
      const text = digest.digest('base64');
      return {
        url: `./${file.replace(/(^|\/)index\.html$/, '$1')}`,
        revision: HASHED.test(file) ? null : text.slice(0, 12),
        integrity: `sha256-${text}`,
      };
    }),
  );
}

/** Builds the service worker, which does not know yet what it is to keep. */
export function worker(shipped: Shipped): AstroIntegration {
  return {
    name: 'worker',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const built = (await build({
          configFile: false,
          logLevel: 'warn',
          publicDir: false,
          define: { 'process.env.NODE_ENV': '"production"' },
          build: {
            outDir: fileURLToPath(dir),
            emptyOutDir: false,
            lib: {
              entry: fileURLToPath(new URL('../offline/worker.ts', import.meta.url)),
              formats: ['iife'],
              name: 'worker',
              fileName: () => WORKER,
            },
          },
        })) as Rolldown.RolldownOutput[];
        for (const { output } of built) shipped.add(output);
      },
    },
  };
}

/** Tells the service worker every other file of the finished site. */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const path = join(root, WORKER);
        const list = JSON.stringify(await keptFiles(root));
        await writeFile(path, `var KEPT_FILES=${list};\n${await readFile(path, 'utf8')}`);
      },
    },
  };
}
