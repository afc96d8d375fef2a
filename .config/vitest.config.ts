import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite-unit',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['test/browser/**', 'node_modules/**'],
    reporters: ['default', 'json'],
    outputFile: { json: '.cache/results/unit.json' },
    testTimeout: 30_000,
  },
});
