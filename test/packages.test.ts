import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { importsOf } from './floors/imports.ts';

const read = (file: string): string => readFileSync(file, 'utf8');
const { dependencies, devDependencies, scripts } = JSON.parse(read('package.json')) as Record<
  'dependencies' | 'devDependencies' | 'scripts',
  Readonly<Record<string, string>>
>;

/** The package of a module's name; none for a file, for Node’s own and for what a tool makes up. */
const packageOf = (name: string): string[] =>
  /^(?:[./?]|\w+:)/.test(name) ? [] : [name.split('/', name.startsWith('@') ? 2 : 1).join('/')];

const imported = (...globs: readonly string[]): Set<string> =>
  new Set(
    globs
      .flatMap((glob) => globSync(glob))
      .flatMap((file) => importsOf(file, read(file)))
      .flatMap(packageOf),
  );

const bySite = imported('{calculators,content,site}/**/*.{ts,tsx,astro,mdx}', 'astro.config.mjs');

/** Where a package that only the checks need is named, if it is not simply imported. */
const named = [
  ...globSync('{test,.config}/**/*.{ts,tsx,mjs}').filter((file) => !file.includes('bench/gener')),
  '.prettierrc.json',
].map(read);
const words = Object.values(scripts).flatMap((script) => script.split(/\s+/));
/** What a command of another package asks for by itself. */
const asked: Readonly<Record<string, string>> = {
  '@astrojs/check': 'astro check',
  '@stryker-mutator/core': 'stryker run',
};

const usedByChecks = (name: string): boolean =>
  named.some((text) => [`'${name}'`, `"${name}"`, `'${name}/`].some((as) => text.includes(as))) ||
  words.includes(name) ||
  Object.values(scripts).some((script) => script.includes(asked[name] ?? '\0'));

describe('the packages', () => {
  it('that the site is made of are its dependencies, and no others', () => {
    expect([...bySite].sort()).toEqual(Object.keys(dependencies).sort());
  });

  it.each(Object.keys(devDependencies))('%s is used by the checks', (name) => {
    const typed = /^@types\/(.*)$/.exec(name)?.[1];
    const used =
      typed === undefined ? usedByChecks(name) : bySite.has(typed) || usedByChecks(typed);
    expect(used).toBe(true);
  });
});
