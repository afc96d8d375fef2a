import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';
import { launch } from './launch.ts';
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

export const dist = fileURLToPath(new URL('../../../dist/', import.meta.url));

/** Starts what all browser tests share, and stops it when they are done. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const [root, folder] = await Promise.all([
    serve(dist),
    serve(dist, { base: '/some/where/', compress: true }),
  ]);
  const browser = await launch();
  project.provide('browserEndpoint', browser.wsEndpoint());
  project.provide('siteUrl', root.url);
  project.provide('folderUrl', folder.url);
  return async () => {
    await browser.close();
    await Promise.all([root.close(), folder.close()]);
  };
}
