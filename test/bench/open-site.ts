import { globSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';
import { launch } from '../browser/support/launch.ts';
import { serve } from '../browser/support/serve.ts';

export interface OpenSite extends AsyncDisposable {
  readonly url: string;
  readonly browser: Browser;
}

/** Serves a built site as a host does, compressed, and starts a browser for it. */
export async function openSite(dist: string): Promise<OpenSite> {
  await using starting = new AsyncDisposableStack();
  const site = await serve(dist, { compress: true });
  starting.defer(site.close);
  const server = await launch();
  starting.defer(() => server.close());
  const browser = await chromium.connect(server.wsEndpoint());
  const stack = starting.move();
  return { url: site.url, browser, [Symbol.asyncDispose]: () => stack.disposeAsync() };
}

/** The pages of a built site in a folder of it, sorted, as their addresses below its root. */
export const pagesOf = (dist: string, pattern: string): string[] =>
  globSync(pattern, { cwd: dist })
    .map((file) => file.replace(/index\.html$/, ''))
    .sort();
