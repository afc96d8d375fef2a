import maths from './stryker.config.mjs';

/** Mutation testing of the frame. Left out: files that hold types or words for people and nothing else. */
export default {
  ...maths,
  mutate: ['calculators/frame/**/*.ts', '!calculators/frame/{types,define,stages}.ts'],
  vitest: { configFile: '.config/vitest.mutation.frame.config.ts', related: false },
  jsonReporter: { fileName: '.cache/mutation/frame.json' },
  tempDirName: '.cache/mutation/sandbox-frame',
  incrementalFile: '.cache/mutation/incremental-frame.json',
  concurrency: 1,
};
