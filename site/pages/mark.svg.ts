import type { APIRoute } from 'astro';
import { markFile } from '../previews/mark.ts';

export const GET: APIRoute = () =>
  new Response(markFile, { headers: { 'content-type': 'image/svg+xml' } });
