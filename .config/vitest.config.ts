import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite-unit',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['test/browser/**', 'node_modules/**'],
    testTimeout: 30_000,
  },
});
