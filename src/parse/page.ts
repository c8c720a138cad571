/** pages/ID.md: a free page of the baker's own. */
import type { FreePage } from '../domain/content.ts';
import type { Problem } from '../domain/problem.ts';
import { pageSchema } from './schemas/page-schema.ts';
import { frontMatter } from './yaml/front-matter.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, isSound, yamlReader } from './yaml/yaml-reader.ts';

/** The page of a Markdown file's text, or everything that is wrong with it. The id is the file's name. */
export function parsePageMarkdown(
  text: string,
  file: string,
  id: string,
): { page: FreePage | null; problems: Problem[] } {
  const parts = frontMatter(plainLines(text), file);
  if (!parts.ok) return { page: null, problems: parts.problems };
  const reader = yamlReader(parts.value.source, pageSchema);
  const page = complete<FreePage>({
    id,
    title: reader.text('title'),
    order: reader.number('order'),
    markdown: parts.value.body,
  });
  return { page: isSound(reader.problems) ? page : null, problems: reader.problems };
}
