import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { freePort } from '../browser/support/free-port.ts';
import { launch } from '../browser/support/launch.ts';
import { serve } from '../browser/support/serve.ts';
import { ownPackages } from './own-packages.ts';
import { aims, table } from './report.ts';

const run = promisify(execFile);
const ATTEMPTS = 3;
/** One run of a page may meet whatever else the machine does; its makers advise the middle one of several. */
const RUNS = 3;

/** One page of each kind, and the calculator with the most to wake. */
const PAGES = [
  '',
  'articles/where-the-piston-is/',
  'calculators/piston-position/',
  'calculators/time-area/',
  'sheet/',
  'glossary/',
  'search/',
  'first-start/',
] as const;

/** What is read of Lighthouse's report. */
interface Report {
  readonly categories: Readonly<Record<string, Category>>;
  readonly audits: Readonly<Record<string, Audit>>;
}
interface Category {
  readonly title: string;
  readonly score: number | null;
  readonly auditRefs: readonly { readonly id: string; readonly weight: number }[];
}
interface Audit {
  readonly title: string;
  readonly score: number | null;
  readonly displayValue?: string;
  readonly details?: { readonly items?: readonly unknown[] };
}

/** One run, in a browser of its own, which then keeps nothing from another page. */
async function auditOnce(home: string, address: string): Promise<Report> {
  const port = await freePort();
  const server = await launch([`--remote-debugging-port=${port}`]);
  try {
    const { stdout } = await run(
      process.execPath,
      [
        join(home, 'node_modules/lighthouse/cli/index.js'),
        address,
        '--output=json',
        '--quiet',
        '--no-enable-error-reporting',
        `--port=${port}`,
      ],
      { cwd: home, maxBuffer: 1e8 },
    );
    return JSON.parse(stdout) as Report;
  } finally {
    await server.close();
  }
}

/** On a busy machine it can lose its own trace, and then asks to be run again. */
async function audit(home: string, address: string): Promise<Report> {
  for (let left = ATTEMPTS - 1; ; left -= 1) {
    try {
      return await auditOnce(home, address);
    } catch (error) {
      const said = (error as { readonly stderr?: string }).stderr;
      if (said === undefined) throw error;
      if (left === 0) throw new Error(`Lighthouse failed on ${address}: ${said}`);
    }
  }
}

/** The run in the middle of several by its performance. */
async function middleRun(home: string, address: string): Promise<Report> {
  const reports: Report[] = [];
  while (reports.length < RUNS) reports.push(await audit(home, address));
  const scoreOf = ({ categories }: Report): number => categories['performance']!.score ?? 0;
  return reports.sort((a, b) => scoreOf(a) - scoreOf(b))[Math.floor(RUNS / 2)]!;
}

const percent = ({ score }: Category): number => Math.round((score ?? 0) * 100);

/** Each audit that costs a category points, with the first place it was found in. */
function shortfalls(path: string, { categories, audits }: Report): string[] {
  return Object.values(categories)
    .filter((category) => percent(category) < 100)
    .flatMap(({ title, auditRefs }) =>
      auditRefs
        .filter(({ id, weight }) => weight > 0 && (audits[id]!.score ?? 1) < 1)
        .map(({ id }) => {
          const { title: what, displayValue, details } = audits[id]!;
          const place = JSON.stringify(details?.items?.[0] ?? '').slice(0, 300);
          return `/${path} ${title}: ${id}: ${what} ${displayValue ?? ''} ${place}`;
        }),
    );
}

/**
 * Runs Lighthouse, as it comes (a phone, slow 4G), on one page of each kind of the built site, and
 * prints the scores and what keeps them from 100; returns whether all are 100.
 */
export async function lighthouse(dist: string): Promise<boolean> {
  const home = await ownPackages('lighthouse');
  const site = await serve(dist, { compress: true });
  const reports = new Map<string, Report>();
  try {
    for (const path of PAGES) reports.set(path, await middleRun(home, site.url + path));
  } finally {
    await site.close();
  }

  const kinds = [...reports.values()][0]!.categories;
  table(
    `Lighthouse, on a phone: the middle one of ${RUNS} runs`,
    ['page', ...Object.values(kinds).map(({ title }) => title)],
    [...reports].map(([path, { categories }]) => [
      `/${path}`,
      ...Object.keys(kinds).map((kind) => String(percent(categories[kind]!))),
    ]),
  );
  console.log(
    '\nPerformance holds for a machine at rest; the other categories hold whatever else it does.',
  );
  const lacking = [...reports].flatMap(([path, report]) => shortfalls(path, report));
  if (lacking.length > 0) console.log(`\nWhat keeps them from 100:\n\n${lacking.join('\n')}`);
  return aims([{ what: 'audits that cost points', aim: 0, found: lacking.length, unit: '' }]);
}
