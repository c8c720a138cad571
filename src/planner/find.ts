/** Finding on the page: as one types, from the index that the build made. */

import MiniSearch from 'minisearch';
import { FIND_OPTIONS } from '../views/find-options.ts';

declare global {
  interface Window {
    tinwrightFindIndex?: string;
  }
}

interface Found {
  path: string;
  title: string;
  kind: string;
  text: string;
}

const MOST = 40;

function item({ path, title, kind, text }: Found): HTMLLIElement {
  const entry = document.createElement('li');
  const link = document.createElement('a');
  link.href = path;
  link.textContent = title;
  const about = document.createElement('small');
  about.textContent = `${kind}. ${text}`;
  entry.append(link, ' ', about);
  return entry;
}

/** What an address asks for; a sign cut in two by whoever sent it is taken as it stands. */
function wordsAsked(hash: string): string {
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return hash.slice(1);
  }
}

function start(form: HTMLFormElement, index: MiniSearch): void {
  const field = form.querySelector('input');
  const list = document.getElementById('found');
  const status = document.getElementById('found-count');
  if (field === null || list === null || status === null) return;
  const look = (): void => {
    const asked = field.value.trim();
    const found =
      asked === ''
        ? []
        : (index.search(asked, {
            prefix: true,
            fuzzy: 0.2,
            boost: { title: 3 },
            combineWith: 'AND',
          }) as unknown as Found[]);
    list.replaceChildren(...found.slice(0, MOST).map(item));
    const { none = '', one = '', many = '' } = form.dataset;
    if (asked === '') status.textContent = '';
    else if (found.length === 0) status.textContent = none.replace('…', () => asked);
    else status.textContent = found.length === 1 ? one : many.replace('…', String(found.length));
    history.replaceState(null, '', asked === '' ? location.pathname : `#${encodeURIComponent(asked)}`);
  };
  form.hidden = false;
  field.value = wordsAsked(location.hash);
  field.addEventListener('input', look);
  form.addEventListener('submit', (event) => event.preventDefault());
  look();
}

const form = document.querySelector<HTMLFormElement>('form.find');
if (form !== null && window.tinwrightFindIndex !== undefined)
  start(form, MiniSearch.loadJSON(window.tinwrightFindIndex, FIND_OPTIONS));
