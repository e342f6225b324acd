import * as keep from './keep-state.js';

let waiting: ServiceWorker | null = null;
let wanted = false;

function offer(worker: ServiceWorker): void {
  waiting = worker;
  keep.newVersion.value = true;
}

/** Speaks up once a newer version lies ready beside the one in use. */
function watch(registration: ServiceWorkerRegistration): void {
  // a first visit has no version in use yet: then there is nothing to change over from
  const inUse = () => navigator.serviceWorker.controller !== null;
  if (registration.waiting && inUse()) offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && inUse()) offer(coming);
    });
  });
}

/**
 * Keeps the page usable without a network after the first visit. A newer version is only used when the user says
 * so, or once every tab is closed.
 * @param saved Resolves when nothing is left to save.
 */
export function stayOffline(saved: () => Promise<void>): void {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD || !location.protocol.startsWith('http'))
    return;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (wanted) void saved().then(() => location.reload());
  });
  // without it the page works as before, only not offline
  navigator.serviceWorker
    .register('./service-worker.js', { scope: './', updateViaCache: 'none' })
    .then(watch, () => undefined);
}

/** Changes over to the new version; the page is loaded anew as soon as it is in charge. */
export function useNewVersion(): void {
  wanted = true;
  waiting?.postMessage('take-over');
}
