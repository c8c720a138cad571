/** What stands in the content folder, and what stands there by mistake. */
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../domain/problem.ts';
import { parseId } from '../parse/names.ts';
import { nearest } from '../parse/nearest.ts';
import { error, warning } from '../parse/problems.ts';
import { quote } from '../parse/quote.ts';
import { linkProblem, whatIs } from './safe-file.ts';

const TOP_LEVEL = [
  'kitchen.yaml',
  'ingredients.yaml',
  'house-style.yaml',
  'house-styles',
  'bake-log.csv',
  'stock.csv',
  'recipes',
  'flavours',
  'finishes',
  'orders',
  'pages',
  'outlines',
  'constants',
  'assets',
];

/** What stands beside the content files where the program was installed, or built, in the same folder. */
const BESIDE = ['node_modules', 'output', 'package.json', 'package-lock.json'];

/** Hidden files and a note to oneself are nobody's business. */
function isIgnored(name: string): boolean {
  return name.startsWith('.') || name.endsWith('~') || /^readme(\.\w+)?$/i.test(name);
}

async function namesIn(folder: string): Promise<string[]> {
  return (await readdir(folder)).filter((name) => !isIgnored(name)).sort();
}

/** Warnings about files and folders that nothing reads. */
export async function unexpectedFiles(folder: string): Promise<Problem[]> {
  return (await namesIn(folder))
    .filter((name) => !TOP_LEVEL.includes(name) && !BESIDE.includes(name))
    .map((name) => {
      const near = nearest(name, TOP_LEVEL);
      const hint =
        near === null ? 'Move it out of the content folder, or into assets.' : `Did you mean '${near}'?`;
      return { ...warning('file-unexpected', `Nothing reads ${quote(name)}`, hint), file: name };
    });
}

export interface Listed {
  id: string;
  /** Path from the content folder. */
  file: string;
}

/** Files of one kind in a folder, by id, and what is wrong with the others. A missing folder is empty. */
export async function listFiles(
  folder: string,
  name: string,
  extension: string,
): Promise<{ files: Listed[]; problems: Problem[] }> {
  const found = await whatIs(join(folder, name));
  if (found === 'link') return { files: [], problems: [linkProblem(name)] };
  if (found !== 'folder') return { files: [], problems: [] };
  const files: Listed[] = [];
  const problems: Problem[] = [];
  for (const entry of await namesIn(join(folder, name))) {
    const file = `${name}/${entry}`;
    const listed = listedAs(entry, extension);
    if (listed.id !== null) files.push({ id: listed.id, file });
    else problems.push({ ...listed.problem, file });
  }
  return { files, problems };
}

function listedAs(entry: string, extension: string): { id: string } | { id: null; problem: Problem } {
  if (!entry.endsWith(extension)) {
    const message = `Nothing reads ${quote(entry)} here`;
    return {
      id: null,
      problem: warning('file-unexpected', message, `Files in this folder end in ${extension}.`),
    };
  }
  const id = parseId(entry.slice(0, -extension.length));
  if (id.ok) return { id: id.value };
  const hint = (id.problems[0]?.hint ?? '').replace(/'([^']+)'\.$/, `'$1${extension}'.`);
  return {
    id: null,
    problem: error('file-name-not-an-id', `${quote(entry)} cannot be a file name here`, hint),
  };
}
