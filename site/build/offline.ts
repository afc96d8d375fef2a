import { createHash } from 'node:crypto';
import { globSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'vite';

const KEPT = '**/*.{html,css,js,svg,json,webmanifest}';
const HASHED = /^_astro\//;

export interface KeptFile {
  readonly url: string;
  readonly revision: string | null;
}

/** The files that the device keeps, by the addresses at which pages ask for them. */
export async function keptFiles(root: string): Promise<KeptFile[]> {
  const files = globSync(KEPT, { cwd: root })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file !== '404.html' && file !== 'sw.js')
    .sort();
  return Promise.all(
    files.map(async (file) => ({
      url: `./${file.replace(/(^|\/)index\.html$/, '$1')}`,
      revision: HASHED.test(file)
        ? null
        : createHash('sha256')
            .update(await readFile(join(root, file)))
            .digest('hex')
            .slice(0, 16),
    })),
  );
}

/** Writes the service worker, which knows every other file of the finished site. */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        await build({
          configFile: false,
          logLevel: 'warn',
          publicDir: false,
          define: {
            KEPT_FILES: JSON.stringify(await keptFiles(root)),
            'process.env.NODE_ENV': '"production"',
          },
          build: {
            outDir: root,
            emptyOutDir: false,
            lib: {
              entry: fileURLToPath(new URL('../offline/worker.ts', import.meta.url)),
              formats: ['iife'],
              name: 'worker',
              fileName: () => 'sw.js',
            },
          },
        });
      },
    },
  };
}
