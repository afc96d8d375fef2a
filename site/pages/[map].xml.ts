import { getCollection } from 'astro:content';
import type { APIRoute } from 'astro';
import { calculators } from '../all-calculators.ts';
import { stages } from '../../calculators/frame/stages.ts';

/** A site map needs whole addresses, so there is one only when the build knows its own. */
export function getStaticPaths() {
  return import.meta.env.SITE ? [{ params: { map: 'sitemap' } }] : [];
}

export const GET: APIRoute = async ({ site }) => {
  const articles = await getCollection('articles');
  const paths = [
    '',
    'sheet/',
    'first-start/',
    'faults/',
    'calculators/',
    ...calculators.map(({ slug }) => `calculators/${slug}/`),
    'articles/',
    ...articles.map(({ id }) => `articles/${id}/`).sort(),
    'theory/',
    'bench/',
    ...Object.keys(stages).map((stage) => `bench/${stage}/`),
    'practice/',
    'glossary/',
    'sources/',
  ];
  const entries = paths.map((path) => `<url><loc>${new URL(path, site).href}</loc></url>`).join('');
  return new Response(
    `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">${entries}</urlset>\n`,
    { headers: { 'content-type': 'application/xml' } },
  );
};
