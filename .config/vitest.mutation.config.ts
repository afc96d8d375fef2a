import { defineConfig } from 'vitest/config';

/** The tests that mutation testing runs against each changed copy: those of the maths. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['test/{maths,outside}/**/*.test.{ts,tsx}'],
    testTimeout: 30_000,
  },
});
