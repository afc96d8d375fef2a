import { getCollection } from 'astro:content';
import type { Named } from './link-terms.ts';

/** The terms of the glossary, each with the names by which it stands in a text. */
export const namedTerms = async (): Promise<Named[]> =>
  (await getCollection('glossary')).map(({ id, data }) => ({
    id,
    names: [data.term, ...data.also],
  }));
