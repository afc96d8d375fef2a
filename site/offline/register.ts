import { keepWork } from '../opening/kept-work.ts';
import { clearNotice, showNotice } from './notice.ts';

const TAKE_OVER = 'take-over';
const OFFLINE_WITH_COPY = 'Offline: every page still works.';
const OFFLINE_WITHOUT = 'Offline: no other page will open.';
const COPY = {
  coming: 'A copy of the site for use without a signal is on its way to this device.',
  whole: 'The whole site is kept on this device: it works without a signal.',
  failed:
    'The copy of the site for use without a signal did not come whole. It is tried again with the next page you open.',
} as const;

const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;

/** Says at the foot of the page how far the copy has come. */
function sayCopy(state: keyof typeof COPY): void {
  const line = document.getElementById('kept-copy');
  if (line) line.textContent = COPY[state];
}

/** A page that a worker serves comes from a copy that is whole. */
let whole = workers?.controller != null;

function sayConnection(): void {
  if (navigator.onLine) clearNotice('connection');
  else showNotice('connection', whole ? OFFLINE_WITH_COPY : OFFLINE_WITHOUT);
}

function sayWhole(): void {
  whole = true;
  sayCopy('whole');
  sayConnection();
}

function reload(): void {
  keepWork();
  location.reload();
}

/** Offers the newer copy that waits. It is taken when the reader says so, and typed figures stay. */
function offer(container: ServiceWorkerContainer, waiting: ServiceWorker): void {
  showNotice('update', 'A newer copy of the site is ready. What you have typed stays.', {
    label: 'Use it now',
    act: () => {
      // In another tab it may have been taken already, or a newer one still have come.
      if (waiting.state !== 'installed') {
        reload();
        return;
      }
      container.addEventListener('controllerchange', reload, { once: true });
      waiting.postMessage(TAKE_OVER);
    },
  });
}

/** Calls back when a worker has come to its end, whole or not. */
function whenSettled(coming: ServiceWorker, settled: (state: ServiceWorkerState) => void): void {
  coming.addEventListener('statechange', () => {
    if (coming.state !== 'installing') settled(coming.state);
  });
}

async function keep(container: ServiceWorkerContainer): Promise<void> {
  const home = document.querySelector<HTMLLinkElement>('link[rel="start"]')!.href;
  sayCopy('coming');
  const registration = await container.register(new URL('sw.js', home), {
    updateViaCache: 'none',
  });
  if (registration.active) sayWhole();
  if (registration.waiting && container.controller) offer(container, registration.waiting);
  const watch = (coming: ServiceWorker): void => {
    whenSettled(coming, (state) => {
      if (state === 'redundant' && !registration.active) sayCopy('failed');
      if (state === 'installed' && registration.active) offer(container, coming);
      if (state === 'activated') sayWhole();
    });
  };
  if (registration.installing) watch(registration.installing);
  registration.addEventListener('updatefound', () => {
    if (registration.installing) watch(registration.installing);
  });
}

addEventListener('online', sayConnection);
addEventListener('offline', sayConnection);
sayConnection();
// A host without https, or a browser set to keep nothing: the site works, online only.
if (workers) addEventListener('load', () => void keep(workers).catch(() => sayCopy('failed')));
