import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import packed, { inflate } from '@sparticuz/chromium';
import { chromium, type BrowserServer } from 'playwright-core';

/** A Chromium to run, with what its process needs in its environment. */
export interface Found {
  readonly executablePath: string;
  readonly env: Readonly<Record<string, string>>;
}

const cache = fileURLToPath(new URL('../../../.cache/', import.meta.url));
const DEBIAN = '/usr/bin/chromium';
/** Where a machine that has fonts of its own lists them. */
const FONTS = '/etc/fonts/fonts.conf';

/** Runs `work` while `os.tmpdir()` is `folder`: the packed browser unpacks itself into that. */
async function withTemporary<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = folder;
  try {
    return await work();
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
}

/**
 * The browser that comes in a package of the registry, unpacked once. It is unpacked aside and
 * moved into place whole, so two runs at the same moment cannot see half of it.
 */
async function unpack(): Promise<string> {
  const home = join(cache, 'chromium');
  if (existsSync(home)) return home;
  await mkdir(cache, { recursive: true });
  const aside = await mkdtemp(join(cache, 'chromium-'));
  try {
    const main = createRequire(import.meta.url).resolve('@sparticuz/chromium');
    await withTemporary(aside, async () => {
      await packed.executablePath();
      await inflate(join(dirname(main), '..', 'bin', 'al2023.tar.br'));
    });
    const fonts = join(aside, 'fonts', 'fonts.conf');
    const listed = (await readFile(fonts, 'utf8')).replaceAll('/tmp/fonts', join(home, 'fonts'));
    await writeFile(fonts, listed);
    await rename(aside, home);
  } catch (error) {
    if (!existsSync(home)) throw error;
  } finally {
    await rm(aside, { recursive: true, force: true });
  }
  return home;
}

let unpacking: Promise<string> | undefined;
const unpacked = (): Promise<string> => (unpacking ??= unpack());

/** The browser that is named, or else Debian's. */
function installed(): Found[] {
  const named = process.env['CHROMIUM_PATH'];
  if (named) return [{ executablePath: named, env: {} }];
  return existsSync(DEBIAN) ? [{ executablePath: DEBIAN, env: {} }] : [];
}

/** The packed browser, with the machine's own libraries and then with those it brings. */
async function packedOnes(): Promise<Found[]> {
  const home = await unpacked();
  const executablePath = join(home, 'chromium');
  const env: Record<string, string> = existsSync(FONTS)
    ? {}
    : { FONTCONFIG_PATH: join(home, 'fonts') };
  const libraries = [join(home, 'al2023', 'lib'), process.env['LD_LIBRARY_PATH'] ?? ''];
  return [
    { executablePath, env },
    { executablePath, env: { ...env, LD_LIBRARY_PATH: libraries.filter(Boolean).join(':') } },
  ];
}

/** Every Chromium that may be tried, the last of them most sure to start. */
export async function chromiums(): Promise<Found[]> {
  const whole = installed();
  return whole.length > 0 ? whole : packedOnes();
}

/**
 * The same, but a browser without windows before one with them: it does the same work in half the
 * time, since it draws no tabs and no bars.
 */
export async function windowless(): Promise<Found[]> {
  if (process.env['CHROMIUM_PATH']) return installed();
  const own = await packedOnes().catch(() => []);
  return [...own, ...installed()];
}

/**
 * Starts a Chromium that clients connect to: of those that may be tried, the first that starts.
 *
 * @param extra More arguments for the browser's command line.
 * @param found Those that may be tried.
 */
export async function launch(
  extra: readonly string[] = [],
  found: Promise<Found[]> = chromiums(),
): Promise<BrowserServer> {
  const failures: unknown[] = [];
  for (const { executablePath, env } of await found) {
    try {
      return await chromium.launchServer({
        executablePath,
        headless: true,
        args: ['--no-sandbox', '--disable-dev-shm-usage', '--font-render-hinting=none', ...extra],
        env: { ...process.env, ...env },
      });
    } catch (error) {
      failures.push(error);
    }
  }
  throw new AggregateError(failures, 'No Chromium would start. Install one or set CHROMIUM_PATH.');
}
