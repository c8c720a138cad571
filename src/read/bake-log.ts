/** The bake log of a content folder; a kitchen without one has simply logged nothing yet. */
import { join } from 'node:path';
import { type BakeLogContext, type BakeLogOutcome, parseBakeLogCsv } from '../parse/bake-log.ts';
import { readText, whatIs } from './safe-file.ts';

const FILE = 'bake-log.csv';

/** The bakes of bake-log.csv, none when the file is not there. */
export async function readBakeLog(folder: string, context: BakeLogContext): Promise<BakeLogOutcome> {
  if ((await whatIs(join(folder, FILE))) === 'nothing') return { rows: [], problems: [] };
  const text = await readText(folder, FILE);
  return text.ok ? parseBakeLogCsv(text.value, FILE, context) : { rows: [], problems: text.problems };
}
