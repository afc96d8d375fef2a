/** Mutation testing of the maths: breaks it in every small way, and counts what no test notices. */
export default {
  mutate: ['calculators/maths/**/*.ts'],
  testRunner: 'vitest',
  vitest: { configFile: '.config/vitest.mutation.config.ts', related: false },
  plugins: ['@stryker-mutator/vitest-runner'],
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: '.cache/mutation/report.json' },
  clearTextReporter: { logTests: false, reportTests: false, allowColor: false },
  tempDirName: '.cache/mutation/sandbox',
  incrementalFile: '.cache/mutation/incremental.json',
  ignorePatterns: ['dist', '.cache', 'content', 'site', 'test/browser', 'test/bench'],
  coverageAnalysis: 'perTest',
  concurrency: 2,
  timeoutMS: 10_000,
  checkers: [],
};
