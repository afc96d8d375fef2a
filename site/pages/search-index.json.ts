import type { APIRoute } from 'astro';
import { getCollection } from 'astro:content';
import { searchIndex } from '../search/documents.ts';

/** What the search page looks through, fetched when it is opened. */
export const GET: APIRoute = async () => {
  const articles = await getCollection('articles');
  const terms = await getCollection('glossary');
  return Response.json(
    searchIndex(
      articles.map(({ id, data, body = '' }) => ({ ...data, id, body })),
      terms.map(({ id, data }) => ({ ...data, id })),
    ),
  );
};
