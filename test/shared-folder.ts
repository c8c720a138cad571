/** A folder that all test files of a run share, gone when the run is over. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    demoFolder: string;
  }
}

export function setup(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-demo-'));
  // Kept prints of this run alone: a build of the same kitchen twice draws it once.
  process.env.TINWRIGHT_CACHE = join(folder, 'kept');
  project.provide('demoFolder', folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
