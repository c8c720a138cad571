/** On the page of prints: keeps all prints of a group on the device, and lets them go again. */
const PRINTS = 'tinwright-prints';
/** Fetched at the same time: kind to a phone on a weak signal. */
const AT_ONCE = 4;

const words = document.getElementById('keep-words')?.dataset ?? {};

interface Group {
  button: HTMLButtonElement;
  status: HTMLElement;
  /** What the button says while nothing is kept. */
  offer: string;
  addresses: string[];
}

function groupOf(line: HTMLElement): Group | null {
  const button = line.querySelector('button');
  const status = line.querySelector<HTMLElement>('[role="status"]');
  const links = line.parentElement?.querySelectorAll<HTMLAnchorElement>('a[href$=".pdf"]') ?? [];
  if (button === null || status === null) return null;
  return { button, status, offer: button.textContent ?? '', addresses: [...links].map(({ href }) => href) };
}

/** Those of a group that are not on the device yet. */
async function lacking({ addresses }: Group): Promise<string[]> {
  const prints = await caches.open(PRINTS);
  const there = new Set((await prints.keys()).map(({ url }) => url));
  return addresses.filter((address) => !there.has(address));
}

async function show(group: Group): Promise<void> {
  const isKept = (await lacking(group)).length === 0;
  group.button.textContent = isKept ? (words.letGo ?? '') : group.offer;
  group.status.textContent = isKept ? (words.kept ?? '') : '';
}

async function keepAll(group: Group): Promise<void> {
  const prints = await caches.open(PRINTS);
  const waiting = await lacking(group);
  let done = group.addresses.length - waiting.length;
  const work = async (): Promise<void> => {
    for (let address = waiting.shift(); address !== undefined; address = waiting.shift()) {
      await prints.add(address);
      done += 1;
      const [first = '', between = ''] = (words.keeping ?? '').split('…');
      group.status.textContent = `${first}${done}${between}${group.addresses.length}`;
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}

async function letGo({ addresses }: Group): Promise<void> {
  const prints = await caches.open(PRINTS);
  for (const address of addresses) await prints.delete(address);
}

async function press(group: Group): Promise<void> {
  // Not `disabled`: the keyboard stays on it.
  if (group.button.getAttribute('aria-disabled') === 'true') return;
  group.button.setAttribute('aria-disabled', 'true');
  try {
    if ((await lacking(group)).length === 0) await letGo(group);
    else await keepAll(group);
    await show(group);
  } catch {
    group.status.textContent = words.notKept ?? '';
  }
  group.button.removeAttribute('aria-disabled');
}

/** Only where a worker answers for the pages: from disk every print is there anyway. */
async function start(): Promise<void> {
  await navigator.serviceWorker.ready;
  for (const line of document.querySelectorAll<HTMLElement>('.keep')) {
    const group = groupOf(line);
    if (group === null) continue;
    group.button.addEventListener('click', () => void press(group));
    await show(group);
    line.hidden = false;
  }
}

if ('serviceWorker' in navigator && 'caches' in window && location.protocol.startsWith('http'))
  void start().catch(() => undefined);

export {};
