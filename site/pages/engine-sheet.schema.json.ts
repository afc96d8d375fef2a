import type { APIRoute } from 'astro';
import { engineSheetSchema } from '../../calculators/sheet/schema.ts';

/** The schema of an engine sheet's file, made from the same definitions as the page. */
export const GET: APIRoute = () =>
  new Response(`${JSON.stringify(engineSheetSchema, null, 2)}\n`, {
    headers: { 'content-type': 'application/schema+json' },
  });
