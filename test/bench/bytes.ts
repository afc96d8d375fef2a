import type { ColdBuild } from './cold-build.ts';
import { critical } from './critical.ts';
import { openSite, pagesOf } from './open-site.ts';
import { aims, kilobytes, most, table } from './report.ts';
import { KINDS, transfer, type Transfer, type Visit } from './transfer.ts';

/** Prints what each page brings over the wire, by kind, and what of it the first screen needs. */
export async function bytes({ dist, seconds }: ColdBuild): Promise<void> {
  await using site = await openSite(dist);
  const { browser } = site;

  const paths = pagesOf(dist, '**/index.html');
  const visits = new Map<string, Visit>();
  const firstScreens = new Map<string, number>();
  for (const path of paths) {
    visits.set(path, await transfer(browser, site.url + path));
    firstScreens.set(path, await critical(browser, dist, site.url, path));
  }
  table(
    'HTML and CSS of the first screen, and a first visit over the wire, in kB (brotli, headers included)',
    [
      'page',
      'first screen',
      ...KINDS,
      'all',
      'requests',
      'read to the end: js',
      'all',
      'every figure used: js',
      'all',
    ],
    [...visits].map(([path, { opened, read, used }]) => [
      `/${path}`,
      kilobytes(firstScreens.get(path)!),
      ...KINDS.map((kind) => kilobytes(opened.bytes[kind])),
      kilobytes(opened.total),
      String(opened.requests),
      kilobytes(read.bytes.js),
      kilobytes(read.total),
      kilobytes(used.bytes.js),
      kilobytes(used.total),
    ]),
  );

  console.log(`\nCold build: ${seconds.toFixed(1)} s for ${paths.length} pages`);

  const ofKind = (pick: (t: Transfer) => number, among: readonly Transfer[]): number =>
    most(among.map(pick)) / 1000;
  const readTo = (end: RegExp): Transfer[] =>
    [...visits].filter(([path]) => end.test(path)).map(([, { read }]) => read);
  const articles = readTo(/^articles\/./);
  const calculators = [...visits]
    .filter(([path]) => /^calculators\/./.test(path))
    .map(([, visit]) => visit);
  /** What a reader pays who reads the answer of the example; all that is fetched in use is told above. */
  const pages = calculators.map(({ opened }) => opened);
  aims([
    {
      what: 'an article read to its end, in all',
      aim: 60,
      found: ofKind((t) => t.total, articles),
      unit: 'kB',
    },
    { what: 'its JavaScript', aim: 35, found: ofKind((t) => t.bytes.js, articles), unit: 'kB' },
    {
      what: 'a calculator opened, in all',
      aim: 60,
      found: ofKind((t) => t.total, pages),
      unit: 'kB',
    },
    { what: 'its JavaScript', aim: 35, found: ofKind((t) => t.bytes.js, pages), unit: 'kB' },
    {
      what: 'HTML and CSS of a page’s first screen',
      aim: 14,
      found: most(firstScreens.values()) / 1000,
      unit: 'kB',
    },
    {
      what: 'JavaScript of the practice bench',
      aim: 60,
      found: visits.get('practice/')!.opened.bytes.js / 1000,
      unit: 'kB',
    },
    {
      what: 'JavaScript of the engine sheet where nothing is kept',
      aim: 10,
      found: visits.get('sheet/')!.opened.bytes.js / 1000,
      unit: 'kB',
    },
    {
      what: 'a calculator in use, JavaScript',
      aim: 35,
      found: ofKind(
        (t) => t.bytes.js,
        calculators.map(({ used }) => used),
      ),
      unit: 'kB',
    },
  ]);
}
