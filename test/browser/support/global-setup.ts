import type { TestProject } from 'vitest/node';
import { dist } from './built.ts';
import { launch, windowless } from './launch.ts';
import { serve } from './serve.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where test files connect to the one Chromium. */
    browserEndpoint: string;
    /** Addresses of the built site: at the root of a host, and in a folder of one. */
    siteUrl: string;
    folderUrl: string;
  }
}

/** Starts what all browser tests share, and stops it when they are done. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  await using starting = new AsyncDisposableStack();
  const root = await serve(dist);
  starting.defer(root.close);
  const folder = await serve(dist, { base: '/some/where/', compress: 'quickly' });
  starting.defer(folder.close);
  const browser = await launch([], windowless());
  starting.defer(() => browser.close());
  project.provide('browserEndpoint', browser.wsEndpoint());
  project.provide('siteUrl', root.url);
  project.provide('folderUrl', folder.url);
  const started = starting.move();
  return () => started.disposeAsync();
}
