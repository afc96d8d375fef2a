import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { SearchIndex } from '../../site/search/found.ts';
import { dist, documentOf, pageFiles } from './support/built.ts';

const text = readFileSync(join(dist, 'search-index.json'), 'utf8');
const { documents } = JSON.parse(text) as SearchIndex;

describe('the list that is searched', () => {
  it.each(
    documents.flatMap(({ url, parts = [] }) => [url, ...parts.map(({ id }) => `${url}#${id}`)]),
  )('leads to %s, which is there', (address) => {
    const [, folder, , id] = /^([^?#]*)(\?[^#]*)?(?:#(.*))?$/.exec(address)!;
    const file = `${folder!}index.html`;
    expect(pageFiles).toContain(file);
    if (id !== undefined) expect(documentOf(file).getElementById(id), id).not.toBeNull();
  });

  it('is fetched within two seconds at 1 Mbit/s from a host that compresses nothing', () => {
    expect(Buffer.byteLength(text)).toBeLessThan(250_000);
  });
});
