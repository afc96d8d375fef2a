import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import subsetFont from 'subset-font';
import { rewritePages } from './pages.ts';
import type { Shipped } from './shipped.ts';

const require = createRequire(import.meta.url);
const FONT =
  require.resolve('@fontsource/noto-sans-math/files/noto-sans-math-latin-400-normal.woff2');
const PACKAGE = dirname(require.resolve('@fontsource/noto-sans-math/package.json'));

const FORMULA = /<math[\s>][\s\S]*?<\/math>/g;
const VARIABLE = /<mi>([^<&])<\/mi>/gu;
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };
const PLANCK = 'ℎ';
/** What a browser draws of itself round what stands under a root. */
const ROOT = /<(?:msqrt|mroot)>/;
const ROOT_SIGN = '√';

/** First letter of an alphabet, its last, and the first of its slanted ones among the signs of mathematics. */
const SLANTED = [
  ['A', 'Z', 0x1d434],
  ['a', 'z', 0x1d44e],
  ['Α', 'Ω', 0x1d6e2],
  ['α', 'ω', 0x1d6fc],
] as const;

/** The sign that a browser shows for a variable of one letter. */
function slanted(letter: string): string {
  if (letter === 'h') return PLANCK;
  const alphabet = SLANTED.find(([first, last]) => letter >= first && letter <= last);
  if (alphabet === undefined) return letter;
  const [first, , start] = alphabet;
  return String.fromCodePoint(start + letter.codePointAt(0)! - first.codePointAt(0)!);
}

/** Every sign that the formulas of the pages show, each once, in the order of their numbers. */
export function mathSigns(pages: readonly string[]): string {
  const signs = new Set<string>();
  for (const [formula] of pages.flatMap((html) => [...html.matchAll(FORMULA)])) {
    if (ROOT.test(formula)) signs.add(ROOT_SIGN);
    for (const [, letter] of formula.matchAll(VARIABLE)) signs.add(slanted(letter!));
    const text = formula
      .replaceAll(/<[^>]*>/g, '')
      .replaceAll(/&(\w+);/g, (entity, name: string) => ENTITIES[name] ?? entity)
      .replaceAll(/&#x([\da-f]+);/gi, (_, code: string) =>
        String.fromCodePoint(parseInt(code, 16)),
      );
    for (const sign of text) if (/\S/u.test(sign)) signs.add(sign);
  }
  return [...signs].sort((a, b) => a.codePointAt(0)! - b.codePointAt(0)!).join('');
}

/** What a page with formulas is told: where the font is, and that its text does not wait for it. */
export function withMathFont(html: string, file: string, path: string): string {
  if (html.match(FORMULA) === null) return html;
  const up = '../'.repeat(path.split(/[\\/]/).length - 1);
  const style = `@font-face{font-family:Formulas;src:url(${up}_astro/${file})format("woff2");font-display:optional}math{font-family:Formulas,math}`;
  const hash = createHash('sha256').update(style).digest('base64');
  return html
    .replace('</head>', () => `<style>${style}</style></head>`)
    .replace(/(style-src [^;"]*)/, (_, sources: string) => `${sources} 'sha256-${hash}'`)
    .replace(
      /(<link rel="icon")/,
      (_, icon: string) =>
        `<link rel="preload" href="/_astro/${file}" as="font" type="font/woff2" crossorigin>${icon}`,
    );
}

/**
 * Gives the pages that have formulas a font that knows how to set them: many phones have none, and
 * roots, fractions and brackets are poor without. It holds the signs that the formulas show and no
 * others. A page never waits for it, and nothing moves when it comes.
 */
export function mathFont(shipped: Shipped): AstroIntegration {
  return {
    name: 'math-font',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const files = (await readdir(root, { recursive: true })).filter((f) => f.endsWith('.html'));
        const pages = await Promise.all(files.map((file) => readFile(join(root, file), 'utf8')));
        const options = { targetFormat: 'woff2', noHinting: true } as const;
        const font = await subsetFont(await readFile(FONT), mathSigns(pages), options);
        const digest = createHash('sha256').update(font).digest('hex').slice(0, 8);
        const name = `formulas.${digest}.woff2`;
        await writeFile(join(root, '_astro', name), font);
        shipped.addPackage(PACKAGE);
        await rewritePages(dir, (html, path) => withMathFont(html, name, path));
      },
    },
  };
}
