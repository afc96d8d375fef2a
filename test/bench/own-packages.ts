import { execFile } from 'node:child_process';
import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);
const cache = fileURLToPath(new URL('../../.cache/bench/', import.meta.url));

/**
 * Copies one of the benchmark's folders that has packages of its own to where it can be built in,
 * with its packages installed. They are not among the site's: only who runs the benchmark needs
 * them, and they are fetched once for as long as the lock file is the same.
 *
 * @returns the copy's folder.
 */
export async function ownPackages(name: string): Promise<string> {
  const home = join(cache, name);
  await cp(fileURLToPath(new URL(name, import.meta.url)), home, { recursive: true });
  const lock = await readFile(join(home, 'package-lock.json'), 'utf8');
  const stamp = join(home, 'node_modules', 'installed-by.json');
  const installed = await readFile(stamp, 'utf8').catch(() => undefined);
  if (installed !== lock) {
    await run('npm', ['ci', '--no-audit', '--no-fund'], { cwd: home });
    await writeFile(stamp, lock);
  }
  return home;
}
