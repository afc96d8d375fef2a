import type { APIRoute } from 'astro';
import { evaluate } from '../../../../calculators/frame/evaluate.ts';
import type { AnyCalculator, Download } from '../../../../calculators/frame/types.ts';
import { whoseFile } from '../../../../calculators/frame/whose-field.ts';
import { calculators } from '../../../all-calculators.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly download: Download;
}

/** The files of each calculator's worked example, ready made for pages without JavaScript. */
export function getStaticPaths() {
  return calculators.flatMap((calculator) =>
    (calculator.downloads ?? []).map((download) => ({
      params: { slug: calculator.slug, file: download.name },
      props: { calculator, download },
    })),
  );
}

export const GET: APIRoute<Props> = async ({ props: { calculator, download } }) => {
  const { values, fields } = evaluate(calculator, {}, { lengths: 'mm' });
  const content = await download.make(values as never, 'mm', whoseFile(fields));
  return new Response(content as BodyInit, { headers: { 'Content-Type': download.type } });
};
