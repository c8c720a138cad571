/** On every page of a published site: keeps the site on the device, and says when a new edition is ready. */
const here = document.currentScript as HTMLScriptElement | null;
const root = here?.dataset.root ?? '';
const { fresh = '', take = '' } = here?.dataset ?? {};

function showFresh(waiting: ServiceWorker): void {
  const bar = document.createElement('p');
  bar.className = 'fresh';
  bar.setAttribute('role', 'status');
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = take;
  button.addEventListener('click', () => waiting.postMessage('take-over'));
  bar.append(fresh, ' ', button);
  document.body.prepend(bar);
}

function watch(registration: ServiceWorkerRegistration): void {
  const { installing } = registration;
  installing?.addEventListener('statechange', () => {
    if (installing.state === 'installed' && navigator.serviceWorker.controller !== null)
      showFresh(installing);
  });
}

/** Whoever asked for less traffic, or is on a slow line, gets prints when they open them. */
function savesData(): boolean {
  const { connection } = navigator as Navigator & {
    connection?: { saveData?: boolean; effectiveType?: string };
  };
  return connection?.saveData === true || /2g/.test(connection?.effectiveType ?? '');
}

async function register(): Promise<void> {
  const hadWorker = navigator.serviceWorker.controller !== null;
  const registration = await navigator.serviceWorker.register(`${root}offline-worker.js`);
  if (registration.waiting !== null && hadWorker) showFresh(registration.waiting);
  registration.addEventListener('updatefound', () => watch(registration));
  // The first worker of a device takes a page without a word; only a later one reloads it.
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    navigator.serviceWorker.controller?.postMessage('renew-prints');
    if (hadWorker) location.reload();
  });
  const { active } = await navigator.serviceWorker.ready;
  if (!savesData()) active?.postMessage('keep-prints');
}

if ('serviceWorker' in navigator && location.protocol.startsWith('http'))
  void register().catch(() => undefined);

export {};
