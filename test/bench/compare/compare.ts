import { chromium } from 'playwright-core';
import { launch } from '../../browser/support/launch.ts';
import { serve } from '../../browser/support/serve.ts';
import { aims, kilobytes, milliseconds, quantile, table } from '../report.ts';
import { KINDS } from '../transfer.ts';
import { readArticles } from './articles.ts';
import { buildOthers, type Built } from './generators.ts';
import { load, presses, type Load, type Presses } from './visit.ts';

/** One for each article gives eighteen visits of each kind to a site, and takes some minutes. */
const ROUNDS = 1;

interface Visits {
  readonly loads: Load[];
  readonly presses: Presses[];
}

/** What was found at one of the sites, by article. */
type Site = Map<string, Visits>;

const median = (figures: readonly number[]): number => quantile(figures, 0.5);

/** Visits each article in all sites one after another, so that noise falls on all of them alike. */
async function visitAll(sites: readonly Built[], slugs: readonly string[]): Promise<Site[]> {
  await using stack = new AsyncDisposableStack();
  const server = await launch();
  stack.defer(() => server.close());
  const browser = await chromium.connect(server.wsEndpoint());
  const homes: string[] = [];
  for (const { dist } of sites) {
    const served = await serve(dist, { compress: true });
    stack.defer(served.close);
    homes.push(served.url);
  }
  const found: Site[] = sites.map(
    () => new Map(slugs.map((slug) => [slug, { loads: [], presses: [] }])),
  );
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const slug of slugs) {
      for (const [i, home] of homes.entries()) {
        const address = `${home}articles/${slug}/`;
        const visits = found[i]!.get(slug)!;
        visits.loads.push(await load(browser, address));
        visits.presses.push(await presses(browser, address));
      }
    }
  }
  return found;
}

/** The median over all visits to a site. */
const over = (site: Site, pick: (visits: Visits) => readonly number[]): number =>
  median([...site.values()].flatMap(pick));

/** The median over the visits to one article, for figures that are the same each time. */
const at = (site: Site, slug: string, pick: (load: Load) => number): number =>
  median(site.get(slug)!.loads.map(pick));

const bytes = ({ transfer }: Load): number => transfer.total;
const script = ({ transfer }: Load): number => transfer.bytes.js;

/**
 * Builds the same articles in two general documentation generators, prints bytes, requests,
 * largest paint and the delay of presses side by side, and returns whether ours asks for less than
 * the plainest of them.
 */
export async function compare(dist: string): Promise<boolean> {
  const articles = readArticles(dist);
  const slugs = articles.map(({ slug }) => slug);
  const sites: readonly Built[] = [{ name: 'ours', dist }, ...(await buildOthers(articles))];
  const names = sites.map(({ name }) => name);
  const found = await visitAll(sites, slugs);
  const [ours, ...others] = found as [Site, ...Site[]];

  const row = (
    what: string,
    show: (figure: number) => string,
    pick: (visits: Visits) => readonly number[],
  ): string[] => [what, ...found.map((site) => show(over(site, pick)))];
  table(
    `The same ${articles.length} articles, first visits on a slow phone: medians`,
    ['', ...names],
    [
      row('all, kB', kilobytes, ({ loads }) => loads.map(bytes)),
      ...KINDS.map((kind) =>
        row(`  ${kind}, kB`, kilobytes, ({ loads }) => loads.map((l) => l.transfer.bytes[kind])),
      ),
      row('requests', String, ({ loads }) => loads.map((l) => l.transfer.requests)),
      row('largest contentful paint, ms', milliseconds, ({ loads }) =>
        loads.map((l) => l.largestPaint),
      ),
      row('Tab to paint, as soon as something shows, ms', milliseconds, (v) =>
        v.presses.map(({ first }) => first),
      ),
      row('Tab to paint, when all is there, ms', milliseconds, (v) =>
        v.presses.flatMap(({ later }) => later),
      ),
    ],
  );
  table(
    'By article, kB in all and of JavaScript',
    ['article', ...names.flatMap((name) => [name, 'JS'])],
    slugs.map((slug) => [
      slug,
      ...found.flatMap((site) => [
        kilobytes(at(site, slug, bytes)),
        kilobytes(at(site, slug, script)),
      ]),
    ]),
  );
  console.log(
    '\nOurs carries live calculators in its articles; the others hold the text alone, and each is as it comes.',
    'Not counted: what our service worker fetches afterwards for use offline.',
  );

  const plainest = (pick: (load: Load) => number): number =>
    Math.min(...others.map((site) => over(site, ({ loads }) => loads.map(pick))));
  const heavier = (pick: (load: Load) => number): number =>
    slugs.filter((slug) => others.some((site) => at(ours, slug, pick) >= at(site, slug, pick)))
      .length;
  const aim = (what: string, pick: (load: Load) => number) => [
    {
      what: `${what} of an article, median, against the plainest`,
      aim: plainest(pick) / 1000,
      found: over(ours, ({ loads }) => loads.map(pick)) / 1000,
      unit: 'kB',
    },
    {
      what: `articles with as much ${what} as the plainest, or more`,
      aim: 0,
      found: heavier(pick),
      unit: 'articles',
    },
  ];
  return aims([...aim('traffic', bytes), ...aim('JavaScript', script)]);
}
