import { defineConfig } from 'vitest/config';

/**
 * The tests that mutation testing of the frame runs against each changed copy: its own. They stand
 * on a calculator made for them and load few of the others, so that a run takes a second.
 */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite-mutation-frame',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: { include: ['test/frame/**/*.test.{ts,tsx}'], testTimeout: 30_000 },
});
