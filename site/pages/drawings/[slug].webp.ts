import type { APIRoute } from 'astro';
import { calculators } from '../../all-calculators.ts';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { smallDrawing } from '../../previews/small-drawing.ts';

export const getStaticPaths = () =>
  calculators.map((calculator) => ({ params: { slug: calculator.slug }, props: { calculator } }));

export const GET: APIRoute<{ calculator: AnyCalculator }> = async ({ props: { calculator } }) =>
  new Response(await smallDrawing(calculator), { headers: { 'content-type': 'image/webp' } });
