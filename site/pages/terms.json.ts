import { getCollection } from 'astro:content';
import type { APIRoute } from 'astro';
import type { Meanings } from '../terms/meanings.ts';

/** The meanings of all terms, fetched when a reader first asks for one where it stands. */
export const GET: APIRoute = async () => {
  const terms = await getCollection('glossary');
  const meanings: Meanings = Object.fromEntries(
    terms.map(({ id, data: { term, meaning } }) => [id, { term, meaning }]),
  );
  return Response.json(meanings);
};
