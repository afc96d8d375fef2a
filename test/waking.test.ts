import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** The rows of the table of states in the guide of the site: words, marks, and the test of each. */
const rows = readFileSync('site/README.md', 'utf8')
  .split('## Waking')[1]!
  .split('\n## ')[0]!
  .split('\n')
  .filter((line) => line.startsWith('|'))
  .slice(2)
  .map((line) => {
    const [state, marks, , , test] = line
      .split('|')
      .slice(1)
      .map((cell) => cell.trim());
    const names = [...marks!.matchAll(/`data-(\w+)` on the (\w+)/g)];
    return {
      state: state!,
      marks: names.map(([, name, on]) => `${name!} on the ${on!}`),
      test: test!,
    };
  });

/** Marks that tell of something else than a state: remembered lengths, and a button that loads again. */
const NO_STATE = ['lengths', 'reload'];

/** The marks of states that the code sets, each with what bears it: `page` or `place`, as they are named there. */
function set(): string[] {
  const files = [
    ...globSync('site/waking/*.ts'),
    'site/opening/answering.ts',
    'site/figures/set-from-text.ts',
  ];
  const marks = files.flatMap((file) =>
    [
      ...readFileSync(file, 'utf8').matchAll(
        /\b(\w+)(?:\.dataset)?\.(\w+) ?= ?(?:''|""|'true'|JSON)/g,
      ),
    ].map(([, holder, name]) => [holder!, name!] as const),
  );
  return marks
    .filter(([, name]) => !NO_STATE.includes(name))
    .map(([holder, name]) => `${name} on the ${holder}`);
}

const sorted = (marks: readonly string[]): string[] => [...new Set(marks)].sort();

describe('the table of what a calculator on a page may be in', () => {
  it('has every mark that the code sets, and no other', () => {
    expect(sorted(rows.flatMap(({ marks }) => marks))).toEqual(sorted(set()));
  });

  it.each(rows)('names a test that plays $state', ({ test }) => {
    const [, file, title] = /^`([\w.-]+)`: (.+)$/.exec(test) ?? [];
    const tests = readFileSync(`test/browser/${file!}.test.ts`, 'utf8');
    expect(tests.includes(`it('${title!}'`), test).toBe(true);
  });

  it('tells each state by its marks', () => {
    const marks = rows.map((row) => sorted(row.marks).join());
    expect(new Set(marks).size).toBe(rows.length);
  });
});
