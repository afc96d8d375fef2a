import { globSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { availableParallelism, loadavg } from 'node:os';
import { chromium } from 'playwright-core';
import { launch } from '../browser/support/launch.ts';
import { serve } from '../browser/support/serve.ts';
import { coldBuild } from './cold-build.ts';
import { critical } from './critical.ts';
import { aims, kilobytes, milliseconds, quantile, table, type Aim } from './report.ts';
import { CRANK, dragging, SLOW_DOWN, touching, typing, type Drag } from './response.ts';
import { KINDS, transfer, type Transfer, type Visit } from './transfer.ts';

await using stack = new AsyncDisposableStack();
const built = await coldBuild();
stack.defer(built.remove);
const site = await serve(built.dist, { compress: true });
stack.defer(site.close);
const server = await launch();
stack.defer(() => server.close());
const browser = await chromium.connect(server.wsEndpoint());

const paths = globSync('**/index.html', { cwd: built.dist })
  .map((file) => file.replace(/index\.html$/, ''))
  .sort();
const calculators = paths.filter((path) => /^calculators\/./.test(path));

const visits = new Map<string, Visit>();
const firstScreens = new Map<string, number>();
for (const path of paths) {
  visits.set(path, await transfer(browser, site.url + path));
  firstScreens.set(path, await critical(browser, built.dist, site.url, path));
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

const spread = (times: readonly number[] | undefined): string[] =>
  times ? [milliseconds(quantile(times, 0.5)), milliseconds(quantile(times, 0.95))] : ['–', '–'];
/** A page that does next to nothing with a key and with a drag: what this machine itself takes. */
const bare = await serve(fileURLToPath(new URL('bare/', import.meta.url)));
stack.defer(bare.close);
const bareTyped = await typing(browser, bare.url);
const bareDragged = await dragging(browser, bare.url);
const touched = new Map<string, readonly number[]>();
const typed = new Map<string, readonly number[]>();
const dragged = new Map<string, Drag>();
for (const path of calculators) {
  touched.set(path, await touching(browser, site.url + path));
  typed.set(path, await typing(browser, site.url + path));
  const drag = await dragging(browser, site.url + path);
  if (drag) dragged.set(path, drag);
}
/** The task with the most in its picture: three sets, a plate, a disc and an indicator. */
const turned = await dragging(browser, `${site.url}practice/?engine=4711&task=plate`, CRANK);
if (!turned) throw new Error('The practice bench has no crank to turn.');
table(
  `From the first press on a page, and from a key, to the painted result, and the length of a frame while dragging, in ms, at ${SLOW_DOWN}× processor slow-down`,
  [
    'calculator',
    'first press, median',
    'key, median',
    'key, 95 %',
    'frame, median',
    'frame, 95 %',
    'of it work, median',
    '95 %',
  ],
  [
    ['a bare page', undefined, bareTyped, bareDragged] as const,
    ...calculators.map(
      (path) => [`/${path}`, touched.get(path), typed.get(path), dragged.get(path)] as const,
    ),
    ['/practice/, the crank turned', undefined, undefined, turned] as const,
  ].map(([name, presses, keys, drag]) => [
    name,
    spread(presses)[0]!,
    ...spread(keys),
    ...spread(drag?.frames),
    ...spread(drag?.work),
  ]),
);
console.log(
  `\nThe times hold for a machine at rest; its load is now ${loadavg()[0]!.toFixed(1)} on ${availableParallelism()} processors.`,
);
console.log(`\nCold build: ${built.seconds.toFixed(1)} s for ${paths.length} pages`);

/** Sixty a second. */
const FRAME_MS = 1000 / 60;
/** As a browser's clock tells a time. */
const tenths = (ms: number): number => Math.round(ms * 10) / 10;

const most = (figures: Iterable<number>): number => Math.max(0, ...figures);
const ofKind = (pick: (t: Transfer) => number, among: readonly Transfer[]): number =>
  most(among.map(pick)) / 1000;
const readTo = (end: RegExp): Transfer[] =>
  [...visits].filter(([path]) => end.test(path)).map(([, { read }]) => read);
const articles = readTo(/^articles\/./);
/** What a reader pays who reads the answer of the example; all that is fetched in use is told above. */
const pages = [...visits]
  .filter(([path]) => /^calculators\/./.test(path))
  .map(([, { opened }]) => opened);
const list: Aim[] = [
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
    what: 'first press to paint, median of the slowest calculator',
    aim: 200,
    found: most([...touched.values()].map((t) => quantile(t, 0.5))),
    unit: 'ms',
  },
  {
    what: 'key to paint, median of the slowest calculator',
    aim: 50,
    found: most([...typed.values()].map((t) => quantile(t, 0.5))),
    unit: 'ms',
  },
  {
    what: 'key to paint, 95 % of presses',
    aim: 50,
    found: most([...typed.values()].map((t) => quantile(t, 0.95))),
    unit: 'ms',
  },
  {
    what: 'working out and drawing anew while dragging, median (60 a second)',
    aim: FRAME_MS,
    found: most([...dragged.values()].map(({ work }) => quantile(work, 0.5))),
    unit: 'ms',
  },
  {
    what: 'a whole frame while dragging, painting included, median',
    aim: tenths(FRAME_MS),
    found: tenths(most([...dragged.values()].map(({ frames }) => quantile(frames, 0.5)))),
    unit: 'ms',
  },
  {
    what: 'a whole frame while the practice bench’s crank is turned, median',
    aim: tenths(FRAME_MS),
    found: tenths(quantile(turned.frames, 0.5)),
    unit: 'ms',
  },
  {
    what: 'JavaScript of the practice bench',
    aim: 60,
    found: visits.get('practice/')!.opened.bytes.js / 1000,
    unit: 'kB',
  },
];
aims(list);
