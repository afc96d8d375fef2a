import { globSync } from 'node:fs';
import { posix } from 'node:path';
import { importsOf } from './imports.ts';

const EXPORTED =
  /^export (?:async )?(const|class|function\*?|interface|type) (\w+)|^export const \{([^}]*)\}/gm;
const isTest = (file: string): boolean => /^(?:test|\.config)\//.test(file);
/** The hooks of a page, and what the collections are, are taken by Astro. */
const byAstro = (file: string): boolean => /^site\/pages\/|\bcontent\.config\./.test(file);

/** How often a text says each word, its comments left out. */
function wordsOf(text: string): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const code = text.replace(/^\s*\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
  for (const [word] of code.matchAll(/[\w$]+/g)) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

/** The files that import each file, by its name or by a pattern. */
function importersOf(texts: ReadonlyMap<string, string>): ReadonlyMap<string, readonly string[]> {
  const importers = new Map<string, string[]>();
  for (const [file, text] of texts) {
    for (const name of importsOf(file, text)) {
      const path = name.startsWith('/') ? name.slice(1) : posix.join(posix.dirname(file), name);
      for (const target of path.includes('*') ? globSync(path) : [path]) {
        importers.set(target, [...(importers.get(target) ?? []), file]);
      }
    }
  }
  return importers;
}

/** What a file exports, each with whether it is a type. */
const exportsOf = (text: string): { name: string; isType: boolean }[] =>
  [...text.matchAll(EXPORTED)].flatMap(([, kind, name, several]) =>
    (name === undefined ? several!.split(',') : [name])
      .map((each) => each.split(':').at(-1)!.trim())
      .map((each) => ({ name: each, isType: kind === 'interface' || kind === 'type' })),
  );

/**
 * What files export and nothing but a test uses, and what they export though no other file
 * takes it. A type may be exported for whoever is handed what it describes, and what an article works
 * out is exported without being taken, as MDX has it.
 */
export function needless(texts: ReadonlyMap<string, string>): string[] {
  const importers = importersOf(texts);
  const words = new Map([...texts].map(([file, text]) => [file, wordsOf(text)]));
  const saidIn = (file: string, name: string): number => words.get(file)!.get(name) ?? 0;
  return [...texts].flatMap(([file, text]) => {
    if (byAstro(file)) return [];
    const takers = importers.get(file) ?? [];
    // What is fetched as a whole is used by whoever it is handed on to.
    const whole = new RegExp(`import\\(['"][^'"]*/${posix.basename(file)}['"]\\)`);
    if (takers.some((from) => !isTest(from) && whole.test(texts.get(from)!))) return [];
    return exportsOf(text).flatMap(({ name, isType }) => {
      const by = takers.filter((from) => saidIn(from, name) > 0);
      if (by.some((from) => isTest(file) || !isTest(from))) return [];
      if (saidIn(file, name) === 1) {
        return [`${file}: nothing${by.length > 0 ? ' but a test' : ''} uses ${name}: take it out`];
      }
      return by.length > 0 || isType || file.endsWith('.mdx')
        ? []
        : [`${file}: no other file takes ${name}: do not export it`];
    });
  });
}
