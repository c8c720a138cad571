/** The files of a built site, and the links in its pages. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
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

const ADDRESS = /\s(?:href|src|srcset|action|poster|data)="([^"]*)"/g;

/** Every address that a page names. */
export const addressesIn = (html: string): string[] =>
  // Where the page stands once it is published is told to machines, not followed.
  [...html.replace(/<link rel="canonical"[^>]*>/g, '').matchAll(ADDRESS)].map(([, address = '']) =>
    address.replaceAll('&amp;', '&'),
  );

/** What is wrong with one address on a page, '' when it leads to a file and an anchor of the site. */
function addressFault(site: string, page: string, address: string): string {
  if (/^[a-z]+:|^\/\//i.test(address)) return `leaves the site: ${address}`;
  if (address.startsWith('/')) return `is not relative: ${address}`;
  const [path = '', anchor] = address.split('#');
  const target = path === '' ? page : posix.join(posix.dirname(page), path);
  if (target.startsWith('..') || !existsSync(join(site, target))) return `leads nowhere: ${address}`;
  if (!anchor) return '';
  return readFileSync(join(site, target), 'utf8').includes(` id="${anchor}"`)
    ? ''
    : `has no anchor: ${address}`;
}

/** Faults of all pages' addresses, each with its page; `allowed` may leave the site. */
export function linkFaults(
  site: string,
  allowed: readonly string[] = [],
): { count: number; faults: string[] } {
  let count = 0;
  const faults = pagesOf(site).flatMap((page) =>
    addressesIn(readFileSync(join(site, page), 'utf8')).flatMap((address) => {
      count += 1;
      const fault = allowed.includes(address) ? '' : addressFault(site, page, address);
      return fault === '' ? [] : [`${page} ${fault}`];
    }),
  );
  return { count, faults };
}
