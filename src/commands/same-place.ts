import { existsSync, realpathSync } from 'node:fs';
import { resolve } from 'node:path';

/** Whether two paths are the same folder, also by way of a link. */
export function samePlace(one: string, other: string): boolean {
  return settled(one) === settled(other);
}

function settled(path: string): string {
  return existsSync(path) ? realpathSync(path) : resolve(path);
}
