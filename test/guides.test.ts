import { existsSync, globSync, readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';

const guides = [
  'README.md',
  'DEVELOPERS.md',
  ...globSync('{calculators,content,site,test}/**/README.md'),
];
const ROOMS = ['calculators', 'content', 'site', 'test', 'dist', '.cache', '.ci', '.config'];

/** Files and folders that a guide names in code: a path, or the name of a file with its kind. */
function named(text: string): string[] {
  const spans = [...text.matchAll(/`([^`\s]+)`/g)].map((match) => match[1]!);
  return spans.filter((span) =>
    /^[\w.-]+\/[\w./-]*$|^[\w-]+\.(?:ts|tsx|astro|json|ya?ml|md)$/.test(span),
  );
}

/** Whether a file or folder of that name or end of path is in the project. */
function stands(name: string, beside: string): boolean {
  if (existsSync(name) || existsSync(posix.join(beside, name))) return true;
  return globSync(`{${ROOMS.join(',')}}/**/${name.replace(/\/$/, '')}`).length > 0;
}

describe.each(guides)('%s', (guide) => {
  const text = readFileSync(guide, 'utf8');
  const beside = posix.dirname(guide);

  it('names only files and folders that are there', () => {
    const made = /^(?:dist|engine-sheet)|^_(?:astro|headers)|<|^(?:sw\.js|404\.html|index\.html)$/;
    expect(named(text).filter((name) => !made.test(name) && !stands(name, beside))).toEqual([]);
  });

  it('links only to what is there', () => {
    const links = [...text.matchAll(/\]\((?!https?:)([^)#]+)/g)].map((match) => match[1]!);
    expect(links.filter((link) => !existsSync(posix.join(beside, link)))).toEqual([]);
  });

  it('names only commands that the package has', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: object };
    const run = [...text.matchAll(/npm run ([\w:-]+)/g)].map((match) => match[1]!);
    expect(run.filter((command) => !(command in scripts))).toEqual([]);
  });
});

it('the plan of the house names every room', () => {
  const plan = readFileSync('DEVELOPERS.md', 'utf8');
  const rooms = globSync(['calculators/*/', 'calculators/maths/*/', 'content/*/', 'site/*/'])
    .map((folder) => posix.basename(folder))
    .filter(
      (room) =>
        !['position', 'geometry', 'plate', 'points', 'carburettors', 'start', 'public'].includes(
          room,
        ),
    );
  expect(rooms.filter((room) => !plan.includes(`${room}/`))).toEqual([]);
});

it('the calculator that the guide shows has the files that it names', () => {
  const guide = readFileSync('DEVELOPERS.md', 'utf8');
  const [, folder, parts] = /`([\w/-]+)` shows a middling one: (.+?), a file each/.exec(guide)!;
  const files = [...parts!.matchAll(/`([\w-]+)`/g)].map((match) => match[1]!);
  const there = readdirSync(folder!).map((file) => file.replace(/\.tsx?$/, ''));
  expect(there.sort()).toEqual([...files, 'calculator'].sort());
});

it('the guide is short enough to be read through', () => {
  const words = readFileSync('DEVELOPERS.md', 'utf8').split(/\s+/).filter(Boolean);
  expect(words.length).toBeLessThanOrEqual(1200);
});

it('the top level holds what it is meant to hold, and nothing else', () => {
  const made = ['dist', 'node_modules'];
  const held = readdirSync(new URL('../', import.meta.url)).filter(
    (name) => !name.startsWith('.') && !made.includes(name),
  );
  expect(held.sort()).toEqual([
    'DEVELOPERS.md',
    'README.md',
    'astro.config.mjs',
    'calculators',
    'content',
    'package-lock.json',
    'package.json',
    'site',
    'test',
    'tsconfig.json',
  ]);
});
