/** The files of a built site, and the links in its pages. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, posix } from 'node:path';

/** Paths below the folder, with forward slashes, sorted. */
export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
}

export const pagesOf = (site: string): string[] => filesBelow(site).filter((path) => path.endsWith('.html'));

/** Larger than this a page is mostly rows alike. */
const LARGE_BYTES = 400_000;

/**
 * Pages for a quick run: of each kind (a folder, made by one template) the shortest, the middle one and the longest
 * below 400 kB; all pages in the long run.
 */
export function somePages(site: string): string[] {
  return process.env.TINWRIGHT_LONG === undefined ? sampledPages(site) : pagesOf(site);
}

/** One page of each kind: the middle one of its folder, and every page that stands alone; never long-run-only. */
export function onePageOfEachKind(site: string): string[] {
  const pages = pagesOf(site);
  const kinds = [...new Set(pages.map(kindOf))];
  return kinds.flatMap((kind) => {
    const alike = pages.filter((page) => kindOf(page) === kind);
    return alike[Math.floor(alike.length / 2)] ?? [];
  });
}

/** A page at the top is a kind of its own; of orders, the weeks are another. */
const kindOf = (page: string): string =>
  page.includes('/') ? posix.dirname(page) + (/\/week-/.test(page) ? ' week' : '') : page;

function sampledPages(site: string): string[] {
  const pages = pagesOf(site);
  const bytes = new Map(pages.map((page) => [page, statSync(join(site, page)).size]));
  const size = (page: string): number => bytes.get(page) ?? 0;
  return [...new Set(pages.map(kindOf))].flatMap((kind) => {
    const alike = pages.filter((page) => kindOf(page) === kind).sort((a, b) => size(a) - size(b));
    const small = alike.filter((page, index) => index === 0 || size(page) < LARGE_BYTES);
    return [...new Set([small[0], small[Math.floor(small.length / 2)], small.at(-1)])].flatMap(
      (page) => page ?? [],
    );
  });
}

const ADDRESS = /\s(?:href|src|srcset|action|poster|data)="([^"]*)"/g;

/** Every address that a page names. */
const addressesIn = (html: string): string[] =>
  // Where the page stands once it is published is told to machines, not followed.
  [...html.replace(/<link rel="canonical"[^>]*>/g, '').matchAll(ADDRESS)].map(([, address = '']) =>
    address.replaceAll('&amp;', '&'),
  );

/** What links can lead to: the files of a site and the names within them, each file read once. */
class Targets {
  readonly #site: string;
  readonly #ids = new Map<string, ReadonlySet<string> | null>();

  constructor(site: string) {
    this.#site = site;
  }

  /** The names that a file gives to its places; null when there is no such file. */
  idsIn(path: string): ReadonlySet<string> | null {
    const known = this.#ids.get(path);
    if (known !== undefined) return known;
    const file = join(this.#site, path);
    const names = (): string[] =>
      /\.(html|svg)$/.test(path)
        ? [...readFileSync(file, 'utf8').matchAll(/ id="([^"]*)"/g)].map(([, id = '']) => id)
        : [];
    const ids = existsSync(file) ? new Set(names()) : null;
    this.#ids.set(path, ids);
    return ids;
  }
}

/** What is wrong with one address on a page, '' when it leads to a file and an anchor of the site. */
function addressFault(targets: Targets, page: string, address: string): string {
  if (/^[a-z]+:|^\/\//i.test(address)) return `leaves the site: ${address}`;
  if (address.startsWith('/')) return `is not relative: ${address}`;
  const [path = '', anchor] = address.split('#');
  const target = path === '' ? page : posix.join(posix.dirname(page), path);
  const ids = target.startsWith('..') ? null : targets.idsIn(target);
  if (ids === null) return `leads nowhere: ${address}`;
  return !anchor || ids.has(anchor) ? '' : `has no anchor: ${address}`;
}

/** Faults of all pages' addresses, each with its page; `allowed` may leave the site. */
export function linkFaults(
  site: string,
  allowed: readonly string[] = [],
): { count: number; faults: string[] } {
  let count = 0;
  const targets = new Targets(site);
  const faults = pagesOf(site).flatMap((page) =>
    addressesIn(readFileSync(join(site, page), 'utf8')).flatMap((address) => {
      count += 1;
      const fault = allowed.includes(address) ? '' : addressFault(targets, page, address);
      return fault === '' ? [] : [`${page} ${fault}`];
    }),
  );
  return { count, faults };
}
