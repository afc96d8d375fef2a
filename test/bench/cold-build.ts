import { execFile } from 'node:child_process';
import { cp, mkdtemp, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);
export const root = fileURLToPath(new URL('../../', import.meta.url));
const SOURCES = [
  'calculators',
  'content',
  'site',
  'test',
  'astro.config.mjs',
  'package.json',
  'tsconfig.json',
];

export interface ColdBuild {
  readonly dist: string;
  readonly seconds: number;
  readonly remove: () => Promise<void>;
}

/** Builds the site from a fresh copy of its sources, with nothing kept from an earlier build. */
export async function coldBuild(): Promise<ColdBuild> {
  const folder = await mkdtemp(join(tmpdir(), 'gudgeon-build-'));
  for (const source of SOURCES)
    await cp(join(root, source), join(folder, source), { recursive: true });
  await symlink(join(root, 'node_modules'), join(folder, 'node_modules'));
  const start = performance.now();
  await run(join(root, 'node_modules/.bin/astro'), ['build'], {
    cwd: folder,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  return {
    dist: join(folder, 'dist'),
    seconds: (performance.now() - start) / 1000,
    remove: () => rm(folder, { recursive: true }),
  };
}
