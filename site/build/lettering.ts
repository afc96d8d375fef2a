import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import subsetFont from 'subset-font';
import type { Shipped } from './shipped.ts';

const require = createRequire(import.meta.url);
const FONT =
  require.resolve('@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-600-normal.woff2');
const PACKAGE = dirname(require.resolve('@fontsource/barlow-semi-condensed/package.json'));

const FIRST_PRINTED = 32;
const LAST_PRINTED = 126;
const PRINTED = Array.from({ length: LAST_PRINTED - FIRST_PRINTED + 1 }, (_, i) =>
  String.fromCodePoint(FIRST_PRINTED + i),
).join('');
/** What headings and figures of this site hold beside the letters of English. */
const SIGNS = '£°±²³·¹¼½¾×÷éè–—‘’“”…′″−';

/**
 * Cuts the lettering of headings, answers and title blocks from an open family: one weight, with the
 * signs that they hold and figures of one width. `site/styles/lettering.css` names the file.
 */
export function lettering(shipped: Shipped): AstroIntegration {
  return {
    name: 'lettering',
    hooks: {
      'astro:config:setup': async ({ config }) => {
        const folder = join(fileURLToPath(config.root), '.cache/lettering');
        const options = { targetFormat: 'woff2', noHinting: true } as const;
        const font = await subsetFont(await readFile(FONT), PRINTED + SIGNS, options);
        await mkdir(folder, { recursive: true });
        await writeFile(join(folder, 'lettering.woff2'), font);
        shipped.addPackage(PACKAGE);
      },
    },
  };
}
