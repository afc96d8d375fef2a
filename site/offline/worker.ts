import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';

/** Every file of the site with its fingerprint, written in when the site is built. */
declare const KEPT_FILES: { url: string; revision: string | null }[];

/**
 * Keeps the whole site on the device at the first visit and answers from that copy. A calculation
 * is in the query of an address, which the page reads itself, so any query gets the same page.
 */
precacheAndRoute(KEPT_FILES, { ignoreURLParametersMatching: [/./] });
cleanupOutdatedCaches();

/** A newer copy waits until the reader says so: a page in use never changes under their hands. */
addEventListener('message', ({ data }: MessageEvent) => {
  if (data === 'take-over')
    void (globalThis as unknown as { skipWaiting: () => void }).skipWaiting();
});
