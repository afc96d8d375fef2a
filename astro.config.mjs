import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { anywhere } from './site/build/anywhere.ts';
import { policy } from './site/build/policy.ts';
import { headers } from './site/build/headers.ts';
import { lettering } from './site/build/lettering.ts';
import { mathFont } from './site/build/math-font.ts';
import { importAgain } from './site/build/import-again.ts';
import { notices } from './site/build/notices.ts';
import { offline, worker } from './site/build/offline.ts';
import { servedOnly } from './site/build/served-only.ts';
import { Shipped, watchShipped } from './site/build/shipped.ts';
import { unused } from './site/build/unused.ts';
import { guardHashes } from './site/waking/guard.ts';
import { planMet } from './site/build/plan-met.ts';
import { scriptFiles } from './site/build/script-files.ts';

// Where the build will live, if it is to know: for canonical links, the site map and link pictures.
// Everything else works from any folder without it.
const site = process.env.GUDGEON_SITE;

const shipped = new Shipped();

export default defineConfig({
  ...(site ? { site } : {}),
  srcDir: './site',
  publicDir: './site/public',
  outDir: './dist',
  cacheDir: './.cache/astro',
  trailingSlash: 'always',
  compressHTML: true,
  devToolbar: { enabled: false },
  prefetch: false,
  // In this order: the notices tell of all that is left, and the service worker knows the finished pages.
  integrations: [
    preact(),
    mdx(),
    lettering(shipped),
    mathFont(shipped),
    anywhere(),
    policy(),
    headers(),
    unused(),
    worker(shipped),
    notices(shipped),
    offline(),
  ],
  markdown: { syntaxHighlight: false },
  security: {
    csp: {
      scriptDirective: { hashes: [guardHashes.script] },
      styleDirective: { hashes: [guardHashes.style] },
      directives: [
        "default-src 'none'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
      ],
    },
  },
  vite: {
    cacheDir: './.cache/vite',
    plugins: [watchShipped(shipped), servedOnly(), importAgain(), planMet()],
    build: {
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      // What the style sheets are written down to. Without it the minifier takes every browser for
      // the newest, and joins properties that Safari reads only apart.
      cssTarget: ['chrome111', 'edge111', 'firefox114', 'safari16.4'],
    },
    environments: {
      client: { build: { rolldownOptions: scriptFiles } },
    },
    // Scripts fetch one another from where they are themselves, in whichever folder.
    experimental: {
      renderBuiltUrl: (_, { hostType }) => (hostType === 'js' ? { relative: true } : undefined),
    },
  },
});
