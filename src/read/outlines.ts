/** The drawings of the outlines folder. One without a size of its own is fine while a tin gives it one. */
import type { Outline } from '../domain/outline.ts';
import type { Problem } from '../domain/problem.ts';
import { parseOutlineSvg } from '../parse/outline-svg.ts';
import type { Drawings, OutlineDrawing } from '../parse/tins/tin-entry.ts';
import { listFiles } from './folder-listing.ts';
import { readText } from './safe-file.ts';

export interface OutlinesOutcome {
  drawings: Drawings;
  /** Drawings with a size of their own: what lists of tins may name. */
  sized: { id: string; outline: Outline }[];
  problems: Problem[];
}

function drawingOf(text: string, file: string, id: string): OutlineDrawing | Problem[] {
  const outline = parseOutlineSvg(text, file);
  if (outline.ok) return { id, outline: outline.value, sized: true };
  if (outline.problems.some((problem) => problem.code !== 'outline-size-missing')) return outline.problems;
  const unsized = parseOutlineSvg(text, file, { sizeFromTin: true });
  return unsized.ok ? { id, outline: unsized.value, sized: false } : unsized.problems;
}

/** Every drawing below the content folder, and what is wrong with them. */
export async function readOutlines(folder: string): Promise<OutlinesOutcome> {
  const { files, problems } = await listFiles(folder, 'outlines', '.svg');
  const drawings = new Map<string, OutlineDrawing | null>();
  for (const { id, file } of files) {
    const text = await readText(folder, file);
    const drawing = text.ok ? drawingOf(text.value, file, id) : text.problems;
    if (Array.isArray(drawing)) problems.push(...drawing);
    drawings.set(id, Array.isArray(drawing) ? null : drawing);
  }
  const sized = [...drawings.values()].filter((drawing) => drawing?.sized === true) as OutlineDrawing[];
  return { drawings, sized: sized.map(({ id, outline }) => ({ id, outline })), problems };
}
