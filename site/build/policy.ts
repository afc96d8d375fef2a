import { createHash } from 'node:crypto';
import type { AstroIntegration } from 'astro';
import { rewritePages } from './pages.ts';

const INLINE = /<(script|style)(?:\s[^>]*)?>([\s\S]*?)<\/\1>/g;
const POLICY = /<meta http-equiv="content-security-policy" content="[^"]*">/;
const HASH = / 'sha256-([^']+)'/g;

/** Leaves in a page's policy the hashes of what stands in that page, and no others. */
function ownHashesOnly(html: string): string {
  const own = new Set(
    [...html.matchAll(INLINE)].map(([, , text = '']) =>
      createHash('sha256').update(text).digest('base64'),
    ),
  );
  return html.replace(POLICY, (policy) =>
    policy.replaceAll(HASH, (hash, digest: string) => (own.has(digest) ? hash : '')),
  );
}

/**
 * The builder's policy allows the scripts that it might have put into any page. What a page does
 * not hold need not be allowed there, and hashes do not compress.
 */
export function policy(): AstroIntegration {
  return {
    name: 'policy',
    hooks: {
      'astro:build:done': ({ dir }) => rewritePages(dir, ownHashesOnly),
    },
  };
}
