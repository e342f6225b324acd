/* Keeps the page's own files, and nothing else, so that it opens without a network. */

/** Address inside the page's folder and SHA-256 of every built file. */
const FILES = __FILES__;
const CACHE = 'rootreach-__VERSION__';
const OURS = /^rootreach-/;
/** The version before stays: a tab that still runs it may yet want a part of it. */
const KEPT_VERSIONS = 2;

const folder = new URL('./', self.registration.scope).href;
const names = new Set(FILES.map(([name]) => name));

/** Read past the browser's own cache, and only taken if it is the file that was built. */
async function fetchFile([name, hash]) {
  const request = new Request(folder + name, { cache: 'no-cache', integrity: `sha256-${hash}` });
  const answer = await fetch(request);
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  // a copy without the traces of a redirect, which a browser would not take as a page
  return new Response(await answer.blob(), {
    headers: { 'content-type': answer.headers.get('content-type') ?? '' },
  });
}

async function install() {
  const cache = await caches.open(CACHE);
  await Promise.all(
    FILES.map(async (file) => {
      // names of built parts carry a hash of what is in them: an equal name is an equal file
      const before = file[0].startsWith('assets/') ? await caches.match(folder + file[0]) : undefined;
      await cache.put(folder + file[0], before ?? (await fetchFile(file)));
    }),
  );
}

async function tidy() {
  const kept = (await caches.keys()).filter((name) => OURS.test(name));
  const order = [...kept.filter((name) => name !== CACHE), CACHE];
  await Promise.all(order.slice(0, -KEPT_VERSIONS).map((name) => caches.delete(name)));
  await self.clients.claim();
}

/** Name of the built file an address stands for; null for everything else, which goes to the network untouched. */
function fileNamed(request) {
  if (request.method !== 'GET' || !request.url.startsWith(folder)) return null;
  const address = new URL(request.url);
  const name = address.href.slice(folder.length).replace(/[?#].*$/, '');
  if (request.mode === 'navigate') return name === '' || name === 'index.html' ? 'index.html' : null;
  return address.search === '' ? name : null;
}

async function answer(request, name) {
  const own = await (await caches.open(CACHE)).match(folder + name);
  return own ?? (await caches.match(folder + name)) ?? fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(tidy()));
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') self.skipWaiting();
});
self.addEventListener('fetch', (event) => {
  const name = fileNamed(event.request);
  if (name === null) return;
  // parts of the version before are looked for too: their names are not in this version's list
  if (names.has(name) || name.startsWith('assets/')) event.respondWith(answer(event.request, name));
});
