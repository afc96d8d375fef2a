import { globSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { needless } from './floors/exports.ts';
import { breaches, circles, floors } from './floors/imports.ts';

const CODE = '{calculators,content,site}/**/*.{ts,tsx,astro,mdx,mjs,js}';
const OWN = '{calculators,content,site,test,.config,.ci}/**/*.*';
const read = (file: string): string => readFileSync(file, 'utf8');
const files = globSync(CODE).sort();

/** What the compiler finds in files that may use the language's own library and nothing else. */
function impurities(names: readonly string[], text?: string): string[] {
  const options: ts.CompilerOptions = {
    strict: true,
    noEmit: true,
    allowImportingTsExtensions: true,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2023.d.ts'],
    types: [],
  };
  const host = ts.createCompilerHost(options);
  if (text !== undefined) {
    const { getSourceFile, fileExists } = host;
    host.fileExists = (name) => names.includes(name) || fileExists(name);
    host.getSourceFile = (name, ...rest) =>
      names.includes(name)
        ? ts.createSourceFile(name, text, ts.ScriptTarget.ES2022)
        : getSourceFile(name, ...rest);
  }
  const program = ts.createProgram(names, options, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ file, messageText }) =>
        `${file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`,
    );
}

describe('the rooms of the site', () => {
  it('import one another in no circle', () => {
    expect(
      circles(
        files.filter((file) => file.startsWith('site/')),
        read,
      ),
    ).toEqual([]);
  });

  it('a circle is seen, however many rooms it goes through', () => {
    const texts: Record<string, string> = {
      'site/a/x.ts': `import '../b/y.ts'`,
      'site/b/y.ts': `import '../c/z.ts'`,
      'site/c/z.ts': `import '../a/x.ts'`,
    };
    expect(circles(Object.keys(texts), (file) => texts[file]!)).toContain('a → b → c → a');
  });
});

it('one file alone lays an error of the maths package to other fields', () => {
  const laying = files.filter((file) => /new MathsError\(error\./.test(read(file)));
  expect(laying).toEqual(['calculators/frame/attempt.ts']);
});

it('one file alone touches what the sheet keeps in the browser', () => {
  const touching = files.filter((file) => /\blocalStorage\./.test(read(file)));
  expect(touching).toEqual([
    // The last figures of each calculator, which are no part of the sheet.
    'site/calculator/last-time.ts',
    'site/opening/keeps-last.ts',
    // Asks whether there is a sheet at all, so that its code need not be fetched for it.
    'site/opening/keeps-sheet.ts',
    // The choice of lengths, which is no part of the sheet.
    'site/opening/preferences.ts',
    // Best results of the practice bench, which are no part of the sheet either.
    'site/practice/best.ts',
    'site/sheet/keeper.ts',
    // Reads the choice of lengths before anything is painted.
    'site/waking/guard.ts',
  ]);
});

describe('imports go down only', () => {
  it('sees files on every floor', () => {
    for (const { name, holds } of floors) {
      if (name !== 'the content') expect(files.filter(holds), name).not.toEqual([]);
    }
  });

  it('in every file', () => {
    expect(files.flatMap((file) => breaches(file, read(file)))).toEqual([]);
  });

  it.each([
    ['calculators/maths/x.ts', `import { h } from 'preact'`],
    ['calculators/maths/x.ts', `import { readFile } from 'node:fs/promises'`],
    ['calculators/maths/x.ts', `export { parse } from '../frame/parse.ts'`],
    ['calculators/maths/x.ts', `const later = await import('mathjs')`],
    ['calculators/frame/x.ts', `import '../position/piston-position/calculator.tsx'`],
    ['calculators/frame/x.ts', `import '../../site/all-calculators.ts'`],
    ['calculators/position/piston-position/x.ts', `import '../find-tdc/calculator.tsx'`],
    ['calculators/piston-position/x.ts', `import type { A } from '../../content/x.ts'`],
    ['calculators/picture/x.tsx', `const all = import.meta.glob('../../test/*.ts')`],
    [
      'content/articles/x.mdx',
      `---\ntitle: x\n---\nimport X from '../../site/components/Eq.astro'`,
    ],
    ['site/pages/x.astro', `---\nimport '../../test/floors.test.ts';\n---\n<p />`],
    ['site/pages/x.astro', `<p /><script>\nimport '../../test/floors.test.ts';\n</script>`],
  ])('would refuse, in %s: %s', (file, text) => {
    expect(breaches(file, text)).toHaveLength(1);
  });
});

describe('what a file exports', () => {
  it('is used by another, and by more than a test', () => {
    const all = globSync([CODE, '{test,.config}/**/*.{ts,tsx,mjs}', '*.mjs']);
    expect(needless(new Map(all.map((file) => [file, read(file)])))).toEqual([]);
  });

  it('is seen where nothing uses it', () => {
    const texts = new Map([
      ['site/a.ts', 'export const used = 1;\nexport const tried = 2;\nexport type Left = 3;'],
      ['site/b.ts', "import { used } from './a.ts';\nexport const own = used;\nown;"],
      ['site/c.ts', '/** Speaks of tried and of own. */\nconst tried = 1, own = 2;'],
      ['test/a.test.ts', "import { tried } from '../site/a.ts';\ntried;"],
    ]);
    expect(needless(texts)).toEqual([
      'site/a.ts: nothing but a test uses tried: take it out',
      'site/a.ts: nothing uses Left: take it out',
      'site/b.ts: no other file takes own: do not export it',
    ]);
  });
});

describe('the maths package is pure', () => {
  const names = globSync('calculators/maths/**/*.ts').sort();

  it('compiles with the language’s own library alone', () => {
    expect(names.length).toBeGreaterThan(3);
    expect(impurities(names)).toEqual([]);
  });

  it.each([
    'document.title',
    'window',
    'fetch("x")',
    'process.env',
    'console.log(1)',
    'setTimeout',
  ])('would refuse %s', (code) => {
    expect(impurities(['calculators/maths/pretended.ts'], `export const x = ${code};`)).not.toEqual(
      [],
    );
  });

  it('gives the same answer at any time', () => {
    const moody = /\bMath\.random\b|\bDate\b|\bIntl\b|\btoLocale/;
    expect(names.filter((name) => moody.test(read(name)))).toEqual([]);
  });
});

it('nothing is left for later', () => {
  const promise = /\b(?:TO[D]O|FIX[M]E|X[X]X|HA[C]K)\b/;
  const own = globSync(OWN);
  expect(own).toContain('test/floors.test.ts');
  expect(own.filter((file) => promise.test(read(file)))).toEqual([]);
});
