import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const root = new URL('../', import.meta.url);
const sheets = globSync('site/styles/*.css', { cwd: root });

/** Declarations that name a side of the page where the side of the text is meant. */
const PHYSICAL =
  /(?:^|[;{])\s*((?:left|right|(?:margin|padding|border)-(?:left|right)(?:-\w+)?):[^;]+|text-align: (?:left|right)|(?:margin|padding): (\S+) (\S+) (\S+) (?!\3;)\S+);/gm;

describe.each(sheets)('%s', (sheet) => {
  it('reads from either side: no side is named that changes with the way of reading', () => {
    const text = readFileSync(new URL(sheet, root), 'utf8').replaceAll(/\/\*[\s\S]*?\*\//g, '');
    expect([...text.matchAll(PHYSICAL)].map(([, found]) => found)).toEqual([]);
  });
});
