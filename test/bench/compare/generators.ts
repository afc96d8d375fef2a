import { execFile } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { promisify } from 'node:util';
import { parseHTML } from 'linkedom';
import { ownPackages } from '../own-packages.ts';
import { packed, type Article } from './articles.ts';

const run = promisify(execFile);

export interface Built {
  readonly name: string;
  readonly dist: string;
}

interface Generator {
  readonly name: string;
  /** Its folder, and below that where it looks for texts and where it puts the site. */
  readonly folder: string;
  readonly texts: string;
  readonly dist: string;
  readonly command: readonly string[];
  /** Whether a page's title stands in its text, rather than being set from its front matter. */
  readonly titleInText: boolean;
}

const generators: readonly Generator[] = [
  {
    name: 'Starlight',
    folder: 'starlight',
    texts: 'src/content/docs',
    dist: 'dist',
    command: ['node_modules/astro/bin/astro.mjs', 'build', '--root', 'starlight'],
    titleInText: false,
  },
  {
    name: 'VitePress',
    folder: 'vitepress',
    texts: '.',
    dist: '.vitepress/dist',
    command: ['node_modules/vitepress/bin/vitepress.js', 'build', 'vitepress'],
    titleInText: true,
  },
];

/** The articles' texts as Markdown. */
async function markdownOf(articles: readonly Article[], home: string): Promise<string[]> {
  const child = execFile(process.execPath, ['to-markdown.mjs'], { cwd: home });
  child.stdin!.end(JSON.stringify(articles.map(({ html }) => html)));
  const [out, errors] = await Promise.all([text(child.stdout!), text(child.stderr!)]);
  if (errors) throw new Error(errors);
  return JSON.parse(out) as string[];
}

function page(title: string, purpose: string, body: string, titleInText: boolean): string {
  const front = [`title: ${JSON.stringify(title)}`, `description: ${JSON.stringify(purpose)}`];
  const head = titleInText ? [`# ${title}`] : [];
  return ['---', ...front, '---', ...head, purpose, body].join('\n\n');
}

/** Fails unless a built page holds every paragraph of its article: it is then the same text. */
async function assertSameText(dist: string, { slug, paragraphs }: Article): Promise<void> {
  const { document } = parseHTML(await readFile(join(dist, `articles/${slug}/index.html`), 'utf8'));
  const found = packed(document.querySelector('main')!.textContent);
  const lost = paragraphs.filter((paragraph) => !found.includes(paragraph));
  if (lost.length > 0) throw new Error(`${dist} has lost a part of ${slug}: ${lost[0]}`);
}

async function build(
  { name, folder, texts, dist, command, titleInText }: Generator,
  articles: readonly Article[],
  markdown: readonly string[],
  home: string,
): Promise<Built> {
  const root = join(home, folder);
  const put = async (path: string, content: string): Promise<void> => {
    await mkdir(join(root, texts, path), { recursive: true });
    await writeFile(join(root, texts, path, 'index.md'), content);
  };
  await rm(join(root, texts, 'articles'), { recursive: true, force: true });
  await put('', page('Gudgeon', 'The articles alone.', '', titleInText));
  for (const [i, { slug, title, purpose }] of articles.entries()) {
    await put(`articles/${slug}`, page(title, purpose, markdown[i]!, titleInText));
  }
  await run(process.execPath, [...command], {
    cwd: home,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' },
  });
  const built = join(root, dist);
  for (const article of articles) await assertSameText(built, article);
  return { name, dist: built };
}

/** Builds the articles' text in each of the two general generators, each as it comes. */
export async function buildOthers(articles: readonly Article[]): Promise<Built[]> {
  const home = await ownPackages('generators');
  const markdown = await markdownOf(articles, home);
  await writeFile(join(home, 'articles.json'), JSON.stringify(articles));
  const all: Built[] = [];
  for (const generator of generators) all.push(await build(generator, articles, markdown, home));
  return all;
}
