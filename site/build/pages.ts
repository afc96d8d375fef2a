import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

type Rewrite = (text: string, file: string) => string;

/** Writes every page of the finished site anew. `file` is its path below the site's root. */
export const rewritePages = (dir: URL, rewrite: Rewrite): Promise<void> =>
  rewriteFiles(dir, '.html', rewrite);

/** The same for every file whose name ends so. */
export async function rewriteFiles(dir: URL, end: string, rewrite: Rewrite): Promise<void> {
  const root = fileURLToPath(dir);
  const files = await readdir(root, { recursive: true });
  await Promise.all(
    files
      .filter((file) => file.endsWith(end))
      .map(async (file) => {
        const path = join(root, file);
        await writeFile(path, rewrite(await readFile(path, 'utf8'), file));
      }),
  );
}
