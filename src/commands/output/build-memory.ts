/**
 * What a process that builds again and again remembers of its last build, so that the next one makes only what a
 * change touches. It holds what is in the output folder now: after anything that did not end well it is forgotten.
 */

import { join } from 'node:path';
import type { Content } from '../../domain/content.ts';
import type { PageMemory } from '../../site/index.ts';
import type { MadePrint } from '../make/made-file.ts';
import { isAsLeft, type LeftFiles } from './staged-files.ts';

export interface BuildMemory {
  files: LeftFiles;
  prints: ReadonlyMap<string, readonly MadePrint[]>;
  pages: PageMemory;
  /** Results by the text of all that they were worked out from. */
  results: ReadonlyMap<string, unknown>;
  content: Content | null;
}

export const noMemory = (): BuildMemory => ({
  files: new Map(),
  prints: new Map(),
  pages: new Map(),
  results: new Map(),
  content: null,
});

/** The memory, or none where somebody has changed the output folder since. */
export function trustedMemory(memory: BuildMemory, outputDir: string): BuildMemory {
  for (const [path, file] of memory.files) if (!isAsLeft(join(outputDir, path), file)) return noMemory();
  return memory;
}

/** Remembers results for the next build; what this one did not ask for is forgotten. */
export function remembering(before: BuildMemory['results']): {
  remember: <T>(key: string, make: () => T) => T;
  results: ReadonlyMap<string, unknown>;
} {
  const results = new Map<string, unknown>();
  return {
    results,
    remember<T>(key: string, make: () => T): T {
      const known = results.has(key) ? results.get(key) : before.get(key);
      const result = known === undefined ? make() : (known as T);
      results.set(key, result);
      return result;
    },
  };
}
