import { globSync, readFileSync } from 'node:fs';
import { parseAst } from 'vite';
import { describe, expect, it } from 'vitest';
import { SERVED_ONLY, withoutServed } from '../../site/build/served-only.ts';

const root = new URL('../../', import.meta.url);

describe('what only the served page needs of a definition', () => {
  const code = `import { x } from 'y';
export default defineCalculator({
  slug: 'a',
  purpose: 'Of no use to a script, {',
  alsoCalled: ['b'],
  compute: (v) => ({ limits: v.limits }),
  limits: [x]
});`;

  it('is left out, and nothing else', () => {
    const left = withoutServed(code, parseAst(code));
    for (const name of ['purpose', 'alsoCalled', 'limits: [x]']) expect(left).not.toContain(name);
    expect(left).toContain("slug: 'a'");
    expect(left).toContain('limits: v.limits');
    expect(() => parseAst(left)).not.toThrow();
  });

  it('stops a build whose definition it cannot read', () => {
    const other = 'export default defineCalculator(made);';
    expect(() => withoutServed(other, parseAst(other))).toThrow('literal');
  });

  it('is read by no script of a page', () => {
    const names = SERVED_ONLY.join('|');
    const read = new RegExp(
      String.raw`\bcalculator\.(?:${names})\b|\{[^{}]*\b(?:${names})\b[^{}]*\} = calculator\b`,
    );
    const files = globSync(
      ['site/{calculator,fields,waking,browser,sheet}/**/*.{ts,tsx}', 'calculators/frame/*.ts'],
      { cwd: root },
    );
    expect(files.length).toBeGreaterThan(60);
    const readers = files.filter((file) => read.test(readFileSync(new URL(file, root), 'utf8')));
    expect(readers).toEqual([]);
  });
});
