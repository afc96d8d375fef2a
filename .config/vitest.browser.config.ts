import { defineConfig } from 'vitest/config';

/** Real-browser tests of the built site. They share one browser, each in profiles of its own. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite-browser',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['test/browser/**/*.test.ts'],
    globalSetup: 'test/browser/support/global-setup.ts',
    reporters: ['default', 'json'],
    outputFile: { json: '.cache/results/browser.json' },
    // Two at a time: a page in its browser and the test that drives it fill two cores already.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // A machine that checks every change is often busy: what passes at the second try only is named by
    // `.ci/count.mjs`, so that it is mended and not lost sight of. By hand a test has one try.
    retry: process.env.CI ? 1 : 0,
    expect: { poll: { timeout: 20_000 } },
  },
});
