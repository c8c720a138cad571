/** The demo's PDFs read back: reading takes many times longer than asking, so all tests of a run share what was read. */

import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { type ReadPdf, readPdf } from '../../reading-back/read-pdf.ts';

/** What a PDF says; kept under the hash of its bytes, for this run only. */
export async function readBuiltPdf(path: string): Promise<ReadPdf> {
  const bytes = readFileSync(path);
  const folder = join(inject('demoFolder'), 'read-back');
  const kept = join(folder, `${createHash('sha256').update(bytes).digest('hex')}.json`);
  if (existsSync(kept)) return JSON.parse(readFileSync(kept, 'utf8')) as ReadPdf;
  const read = await readPdf(new Uint8Array(bytes));
  mkdirSync(folder, { recursive: true });
  // Another worker may be reading the same: never let it find half a file.
  writeFileSync(`${kept}.${process.pid}`, JSON.stringify(read));
  renameSync(`${kept}.${process.pid}`, kept);
  return read;
}

/** Both papers are set from one view: of Letter the quick run reads every fifth chart, of A4 each. */
export const isReadOn = (paper: string, index: number): boolean =>
  paper === 'a4' || process.env.TINWRIGHT_LONG !== undefined || index % 5 === 0;
