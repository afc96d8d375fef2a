import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress } from 'node:zlib';

const squeezed = promisify(brotliCompress);
const TEXTS = /\.(?:html|css|js|json|svg|xml|txt|webmanifest)$/;

/** Puts a compressed copy beside each text of a folder, as small as brotli makes it. */
export async function squeezeAll(folder: string): Promise<void> {
  const names = await readdir(folder, { recursive: true });
  await Promise.all(
    names
      .filter((name) => TEXTS.test(name))
      .map(async (name) => {
        const file = join(folder, name);
        await writeFile(`${file}.br`, await squeezed(await readFile(file)));
      }),
  );
}
