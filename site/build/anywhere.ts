import type { AstroIntegration } from 'astro';
import { rewriteFiles, rewritePages } from './pages.ts';

const LINK = /(\s(?:href|src|action|content)=")\/(?!\/)/g;

/** Rewrites a page's root-absolute addresses relative to its own depth below the site's root. */
function relativeLinks(html: string, depth: number): string {
  const up = depth === 0 ? './' : '../'.repeat(depth);
  return html.replaceAll(LINK, `$1${up}`);
}

/** Style sheets lie beside the fonts that they name. */
const OF_SHEET = /url\((["']?)\/_astro\//g;

/**
 * Makes the build work from any folder of any static host, without knowing the folder when it is
 * built: every address within the site becomes relative. The page for a missing address can be
 * served at any depth, so it keeps addresses from the root.
 */
export function anywhere(): AstroIntegration {
  return {
    name: 'anywhere',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        await rewritePages(dir, (html, file) =>
          file === '404.html' ? html : relativeLinks(html, file.split(/[\\/]/).length - 1),
        );
        await rewriteFiles(dir, '.css', (sheet) => sheet.replaceAll(OF_SHEET, 'url($1'));
      },
    },
  };
}
