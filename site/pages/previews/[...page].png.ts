import { getCollection } from 'astro:content';
import type { APIRoute } from 'astro';
import { calculators } from '../../all-calculators.ts';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { preview } from '../../previews/preview.ts';

interface Props {
  title: string;
  text: string;
  calculator?: AnyCalculator;
}

/** Pages beside calculators and articles whose links show a picture of their own. */
const ownPages = [
  {
    page: 'sheet',
    title: 'Engine sheet',
    text: 'Your engine entered once, the order of work from bare plate to first start, and one sheet to print.',
  },
  {
    page: 'first-start',
    title: 'First start',
    text: 'The list to tick before the first kick, how to stop it, and what the engine says.',
  },
];

export async function getStaticPaths() {
  const articles = await getCollection('articles');
  return [
    {
      params: { page: 'site' },
      props: {
        title: 'Set up an old two-stroke by measured figures',
        text: 'Points, timing, carburettors, ports: calculators and articles for the home workshop.',
      },
    },
    ...calculators.map((calculator) => ({
      params: { page: `calculators/${calculator.slug}` },
      props: { title: calculator.title, text: calculator.purpose, calculator },
    })),
    ...ownPages.map(({ page, title, text }) => ({ params: { page }, props: { title, text } })),
    ...articles.map(({ id, data }) => ({
      params: { page: `articles/${id}` },
      props: { title: data.title, text: data.purpose },
    })),
  ];
}

export const GET: APIRoute<Props> = async ({ props: { title, text, calculator } }) =>
  new Response(await preview(title, text, calculator), {
    headers: { 'content-type': 'image/png' },
  });
