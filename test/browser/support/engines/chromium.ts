import type { LaunchOptions } from 'puppeteer-core';
import { chromiums } from '../launch.ts';
import type { EngineKind } from './engine.ts';
import { startPuppet, startPuppetIn } from './puppet.ts';

async function options(): Promise<LaunchOptions> {
  const { executablePath, env } = (await chromiums()).at(-1)!;
  return {
    browser: 'chrome',
    executablePath,
    args: ['--no-sandbox', '--disable-dev-shm-usage'],
    env: { ...process.env, ...env },
  };
}

/** Chromium, for what is told of every browser in the same words. */
export const chromium: EngineKind = {
  name: 'Chromium',
  missing: undefined,
  start: async (view) => startPuppet(await options(), view),
  startIn: async (profile, view) => startPuppetIn(profile, await options(), view),
};
