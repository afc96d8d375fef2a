import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseHTML } from 'linkedom';

export const dist = fileURLToPath(new URL('../../../dist/', import.meta.url));

/** Every page of the built site, as files below `dist`. */
export const pageFiles: readonly string[] = globSync('**/*.html', { cwd: dist }).sort();

/** The address of a page below the site's home, as a visitor writes it. */
export const pathOf = (file: string): string => file.replace(/(^|\/)index\.html$/, '$1');

/** Slugs of all calculators that have a page. */
export const slugs: readonly string[] = pageFiles.flatMap(
  (file) => /^calculators\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? [],
);

const parsed = new Map<string, Document>();

/** A page's document as the server sends it, before any script. */
export function documentOf(file: string): Document {
  const known = parsed.get(file);
  if (known) return known;
  const { document } = parseHTML(readFileSync(join(dist, file), 'utf8'));
  parsed.set(file, document);
  return document;
}
