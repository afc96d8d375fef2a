import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import type { Browser } from 'playwright-core';

/** How near to the least the search comes, in characters of the page. */
const NEAR = 256;

const packed = (text: string | Buffer): number => brotliCompressSync(text).length;

/**
 * What a phone must have of a page's HTML and style sheets before its first screen looks as it will:
 * the page is sent cut shorter and shorter, without scripts, as long as that screen stays the same
 * to the last dot. What follows comes while the reader reads.
 *
 * @param dist The built site.
 * @param home The address it is served at.
 * @param path The page's address below that.
 * @returns Bytes, by brotli.
 */
export async function critical(
  browser: Browser,
  dist: string,
  home: string,
  path: string,
): Promise<number> {
  const whole = await readFile(join(dist, path, 'index.html'), 'utf8');
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    javaScriptEnabled: false,
    serviceWorkers: 'block',
  });
  try {
    const page = await context.newPage();
    const address = home + path;
    let sent = whole;
    await page.route(address, (route) => route.fulfill({ contentType: 'text/html', body: sent }));
    // The lettering is optional: whether it comes in time would be seen as a difference.
    await page.route(/\.woff2$/, (route) => route.abort());
    const look = async (html: string): Promise<Buffer> => {
      sent = html;
      await page.goto(address);
      return page.screenshot();
    };
    const wanted = await look(whole);

    let [least, enough] = [0, whole.length];
    while (enough - least > NEAR) {
      const tried = Math.round((least + enough) / 2);
      if (wanted.equals(await look(whole.slice(0, tried)))) enough = tried;
      else least = tried;
    }
    // Those for paper alone keep no screen waiting, and name their medium first.
    const sheets = [...whole.matchAll(/<link rel="stylesheet" href="([^"]+)"/g)].map(([, href]) =>
      readFile(join(dist, path, href!)),
    );
    const styles = (await Promise.all(sheets)).map(packed);
    return packed(whole.slice(0, enough)) + styles.reduce((sum, size) => sum + size, 0);
  } finally {
    await context.close();
  }
}
