/** The drawings of the outlines folder. One without a size of its own is fine while a tin gives it one. */
import type { Outline } from '../domain/outline.ts';
import type { Problem } from '../domain/problem.ts';
import type { Tin } from '../domain/tin.ts';
import { parseOutlineSvg } from '../parse/outline-svg.ts';
import type { Drawings, OutlineDrawing } from '../parse/tins/tin-entry.ts';
import { listFiles } from './folder-listing.ts';
import { readText } from './safe-file.ts';

export interface OutlinesOutcome {
  drawings: Drawings;
  /** Drawings with a size of their own: what lists of tins may name. */
  sized: { id: string; outline: Outline }[];
  /** Why the others cannot stand alone, by id. */
  unsized: ReadonlyMap<string, Problem[]>;
  problems: Problem[];
}

interface Drawn {
  drawing: OutlineDrawing | null;
  problems: Problem[];
}

/** A drawing without a size comes with the problem that it is, until a tin gives it one. */
function drawn(text: string, file: string, id: string): Drawn {
  const outline = parseOutlineSvg(text, file);
  if (outline.ok) return { drawing: { id, outline: outline.value, sized: true }, problems: [] };
  if (outline.problems.some((problem) => problem.code !== 'outline-size-missing')) {
    return { drawing: null, problems: outline.problems };
  }
  const unsized = parseOutlineSvg(text, file, { sizeFromTin: true });
  if (!unsized.ok) return { drawing: null, problems: unsized.problems };
  return { drawing: { id, outline: unsized.value, sized: false }, problems: outline.problems };
}

/** Every drawing below the content folder, and what is wrong with them. */
export async function readOutlines(folder: string): Promise<OutlinesOutcome> {
  const { files, problems } = await listFiles(folder, 'outlines', '.svg');
  const drawings = new Map<string, OutlineDrawing | null>();
  const sized: OutlinesOutcome['sized'] = [];
  const unsized = new Map<string, Problem[]>();
  for (const { id, file } of files) {
    const text = await readText(folder, file);
    const { drawing, problems: found } = text.ok
      ? drawn(text.value, file, id)
      : { drawing: null, problems: text.problems };
    drawings.set(id, drawing);
    if (drawing === null) problems.push(...found);
    else if (drawing.sized) sized.push({ id, outline: drawing.outline });
    else unsized.set(id, found);
  }
  return { drawings, sized, unsized, problems };
}

/** Drawings without a size that no tin gives one. */
export function unsizedProblems({ unsized }: OutlinesOutcome, tins: readonly Tin[]): Problem[] {
  const used = new Set(tins.map(({ shape }) => (shape.kind === 'outline' ? shape.outlineId : '')));
  return [...unsized].filter(([id]) => !used.has(id)).flatMap(([, problems]) => problems);
}
