import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite-unit',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'reckoned',
          include: ['test/**/*.test.ts'],
          exclude: ['test/browser/**', 'node_modules/**'],
          // These share what they import: to read it anew for each file took a tenth of the run.
          isolate: false,
        },
      },
      {
        extends: true,
        // What renders keeps a state in the framework that one file could leave to the next.
        test: { name: 'rendered', include: ['test/**/*.test.tsx'] },
      },
    ],
    reporters: ['default', 'json'],
    outputFile: { json: '.cache/results/unit.json' },
    // Long beside busy cores: it ends what hangs, and measures nothing.
    testTimeout: 300_000,
  },
});
