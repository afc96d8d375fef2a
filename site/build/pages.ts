import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Writes every page of the finished site anew. `file` is its path below the site's root. */
export async function rewritePages(
  dir: URL,
  rewrite: (html: string, file: string) => string,
): Promise<void> {
  const root = fileURLToPath(dir);
  const files = await readdir(root, { recursive: true });
  await Promise.all(
    files
      .filter((file) => file.endsWith('.html'))
      .map(async (file) => {
        const path = join(root, file);
        await writeFile(path, rewrite(await readFile(path, 'utf8'), file));
      }),
  );
}
