import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { searchIndex, type ArticleText, type TermText } from '../../site/search/documents.ts';

/** A line of front matter, without its quotes. */
const line = (text: string, key: string): string =>
  new RegExp(`^ *${key}: (.*)$`, 'm').exec(text)?.[1]?.replace(/^(['"])(.*)\1$/, '$2') ?? '';

const articles: ArticleText[] = globSync('content/articles/*.mdx')
  .sort()
  .map((file) => {
    const [, head, body] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(file, 'utf8'))!;
    return {
      id: basename(file, '.mdx'),
      title: line(head!, 'title'),
      purpose: line(head!, 'purpose'),
      body: body!,
    };
  });

const terms: TermText[] = readFileSync('content/glossary.yaml', 'utf8')
  .split(/^(?=[a-z][a-z0-9-]*:\n)/m)
  .filter((entry) => /^[a-z]/.test(entry))
  .map((entry) => ({
    id: entry.slice(0, entry.indexOf(':')),
    term: line(entry, 'term'),
    also: /^ *also: \[(.*)\]$/m.exec(entry)?.[1]?.split(/, */) ?? [],
    meaning: line(entry, 'meaning'),
  }));

/** The index of the whole site, as the build makes it. */
export const wholeIndex = searchIndex(articles, terms);
