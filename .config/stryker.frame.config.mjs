import maths from './stryker.config.mjs';

/** Mutation testing of the frame. Left out: files that hold types or words for people and nothing else. */
export default {
  ...maths,
  mutate: ['calculators/frame/**/*.ts', '!calculators/frame/{types,define,stages}.ts'],
  vitest: { configFile: '.config/vitest.mutation.frame.config.ts', related: false },
  jsonReporter: { fileName: '.cache/mutation/frame.json' },
  tempDirName: '.cache/mutation/sandbox-frame',
  incrementalFile: '.cache/mutation/incremental-frame.json',
  // Tables of units and of words are read once, as the file loads: the tests in test/frame hold them row by row.
  ignoreStatic: true,
  concurrency: 1,
};
