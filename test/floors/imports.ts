import { existsSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';

/** Whether a file may import another file of the project, or a package. Paths are from its root. */
interface Floor {
  readonly name: string;
  /** The files that stand on this floor. */
  readonly holds: (file: string) => boolean;
  readonly files: (file: string, from: string) => boolean;
  readonly packages: RegExp;
}

const within =
  (...folders: readonly string[]) =>
  (file: string): boolean =>
    folders.some((folder) => file.startsWith(`${folder}/`));

const folderOf = (file: string): string => posix.dirname(file);
const isCalculator = (folder: string): boolean => existsSync(posix.join(folder, 'calculator.tsx'));
const NONE = /^$/;
const DRAWING = /^(?:preact(?:\/.*)?|d3-[a-z]+)$/;

/** From the ground floor up; a file stands on the first floor that holds it. */
export const floors: readonly Floor[] = [
  {
    name: 'the maths package',
    holds: within('calculators/maths'),
    files: within('calculators/maths'),
    packages: NONE,
  },
  {
    name: 'a calculator',
    holds: (file) => within('calculators')(file) && isCalculator(folderOf(file)),
    files: (file, from) =>
      within('calculators')(file) &&
      (folderOf(file) === folderOf(from) || !isCalculator(folderOf(file))),
    packages: /^(?:preact(?:\/.*)?|d3-[a-z]+|pdf-lib|@tarikjabiri\/dxf)$/,
  },
  {
    name: 'what calculators share',
    holds: within('calculators'),
    files: (file) => within('calculators')(file) && !isCalculator(folderOf(file)),
    packages: /^(?:preact(?:\/.*)?|d3-[a-z]+|mathjs(?:\/.*)?|pdf-lib|@tarikjabiri\/dxf)$/,
  },
  {
    name: 'the content',
    holds: within('content'),
    files: within('content', 'calculators'),
    packages: DRAWING,
  },
  {
    name: 'the site',
    holds: within('site'),
    files: within('site', 'content', 'calculators', 'test/outside'),
    packages: /./,
  },
];

/** The scripts in a file: all of a TypeScript file, the front matter and scripts of a page. */
function scripts(file: string, text: string): string {
  if (!/\.(?:astro|mdx)$/.test(file)) return text;
  const pieces = [
    ...(/^---\n([\s\S]*?)\n---/.exec(text)?.slice(1) ?? []),
    ...[...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1]!),
    ...(text.match(/^import .*$/gm) ?? []),
  ];
  return pieces.join('\n');
}

/** What a file imports: modules, patterns of modules gathered when it is built, and files looked up. */
export function importsOf(file: string, text: string): string[] {
  const code = scripts(file, text);
  const { importedFiles } = ts.preProcessFile(code, true, true);
  const gathered = [...code.matchAll(/import\.meta\.glob[^(]*\(\s*['"]([^'"]+)/g)];
  const found = [...code.matchAll(/require\.resolve\(\s*['"]([^'"]+)/g)];
  const names = [
    ...importedFiles.map(({ fileName }) => fileName),
    ...[...gathered, ...found].map((m) => m[1]!),
  ];
  return [...new Set(names)];
}

/** The imports of a file that go up, each in words. */
export function breaches(file: string, text: string): string[] {
  const floor = floors.find(({ holds }) => holds(file));
  if (!floor) return [];
  return importsOf(file, text).flatMap((name) => {
    const local = /^\.{0,2}\//.test(name);
    const target = name.startsWith('/') ? name.slice(1) : posix.join(posix.dirname(file), name);
    const allowed = local ? floor.files(target, file) : floor.packages.test(name);
    return allowed ? [] : [`${file} (${floor.name}) imports ${local ? target : name}`];
  });
}

/** The room of the site that a file belongs to: the folder below `site/`; a loose file is its own. */
const roomOf = (file: string): string => file.split('/').slice(1, 2).join();

/** The ways round by which a room of the site comes to import itself, such as `a → b → a`. */
export function circles(files: readonly string[], read: (file: string) => string): string[] {
  const onward = new Map<string, Set<string>>();
  for (const file of files) {
    for (const name of importsOf(file, read(file)).filter((name) => name.startsWith('.'))) {
      const target = posix.join(posix.dirname(file), name);
      if (!target.startsWith('site/') || roomOf(target) === roomOf(file)) continue;
      onward.set(roomOf(file), (onward.get(roomOf(file)) ?? new Set()).add(roomOf(target)));
    }
  }
  const from = (room: string, way: readonly string[]): string[] =>
    way.includes(room)
      ? [[...way.slice(way.indexOf(room)), room].join(' → ')]
      : [...(onward.get(room) ?? [])].flatMap((next) => from(next, [...way, room]));
  return [...new Set([...onward.keys()].flatMap((room) => from(room, [])))];
}
