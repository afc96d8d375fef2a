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

  it('keeps the colours of a dark screen off paper', () => {
    const text = readFileSync(new URL(sheet, root), 'utf8');
    const dark = [...text.matchAll(/@media ([^{]*prefers-color-scheme: dark[^{]*) \{/g)];
    for (const [, query] of dark) expect(query).toMatch(/^screen and /);
  });
});

/** The rules of a style sheet that hold on paper alone. */
function onPaper(text: string): string {
  let found = '';
  for (const { index } of text.matchAll(/@media print \{/g)) {
    let open = 0;
    let end = text.indexOf('{', index);
    do {
      if (text[end] === '{') open += 1;
      if (text[end] === '}') open -= 1;
      end += 1;
    } while (open > 0);
    found += text.slice(index, end);
  }
  return found;
}

it('puts nothing on paper that is fixed to a screen', () => {
  const texts = sheets.map((sheet) => readFileSync(new URL(sheet, root), 'utf8'));
  const paper = texts.map(onPaper).join('\n');
  const fixed = texts.flatMap((text) =>
    [...text.matchAll(/^(\.[\w-]+) \{[^}]*position: fixed/gm)].map(([, name]) => name!),
  );
  expect(fixed).toContain('.key-row');
  for (const name of fixed) {
    expect(paper).toMatch(new RegExp(`\\${name}[^{}]*\\{\\s*display: none`));
  }
});

it('marks danger and worked examples by lines, not by a tint with a coloured bar', () => {
  const rules = sheets.flatMap((sheet) => [
    ...readFileSync(new URL(sheet, root), 'utf8').matchAll(/([^{}]*)\{([^{}]*)\}/g),
  ]);
  const of = (name: string): string =>
    rules
      .filter(([, selector]) => new RegExp(`\\${name}(?![\\w-])(?!::)`).test(selector!))
      .map(([, , body]) => body!)
      .join('\n');
  for (const name of ['.caution', '.at-once', '.worked']) {
    expect(of(name), name).not.toMatch(/-soft\)|border-inline-start: 0\.4rem/);
  }
  for (const name of ['.caution', '.at-once']) expect(of(name), name).toMatch(/var\(--hatch\)/);
});

/** Contrast of two colours as WCAG 2.2 defines it ("relative luminance" and "contrast ratio"). */
function contrast(one: string, other: string): number {
  const luminance = (colour: string): number => {
    const [red, green, blue] = [1, 3, 5].map((at) => {
      const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
  };
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

describe.each(['light', 'dark'])('in %s', (scheme) => {
  const [light, dark] = readFileSync(new URL('site/styles/base.css', root), 'utf8').split(
    /@media screen and \(prefers-color-scheme: dark\)/,
  );
  const colours = new Map(
    [light!, ...(scheme === 'dark' ? [dark!] : [])].flatMap((text) =>
      [...text.matchAll(/(--[\w-]+): (#[\da-f]{6});/g)].map(([, name, value]) => [name!, value!]),
    ),
  );

  it('a line that marks something is seen on what it stands on', () => {
    let seen = 0;
    for (const sheet of sheets) {
      const text = readFileSync(new URL(sheet, root), 'utf8');
      for (const [, body] of text.matchAll(/\{([^{}]*)\}/g)) {
        const filled = /background: (var\(--[\w-]+\))/.exec(body!)?.[1];
        const edges = body!.matchAll(
          /border[\w-]*: (?:[2-9]px|0\.\drem) solid (var\((--[\w-]+)\))/g,
        );
        for (const [, edge, name] of edges) {
          // What only parts one thing from the next is quiet on purpose.
          if (edge === filled || name === '--rule') continue;
          seen += 1;
          for (const under of ['--ground', '--sheet']) {
            const seenBy = contrast(colours.get(name!)!, colours.get(under)!);
            expect(seenBy, `${sheet}: ${name} on ${under}`).toBeGreaterThanOrEqual(3);
          }
        }
      }
    }
    expect(seen).toBeGreaterThan(10);
  });
});

describe('what the style sheets name', () => {
  const bare = (file: string): string =>
    readFileSync(new URL(file, root), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
  const css = sheets.map(bare).join('\n');
  const code = globSync('{calculators,content,site}/**/*.{ts,tsx,astro,mdx}', { cwd: root })
    .map(bare)
    .join('\n');
  const all = (text: string, pattern: RegExp): string[] => [
    ...new Set([...text.matchAll(pattern)].map(([, name]) => name!)),
  ];

  it('is set and used', () => {
    const set = all(`${css}${code}`, /(--[\w-]+)['"]?\]?\s*:/g);
    const used = all(`${css}${code}`, /var\((--[\w-]+)/g);
    expect(all(css, /(--[\w-]+)\s*:/g).filter((name) => !used.includes(name))).toEqual([]);
    expect(used.filter((name) => !set.includes(name))).toEqual([]);
  });

  it('stands on some page', () => {
    const words = new Set(code.match(/[\w-]+/g));
    // A name that is put together, such as `port-${kind}`, is known by how it begins.
    const begun = all(code, /([a-z][\w-]*-)\$\{/g);
    const idle = all(css, /\.([a-zA-Z][\w-]*)(?=[^{}]*\{)/g)
      // The formulas' own names are those of the library that sets them.
      .filter((name) => !name.startsWith('tml-') && !words.has(name))
      .filter((name) => !begun.some((start) => name.startsWith(start)));
    expect(idle).toEqual([]);
  });
});
