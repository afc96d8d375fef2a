import { cleanupOutdatedCaches, getCacheKeyForURL, precacheAndRoute } from 'workbox-precaching';

/** Every file of the site with its fingerprint, written in when the site is built. */
declare const KEPT_FILES: { url: string; revision: string | null; integrity: string }[];

/** What a worker's own types would give; the site's other files are checked as pages. */
interface Worker {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
}
const worker = globalThis as unknown as Worker;

interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Event {
  readonly request: Request;
  respondWith(answer: Response | Promise<Response>): void;
}

/** The folder that an address without its last slash, or with `index.html`, stands for. */
function folderOf(address: string): URL | undefined {
  const url = new URL(address);
  if (url.pathname.endsWith('/')) return undefined;
  url.pathname = url.pathname.replace(/(?:\/index\.html)?$/, '/');
  return url;
}

/** What starts at the root of the host in the page for missing addresses. */
const FROM_ROOT = /\b(href|src)="\/(?!\/)/g;

/** The page for missing addresses without a host to send it, with its links led to this folder. */
async function notHere(): Promise<Response> {
  const { scope } = worker.registration;
  const page = await caches.match(getCacheKeyForURL(new URL('404.html', scope).href) ?? '');
  if (!page) return Response.error();
  const text = (await page.text()).replaceAll(FROM_ROOT, `$1="${new URL(scope).pathname}`);
  return new Response(text, {
    status: 404,
    headers: { 'content-type': 'text/html; charset=utf-8' },
  });
}

/** A page's addresses within the site are relative to its folder: without a host it is led there too. */
addEventListener('fetch', (event) => {
  const asked = event as Fetching;
  if (asked.request.mode !== 'navigate') return;
  const folder = folderOf(asked.request.url);
  if (folder && getCacheKeyForURL(folder.origin + folder.pathname)) {
    asked.respondWith(Response.redirect(folder, 302));
    return;
  }
  const { origin, pathname } = new URL(asked.request.url);
  if (getCacheKeyForURL(origin + pathname)) return;
  asked.respondWith(fetch(asked.request).catch(notHere));
});

/**
 * Keeps the whole site on the device at the first visit and answers from that copy. A calculation
 * is in the query of an address, which the page reads itself, so any query gets the same page.
 */
precacheAndRoute(KEPT_FILES, { ignoreURLParametersMatching: [/./] });
cleanupOutdatedCaches();

/** A first visit uses the copy as soon as it is whole, without being loaded again. */
addEventListener('activate', (event) => {
  (event as Lasting).waitUntil(worker.clients.claim());
});

/** A newer copy waits until the reader says so: a page in use never changes under their hands. */
addEventListener('message', ({ data }: MessageEvent) => {
  if (data === 'take-over') void worker.skipWaiting();
});
