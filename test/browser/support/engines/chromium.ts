import type { LaunchOptions } from 'puppeteer-core';
import { chromiums, windowless, type Found } from '../launch.ts';
import type { Engine, EngineKind, Size } from './engine.ts';
import { startPuppet, startPuppetIn } from './puppet.ts';

const options = ({ executablePath, env }: Found): LaunchOptions => ({
  browser: 'chrome',
  executablePath,
  args: ['--no-sandbox', '--disable-dev-shm-usage'],
  env: { ...process.env, ...env },
});

/** The one without windows where it starts: it does the same in half the time. */
async function start(view: Size): Promise<Engine> {
  const failures: unknown[] = [];
  for (const found of await windowless()) {
    try {
      return await startPuppet({ ...options(found), headless: 'shell' }, view);
    } catch (error) {
      failures.push(error);
    }
  }
  throw new AggregateError(failures, 'No Chromium would start. Install one or set CHROMIUM_PATH.');
}

/** Chromium, for what is told of every browser in the same words. */
export const chromium: EngineKind = {
  name: 'Chromium',
  missing: undefined,
  start,
  startIn: async (profile, view) =>
    startPuppetIn(profile, options((await chromiums()).at(-1)!), view),
};
