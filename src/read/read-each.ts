/** Every file of one kind in a folder through its parser, in the order of their ids. */
import type { Problem } from '../domain/problem.ts';
import type { Result } from '../domain/result.ts';
import { listFiles } from './folder-listing.ts';
import { readText } from './safe-file.ts';

export interface Gathered<T> {
  items: T[];
  /** Ids of all files there are, good or bad. */
  ids: string[];
  problems: Problem[];
}

/** Reads each file; what cannot be read is a problem and no item. A missing folder holds nothing. */
export async function readEach<T>(
  folder: string,
  name: string,
  extension: string,
  parse: (text: string, file: string, id: string) => { item: T | null; problems: Problem[] },
): Promise<Gathered<T>> {
  const { files, problems } = await listFiles(folder, name, extension);
  const items: T[] = [];
  for (const { id, file } of files) {
    const text: Result<string> = await readText(folder, file);
    const { item, problems: found } = text.ok
      ? parse(text.value, file, id)
      : { item: null, problems: text.problems };
    problems.push(...found);
    if (item !== null) items.push(item);
  }
  return { items, ids: files.map(({ id }) => id), problems };
}
