import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { standing } from './standing.ts';
import type { OutsideCheck } from './types.ts';

const modules = import.meta.glob<{ checks: readonly OutsideCheck[] }>('./*.checks.ts', {
  eager: true,
});
const checks = Object.values(modules).flatMap((module) => module.checks);

/** Lines of a block of front matter, such as the sources of an article. */
function listed(file: string, key: string): string[] {
  const [, matter = ''] = readFileSync(file, 'utf8').split(/^---$/m);
  const block = new RegExp(`^${key}:\\n((?:  .*\\n)*)`, 'm').exec(matter)?.[1] ?? '';
  return block.split('\n').filter((line) => line.trim() !== '');
}

const MOST_FROM_MEMORY = 20;
const RECALLED = /memory|recall/i;

describe('what the checks stand on', () => {
  it('says where each figure comes from', () => {
    for (const { what, source, unit } of checks) {
      expect(source.length, what).toBeGreaterThan(8);
      expect(unit, what).not.toBe('');
    }
  });

  it('is seldom memory, and says so where it is', () => {
    const recalled = checks.filter(({ source, why }) => RECALLED.test(`${source} ${why ?? ''}`));
    const kept = checks.filter(({ kind }) => kind === 'from memory');
    expect(recalled.filter(({ kind }) => kind !== 'from memory').map(({ what }) => what)).toEqual(
      [],
    );
    expect(kept.length).toBeLessThanOrEqual(MOST_FROM_MEMORY);
  });

  it('is nothing that anybody may alter or take down', () => {
    const found = checks.flatMap(({ what, source, why = '' }) => {
      const hit = standing(`${what} ${source} ${why}`);
      return hit === undefined ? [] : [`${hit}: ${source}`];
    });
    expect(found).toEqual([]);
  });

  it('can be looked up: by year, edition, page, chapter or version', () => {
    const bare = checks.filter(
      ({ source, kind }) =>
        (kind === 'library' && !/\d+\.\d+/.test(source)) ||
        ((kind === 'published' || kind === 'standard') && !/\d/.test(source)),
    );
    expect(bare.map(({ source }) => source)).toEqual([]);
  });
});

describe.each(globSync('content/articles/*.mdx'))('%s', (file) => {
  it('names no source that anybody may alter or take down', () => {
    for (const line of listed(file, 'sources')) expect(standing(line), line).toBeUndefined();
  });
});

describe('the list of what is no source', () => {
  it.each([
    'worked out in a post on piston speed, topic 7907 of a forum',
    'Table of cam lifts, Scribd document 40',
    'Article “Kernloch” of the German Wikipedia',
    '“The dwell angle”, somebody.wixsite.com',
    'as given at a homework site, https://example.org/x',
    'A mechanic’s blog',
    'gist.github.com/somebody/1',
    'believed to be the fourth edition',
  ])('holds “%s”', (source) => {
    expect(standing(source)).toBeDefined();
  });

  it.each([
    'R. Larson and B. Edwards, Calculus, chapter 2, example 6, page 156',
    'Open data table tap_hole_sizes.csv of gumyr/cq_warehouse, commit e27bdc3',
    'NIST/SEMATECH e-Handbook of Statistical Methods',
    'By hand: (25 × 745 + 870) / 26',
  ])('does not hold “%s”', (source) => {
    expect(standing(source)).toBeUndefined();
  });
});
