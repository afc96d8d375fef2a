import { cp, glob, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serve, type Served } from '../serve.ts';

/**
 * Runs first in every page, in any browser, and writes down what a faultless page never does. The
 * page keeps nothing for use offline, so that each is fetched anew. Firefox calls it an error to
 * preload a module that it has already; a module that is truly missing fails where it is imported.
 */
const watch = `
Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });
const complain = (...words) => {
  const before = JSON.parse(sessionStorage.getItem('complaints') ?? '[]');
  sessionStorage.setItem('complaints', JSON.stringify([...before, words.join(' ')]));
};
addEventListener('error', (event) => {
  const { target } = event;
  if (target.rel === 'modulepreload') return;
  if (target === window) complain('uncaught:', event.message);
  else complain('not loaded:', target.src || target.href || target.localName);
}, true);
addEventListener('unhandledrejection', (event) => complain('unhandled:', event.reason));
addEventListener('securitypolicyviolation', (event) =>
  complain('policy:', event.violatedDirective, event.blockedURI));
for (const level of ['error', 'warn']) {
  console[level] = (...words) => complain('console ' + level + ':', ...words);
}
`;

/** A page with two documents beside each other, for a driver that shows one window at a time. */
export const FRAMES = 'two-documents.html';
const framesPage = `<!doctype html><html lang="en"><title>Two documents</title>
<style>body { margin: 0 } iframe { display: block; width: 100vw; height: 50vh; border: 0 }</style>
<iframe id="first" title="First"></iframe><iframe id="second" title="Second"></iframe></html>`;

/**
 * A copy of a site whose pages write down their complaints.
 *
 * @param first What else runs before anything of the page, as text.
 */
export async function watchedCopy(
  directory: string,
  first = '',
): Promise<{ readonly folder: string; readonly remove: () => Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), 'gudgeon-watched-'));
  await using starting = new AsyncDisposableStack();
  starting.defer(() => rm(folder, { recursive: true }));
  await cp(directory, folder, { recursive: true });
  await writeFile(join(folder, 'watch.js'), watch + first);
  for await (const name of glob('**/*.html', { cwd: folder })) {
    const file = join(folder, name);
    const page = await readFile(file, 'utf8');
    if (!page.includes('<head>')) throw new Error(`${name} has no <head> to put the watch in.`);
    await writeFile(file, page.replace('<head>', '<head><script src="/watch.js"></script>'));
  }
  await writeFile(join(folder, FRAMES), framesPage);
  const started = starting.move();
  return { folder, remove: () => started.disposeAsync() };
}

/** Serves such a copy. */
export async function serveWatched(directory: string): Promise<Served> {
  await using starting = new AsyncDisposableStack();
  const { folder, remove } = await watchedCopy(directory);
  starting.defer(remove);
  const { url, close } = await serve(folder);
  starting.defer(close);
  const started = starting.move();
  return { url, close: () => started.disposeAsync() };
}
