import type { APIRoute } from 'astro';
import { searchIndex } from '../search/documents.ts';

/** What the search page looks through, fetched when it is opened. */
export const GET: APIRoute = async () => Response.json(await searchIndex());
