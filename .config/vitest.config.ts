import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite-unit',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['test/browser/**', 'node_modules/**'],
    // Files share what they import: to read all of it anew for each took a tenth of the run.
    isolate: false,
    reporters: ['default', 'json'],
    outputFile: { json: '.cache/results/unit.json' },
    // Long beside busy cores: it ends what hangs, and measures nothing.
    testTimeout: 300_000,
  },
});
