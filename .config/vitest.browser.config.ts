import { defineConfig } from 'vitest/config';

/** Real-browser tests of the built site. They share one browser, so files run one at a time. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite-browser',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['test/browser/**/*.test.ts'],
    globalSetup: 'test/browser/support/global-setup.ts',
    reporters: ['default', 'json'],
    outputFile: { json: '.cache/results/browser.json' },
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 10_000 } },
  },
});
