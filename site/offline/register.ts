import { keepWork } from './kept-work.ts';
import { clearNotice, showNotice } from './notice.ts';

const TAKE_OVER = 'take-over';
const OFFLINE_WITH_COPY =
  'You are offline. This page and all the others work from the copy kept on this device.';
const OFFLINE_WITHOUT =
  'You are offline, and this device keeps no copy of the site yet: other pages will not open.';

const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;

function sayConnection(): void {
  if (navigator.onLine) clearNotice('connection');
  else showNotice('connection', workers?.controller ? OFFLINE_WITH_COPY : OFFLINE_WITHOUT);
}

/** Offers the newer copy that waits. It is taken when the reader says so, and typed figures stay. */
function offer(waiting: ServiceWorker): void {
  showNotice('update', 'A newer copy of the site is ready. What you have typed stays.', {
    label: 'Use it now',
    act: () => {
      workers!.addEventListener(
        'controllerchange',
        () => {
          keepWork();
          location.reload();
        },
        { once: true },
      );
      waiting.postMessage(TAKE_OVER);
    },
  });
}

async function keep(container: ServiceWorkerContainer): Promise<void> {
  const home = document.querySelector<HTMLLinkElement>('link[rel="start"]')!.href;
  const registration = await container.register(new URL('sw.js', home));
  if (registration.waiting && container.controller) offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && container.controller) offer(coming);
    });
  });
}

addEventListener('online', sayConnection);
addEventListener('offline', sayConnection);
sayConnection();
// A host without https, or a browser set to keep nothing: the site works, online only.
if (workers) addEventListener('load', () => void keep(workers).catch(() => undefined));
