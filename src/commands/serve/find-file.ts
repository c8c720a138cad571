/** Which file an address means, and never one outside the folder: not by dots, not by a link. */
import { realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';

/**
 * The file below `root` for a request's path ('/', '/tins/', '/tins/round-6.html?x'), or null. Refuses anything
 * that would leave the folder, hidden names, and addresses that cannot be decoded.
 */
export function findFile(root: string, requested: string): string | null {
  const names = namesOf(requested);
  if (names === null) return null;
  return settled(root, join(root, ...names));
}

function namesOf(requested: string): string[] | null {
  try {
    const path = decodeURIComponent(requested.split(/[?#]/, 1)[0] ?? '');
    const names = path.split('/').filter((name) => name !== '');
    return names.every(isPlainName) ? names : null;
  } catch {
    return null;
  }
}

function isPlainName(name: string): boolean {
  return !name.startsWith('.') && !/[\\\0:]/.test(name);
}

function settled(root: string, path: string): string | null {
  try {
    const real = realpathSync(path);
    if (real !== realpathSync(root) && !real.startsWith(realpathSync(root) + sep)) return null;
    if (!statSync(real).isDirectory()) return real;
    const index = join(real, 'index.html');
    return statSync(index).isFile() ? index : null;
  } catch {
    return null;
  }
}
