import { availableParallelism, loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { serve } from '../browser/support/serve.ts';
import type { ColdBuild } from './cold-build.ts';
import { openSite, pagesOf } from './open-site.ts';
import { aims, milliseconds, most, quantile, table } from './report.ts';
import { CRANK, dragging, SLOW_DOWN, touching, typing, type Drag } from './response.ts';

/** Sixty a second. */
const FRAME_MS = 1000 / 60;
/** As a browser's clock tells a time. */
const tenths = (ms: number): number => Math.round(ms * 10) / 10;

const spread = (times: readonly number[] | undefined): string[] =>
  times ? [milliseconds(quantile(times, 0.5)), milliseconds(quantile(times, 0.95))] : ['–', '–'];

/** Prints how long a press, a key and a drag take to be painted on a slowed-down processor. */
export async function times({ dist }: ColdBuild, only: readonly string[] = []): Promise<void> {
  await using site = await openSite(dist);
  const { browser } = site;

  const calculators = pagesOf(dist, 'calculators/*/index.html').filter(
    (path) => only.length === 0 || only.some((slug) => path.endsWith(`/${slug}/`)),
  );
  /** A page that does next to nothing with a key and with a drag: what this machine itself takes. */
  const bare = await serve(fileURLToPath(new URL('bare/', import.meta.url)));
  await using closing = new AsyncDisposableStack();
  closing.defer(bare.close);
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

  aims([
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
  ]);
}
