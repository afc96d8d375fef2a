import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { untold, untoldIn } from './citation.ts';
import { standing } from './standing.ts';
import type { OutsideCheck, SourceKind } from './types.ts';

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

/** Kinds of sources that stand on a shelf, or in a collection. */
const LOOKED_UP: ReadonlySet<SourceKind> = new Set([
  'standard',
  'published',
  'open data',
  'from memory',
]);
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

  it('can be looked up: by edition or year and by page, section, clause or table; a library by version', () => {
    const bare = checks.filter(
      ({ source, kind }) => kind === 'library' && !/\d+\.\d+/.test(source),
    );
    expect(bare.map(({ source }) => source)).toEqual([]);
    const looked = checks.filter(({ kind }) => LOOKED_UP.has(kind)).map(({ source }) => source);
    expect([...new Set(looked)].flatMap(untold)).toEqual([]);
  });
});

describe.each(globSync('content/articles/*.mdx'))('%s', (file) => {
  it('names no source that anybody may alter or take down', () => {
    for (const line of listed(file, 'sources')) expect(standing(line), line).toBeUndefined();
  });

  it('tells of each work which edition it is, and where to look in it', () => {
    expect(listed(file, 'sources').flatMap(untoldIn)).toEqual([]);
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

describe('a citation that cannot be looked up', () => {
  it.each([
    ['A. Author, A Book, chapter 3', 2],
    ['A. Author, A Book, 2nd edition, chapter 3', 1],
    ['A. Author, A Book, page 3', 1],
    ['ISO 1:2020, Things', 1],
    ['Angles: ISO 1:2020, clause 3. Lengths: ISO 2, clause 4', 1],
    ['Angles: ISO 1:2020, clause 3; A. Author, A Book, 1990', 1],
  ])('is seen: %s', (line, count) => {
    expect(untoldIn(line)).toHaveLength(count);
  });

  it.each([
    'A. Author, A Book, 2nd edition, page 3',
    'ISO 1:2020, Things, clause not known',
    'Turning by hand: common practice.',
  ])('and “%s” is none', (line) => {
    expect(untoldIn(line)).toEqual([]);
  });
});
