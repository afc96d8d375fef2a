import { existsSync } from 'node:fs';
import type { LaunchOptions } from 'puppeteer-core';
import { missingSentence, type EngineKind } from './engine.ts';
import { startPuppet, startPuppetIn } from './puppet.ts';

const program = process.env['FIREFOX_PATH'] ?? '/usr/bin/firefox-esr';
const options: LaunchOptions = { browser: 'firefox', executablePath: program };

export const firefox: EngineKind = {
  name: 'Firefox',
  missing: missingSentence('Firefox', [{ there: existsSync(program), from: 'firefox-esr' }]),
  start: (view) => startPuppet(options, view),
  startIn: (profile, view) => startPuppetIn(profile, options, view),
};
