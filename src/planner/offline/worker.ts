/// <reference lib="webworker" />
/** Runs beside the pages: keeps them on the device, and answers from there first. */
declare const self: ServiceWorkerGlobalScope & {
  tinwrightEdition: string;
  /** Path from the site's root → hash of its bytes. */
  tinwrightFiles: Record<string, string>;
  /** Prints that are kept when all else is: the same, of tin charts on the kitchen's own paper. */
  tinwrightPrints: Record<string, string>;
};

const PREFIX = 'tinwright-';
const PRINTS = `${PREFIX}prints`;
const current = `${PREFIX}${self.tinwrightEdition}`;
/** Fetched at the same time: kind to a phone on a weak signal. */
const AT_ONCE = 6;

const root = (): string => self.registration.scope;
/** The hash stands in the kept address, so that an old copy can be told from a new one. */
const keptAs = (path: string): string =>
  `${root()}${path}?kept=${self.tinwrightFiles[path] ?? self.tinwrightPrints[path] ?? ''}`;

async function olderCopy(address: string): Promise<Response | undefined> {
  for (const name of await caches.keys()) {
    if (name === current || !name.startsWith(PREFIX)) continue;
    const found = await (await caches.open(name)).match(address);
    if (found !== undefined) return found;
  }
  return undefined;
}

async function keep(cache: Cache, path: string): Promise<void> {
  const address = keptAs(path);
  if ((await cache.match(address)) !== undefined) return;
  const copy = (await olderCopy(address)) ?? (await fetch(`${root()}${path}`, { cache: 'reload' }));
  if (!copy.ok) throw new Error(`${path}: ${copy.status}`);
  await cache.put(address, copy);
}

async function keepAll(): Promise<void> {
  const cache = await caches.open(current);
  const waiting = Object.keys(self.tinwrightFiles);
  const work = async (): Promise<void> => {
    for (let path = waiting.shift(); path !== undefined; path = waiting.shift()) await keep(cache, path);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}

async function dropOld(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== current && name !== PRINTS);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

/** In their own time, one by one; a print that has changed takes the place of the older one. */
async function keepOwnPrints(): Promise<void> {
  const prints = await caches.open(PRINTS);
  const wanted = new Set(Object.keys(self.tinwrightPrints).map(keptAs));
  for (const { url } of await prints.keys())
    if (url.includes('?kept=') && !wanted.has(url)) await prints.delete(url);
  for (const path of Object.keys(self.tinwrightPrints)) await keep(prints, path);
}

/** Prints opened or asked for are fetched anew with a new edition, so that no old figure is left on the device. */
async function renewPrints(): Promise<void> {
  const prints = await caches.open(PRINTS);
  for (const { url } of await prints.keys()) {
    if (url.includes('?kept=')) continue;
    const fresh = await fetch(url, { cache: 'reload' });
    if (fresh.ok) await prints.put(url, fresh);
    else await prints.delete(url);
  }
}

/** 'tins/' and the root mean their index page. */
function pathOf(address: URL): string {
  const path = decodeURI(address.href.split(/[?#]/)[0] ?? '').slice(root().length);
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
}

async function print(request: Request): Promise<Response> {
  const prints = await caches.open(PRINTS);
  try {
    const fresh = await fetch(request);
    if (fresh.ok) await prints.put(request, fresh.clone());
    return fresh;
  } catch {
    const path = pathOf(new URL(request.url));
    return (await prints.match(request)) ?? (await prints.match(keptAs(path))) ?? missing();
  }
}

async function missing(): Promise<Response> {
  const page = await (await caches.open(current)).match(keptAs('offline.html'));
  return page === undefined
    ? Response.error()
    : new Response(page.body, { status: 503, headers: page.headers });
}

async function answer(request: Request): Promise<Response> {
  const path = pathOf(new URL(request.url));
  if (path.endsWith('.pdf')) return print(request);
  const kept = await (await caches.open(current)).match(keptAs(path));
  if (kept !== undefined) return kept;
  try {
    return await fetch(request);
  } catch {
    return missing();
  }
}

self.addEventListener('install', (event) => event.waitUntil(keepAll()));
self.addEventListener('activate', (event) => event.waitUntil(dropOld()));
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') void self.skipWaiting();
  // What does not come now comes with the next page.
  if (event.data === 'keep-prints') event.waitUntil(keepOwnPrints().catch(() => undefined));
  if (event.data === 'renew-prints') event.waitUntil(renewPrints().catch(() => undefined));
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && request.url.startsWith(root())) event.respondWith(answer(request));
});

export {};
