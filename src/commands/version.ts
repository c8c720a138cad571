import { readFileSync } from 'node:fs';

/** The program's version, from its own package.json (two folders up from here, in src and in dist alike). */
export function programVersion(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  const { version } = JSON.parse(text) as { version: string };
  return version;
}
